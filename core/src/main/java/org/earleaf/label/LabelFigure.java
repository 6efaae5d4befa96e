// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;

/**
 * What a label says of one item.
 *
 * @param limit its value inside: L/ha or kg/ha of product or carrier, m, m/s, °C, days, hours, count, place of the stage
 *     or droplet class, 1 and 0 for yes and no
 * @param entered as it was copied from the label
 */
public record LabelFigure(LabelLimit limit, String entered) {
    public static final LabelFigure NOT_ENTERED = new LabelFigure(LabelLimit.notEntered(), "");

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
    public String like(double inside, LabelItem item, boolean dry, String crop) {
        return switch (item.kind()) {
            case PRODUCT -> dry ? in(Dimension.MASS_RATE, inside) : in(Dimension.VOLUME_RATE, inside / LHA_PER_M3M2);
            case CARRIER -> in(Dimension.VOLUME_RATE, inside / LHA_PER_M3M2);
            case LENGTH -> in(Dimension.LENGTH, inside);
            case SPEED -> in(Dimension.SPEED, inside);
            case TEMPERATURE -> in(Dimension.TEMPERATURE, inside);
            case DAYS -> Figure.text(inside, 3) + " days";
            case HOURS -> Figure.text(inside, 3) + " h";
            case COUNT -> Figure.text(inside, 3);
            case STAGE -> CropStages.word(crop, inside);
            case DROPLETS -> DropletClass.values()[(int) inside].name();
            case YES_NO -> inside > 0 ? "yes" : "no";
        };
    }

    /** How far apart two values are, in the unit of the label; empty where a distance means nothing. */
    public String apart(double inside, LabelItem item, boolean dry, String crop) {
        double by = Math.abs(inside - limit.value());
        return switch (item.kind()) {
            case STAGE, DROPLETS, YES_NO -> "";
            case TEMPERATURE ->
                Figure.text(by * (entered.toLowerCase(java.util.Locale.ROOT).endsWith("f") ? 1.8 : 1), 3) + " degrees";
            default -> like(by, item, dry, crop);
        };
    }

    private String in(Dimension dimension, double inside) {
        String unit = entered.replaceFirst("[-+0-9.eE]+\\s*", "");
        return Figure.text(dimension.outside(inside, unit), 4) + " " + unit;
    }
}
