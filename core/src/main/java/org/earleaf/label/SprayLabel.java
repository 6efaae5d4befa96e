// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

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

    /** Entries that are still missing, in the words of a label. */
    public List<String> missing() {
        List<String> words = new java.util.ArrayList<>();
        say(words, windMin_ms.isEntered(), "least wind");
        say(words, windMax_ms.isEntered(), "greatest wind");
        say(words, airMax_C.isEntered(), "greatest temperature");
        say(words, rainfast_h.isEntered(), "hours to rainfast");
        say(words, inversionBan.isPresent(), "whether inversions are forbidden");
        return List.copyOf(words);
    }

    private static void say(List<String> words, boolean entered, String word) {
        if (!entered) {
            words.add(word);
        }
    }
}
