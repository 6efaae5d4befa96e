// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;
import org.earleaf.units.Said;

/**
 * What a label says of one item.
 *
 * @param limit its value inside: L/ha or kg/ha of product or carrier, m, m/s, °C, days, hours, count, place of the stage
 *     or droplet class, 1 and 0 for yes and no
 * @param entered as it was copied from the label
 */
public record LabelFigure(LabelLimit limit, String entered) {
    public static final LabelFigure NOT_ENTERED = new LabelFigure(LabelLimit.notEntered(), "");
    /** Where there is nothing to tell. */
    public static final Said NOTHING = Said.text("");

    private static final double LHA_PER_M3M2 = 1e7;
    private static final double EPS = 1e-9;

    public boolean isEntered() {
        return limit.isEntered();
    }

    public boolean isStated() {
        return limit.state() == LabelLimit.State.STATED;
    }

    /** Whether another says the same, whatever its unit. */
    public boolean isSameAs(LabelFigure other) {
        double slack = EPS * Math.abs(limit.value());
        return limit.state() == other.limit.state()
                && (!isStated() || Math.abs(limit.value() - other.limit.value()) <= slack);
    }

    /** Another value of the same item, in the unit of the label. */
    public Said like(double inside, LabelItem item, boolean dry, String crop) {
        return switch (item.kind()) {
            case PRODUCT -> dry ? in(Dimension.MASS_RATE, inside) : in(Dimension.VOLUME_RATE, inside / LHA_PER_M3M2);
            case CARRIER -> in(Dimension.VOLUME_RATE, inside / LHA_PER_M3M2);
            case LENGTH -> in(Dimension.LENGTH, inside);
            case SPEED -> in(Dimension.SPEED, inside);
            case TEMPERATURE -> in(Dimension.TEMPERATURE, inside);
            case DAYS -> Said.of("label.days", "n", rounded(inside));
            case HOURS -> Said.of("label.hours", "n", rounded(inside));
            case COUNT -> Said.text(Figure.text(inside, 3));
            case STAGE -> Said.text(CropStages.word(crop, inside));
            case DROPLETS -> Said.text(DropletClass.values()[(int) inside].name());
            case YES_NO -> inside > 0 ? Said.of("label.yes") : Said.of("label.no");
        };
    }

    /** How far apart two values are, in the unit of the label; empty where a distance means nothing. */
    public Said apart(double inside, LabelItem item, boolean dry, String crop) {
        double by = Math.abs(inside - limit.value());
        return switch (item.kind()) {
            case STAGE, DROPLETS, YES_NO -> NOTHING;
            case TEMPERATURE ->
                Said.of(
                        "label.degrees",
                        "n",
                        rounded(by * (entered.toLowerCase(java.util.Locale.ROOT).endsWith("f") ? 1.8 : 1)));
            default -> like(by, item, dry, crop);
        };
    }

    private static double rounded(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(value)
                        .round(new MathContext(3, RoundingMode.HALF_UP))
                        .doubleValue()
                : value;
    }

    private Said in(Dimension dimension, double inside) {
        String unit = entered.replaceFirst("[-+0-9.eE]+\\s*", "");
        return Said.text(Figure.text(dimension.outside(inside, unit), 4) + " " + unit);
    }
}
