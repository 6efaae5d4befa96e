// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.DoubleUnaryOperator;
import org.earleaf.units.Dimension;
import org.earleaf.units.Units;

/** How a number of the store is shown to people, in either system of units. */
record Shown(String us, DoubleUnaryOperator toUs, String metric, DoubleUnaryOperator toMetric) {
    static final Shown PLAIN = new Shown("", v -> v, "", v -> v);
    static final Shown PERCENT = new Shown("%", v -> v, "%", v -> v);
    static final Shown SHARE = new Shown("%", v -> 100 * v, "%", v -> 100 * v);
    static final Shown DEGREES = new Shown("deg", v -> v, "deg", v -> v);
    static final Shown WATER = of(Dimension.WATER_DEPTH, "in", "mm");
    static final Shown TEMPERATURE = of(Dimension.TEMPERATURE, "F", "C");
    static final Shown LIGHT = of(Dimension.RADIATION, "MJ/m2", "MJ/m2");
    static final Shown WIND = of(Dimension.SPEED, "mph", "m/s");
    static final Shown GROUND_SPEED = of(Dimension.SPEED, "mph", "km/h");
    static final Shown ELEVATION = of(Dimension.LENGTH, "ft", "m");
    static final Shown DEPTH = new Shown("in", v -> v / Units.MM_PER_IN, "cm", v -> v / 10);
    static final Shown SPACING = of(Dimension.LENGTH, "in", "cm");
    static final Shown WIDTH = of(Dimension.LENGTH, "ft", "m");
    static final Shown TANK = of(Dimension.VOLUME, "gal", "L");
    static final Shown PRESSURE = of(Dimension.PRESSURE, "psi", "bar");
    static final Shown AREA = new Shown("ac", v -> v / Units.HA_PER_AC, "ha", v -> v);
    static final Shown PLANTS = new Shown("per ac", v -> v * Units.M2_PER_AC, "per m2", v -> v);
    static final Shown RATE = of(Dimension.MASS_RATE, "lb/ac", "kg/ha");
    static final Shown GRAIN = new Shown("bu/ac", Units::buAc, "t/ha", v -> v / Units.DRY_SHARE_OF_TRADE_CORN / 1000);
    static final Shown CARRIER = new Shown("gal/ac", v -> v / Units.LHA_PER_GALAC, "L/ha", v -> v);
    static final Shown DENSITY = new Shown("lb/gal", v -> v * Units.L_PER_GAL / Units.KG_PER_LB, "kg/L", v -> v);
    static final Shown BULK_DENSITY = new Shown("g/cm3", v -> v, "g/cm3", v -> v);
    static final Shown CONDUCTIVITY = new Shown("in/h", v -> v / Units.MM_PER_IN, "mm/h", v -> v);
    static final Shown CORN_PRICE = new Shown("$/bu", v -> v, "$/bu", v -> v);
    static final Shown NITROGEN_PRICE = new Shown("$/lb N", v -> v * Units.KG_PER_LB, "$/kg N", v -> v);
    static final Shown PASS_COST = new Shown("$/ac", v -> v * Units.HA_PER_AC, "$/ha", v -> v);

    private static Shown of(Dimension dimension, String us, String metric) {
        return new Shown(us, v -> dimension.outside(v, us), metric, v -> dimension.outside(v, metric));
    }

    /** Six digits tell apart what was typed and hide the noise of conversion. */
    String text(double value, boolean inMetric) {
        if (Double.isNaN(value)) {
            return "not given";
        }
        double shown = (inMetric ? toMetric : toUs).applyAsDouble(value);
        String number = new BigDecimal(shown)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
        String unit = inMetric ? metric : us;
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
