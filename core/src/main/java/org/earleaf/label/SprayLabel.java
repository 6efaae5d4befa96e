// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the label of a product, or of everything in one tank, says about weather.
 *
 * @param windMin_ms least wind at the boom [m/s]
 * @param windMax_ms greatest wind at the boom [m/s]
 * @param airMax_C greatest air temperature [°C]
 * @param rainfast_h hours without rain after the pass
 * @param inversionBan whether it forbids spraying into an inversion; empty: not entered
 */
public record SprayLabel(
        LabelLimit windMin_ms,
        LabelLimit windMax_ms,
        LabelLimit airMax_C,
        LabelLimit rainfast_h,
        Optional<Boolean> inversionBan) {
    /** A product without a label, such as plain fertiliser. */
    public static final SprayLabel NONE = new SprayLabel(
            LabelLimit.noneStated(),
            LabelLimit.noneStated(),
            LabelLimit.noneStated(),
            LabelLimit.noneStated(),
            Optional.of(false));

    /** Nothing of the label entered yet. */
    public static final SprayLabel NOT_ENTERED = new SprayLabel(
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            LabelLimit.notEntered(),
            Optional.empty());

    /** What holds for products in one tank: the strictest of each. */
    public static SprayLabel ofMix(List<SprayLabel> labels) {
        return labels.stream().reduce(NONE, SprayLabel::with);
    }

    private SprayLabel with(SprayLabel other) {
        Optional<Boolean> ban = inversionBan.isEmpty() || other.inversionBan.isEmpty()
                ? Optional.empty()
                : Optional.of(inversionBan.get() || other.inversionBan.get());
        return new SprayLabel(
                windMin_ms.orHigher(other.windMin_ms),
                windMax_ms.orLower(other.windMax_ms),
                airMax_C.orLower(other.airMax_C),
                rainfast_h.orHigher(other.rainfast_h),
                ban);
    }

    /** What is still missing. */
    public List<LabelItem> missing() {
        List<LabelItem> missing = new ArrayList<>();
        add(missing, windMin_ms.isEntered(), LabelItem.WIND_LEAST);
        add(missing, windMax_ms.isEntered(), LabelItem.WIND_MOST);
        add(missing, airMax_C.isEntered(), LabelItem.AIR_MOST);
        add(missing, rainfast_h.isEntered(), LabelItem.RAINFAST);
        add(missing, inversionBan.isPresent(), LabelItem.INVERSION);
        return List.copyOf(missing);
    }

    static void add(List<LabelItem> missing, boolean entered, LabelItem item) {
        if (!entered) {
            missing.add(item);
        }
    }
}
