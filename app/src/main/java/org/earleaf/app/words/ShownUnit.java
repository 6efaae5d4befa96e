// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.earleaf.units.Measure;
import org.earleaf.units.Units;

/**
 * How a quantity is shown in one system of units: the unit's word in the catalogue ({@code unit.WORD}), the value in
 * it, and to how many decimals (usual, and where more is asked for).
 */
record ShownUnit(String word, DoubleUnaryOperator value, int decimals, int fine) {
    private static final double M2_PER_HA = 10_000;
    private static final Map<Measure, ShownUnit> US = us();
    private static final Map<Measure, ShownUnit> METRIC = metric();

    static ShownUnit of(Measure measure, boolean metric) {
        ShownUnit shown = (metric ? METRIC : US).get(measure);
        if (shown == null) {
            throw new IllegalStateException("no unit is set for " + measure);
        }
        return shown;
    }

    private static ShownUnit in(String word, double inside, int decimals, int fine) {
        return new ShownUnit(word, v -> v / inside, decimals, fine);
    }

    private static Map<Measure, ShownUnit> us() {
        Map<Measure, ShownUnit> us = both();
        us.put(Measure.NITROGEN_RATE, in("lb-n-ac", Units.KGHA_PER_LBAC, 0, 1));
        us.put(Measure.MASS_RATE, in("lb-ac", Units.KGHA_PER_LBAC, 0, 1));
        us.put(Measure.ACTIVE_RATE, in("lb-ac", Units.KGHA_PER_LBAC, 3, 4));
        us.put(Measure.VOLUME_RATE, in("gal-ac", Units.LHA_PER_GALAC, 1, 2));
        us.put(Measure.SMALL_VOLUME_RATE, in("fl-oz-ac", Units.LHA_PER_GALAC / 128, 1, 2));
        us.put(Measure.MASS, in("lb", Units.KG_PER_LB, 0, 1));
        us.put(Measure.VOLUME, in("gal", Units.M3_PER_GAL, 0, 1));
        us.put(Measure.SMALL_VOLUME, in("fl-oz", Units.M3_PER_FLOZ, 1, 2));
        us.put(Measure.FLOW, in("gal-min", Units.M3S_PER_GPM, 2, 3));
        us.put(Measure.PRESSURE, in("psi", Units.PA_PER_PSI, 0, 1));
        us.put(Measure.DENSITY, in("lb-gal", Units.KGM3_PER_LBGAL, 2, 3));
        us.put(Measure.AREA, in("ac", Units.HA_PER_AC, 0, 1));
        us.put(Measure.HEIGHT, in("in", Units.MM_PER_IN / 10, 0, 1));
        us.put(Measure.SPAN, in("in", Units.M_PER_IN, 0, 1));
        us.put(Measure.HOLE, in("in", Units.M_PER_IN, 3, 4));
        us.put(Measure.DEPTH, in("in", Units.MM_PER_IN, 0, 1));
        us.put(Measure.LENGTH, in("ft", Units.M_PER_FT, 0, 1));
        us.put(Measure.DISTANCE, in("mi", Units.M_PER_MI, 1, 2));
        us.put(Measure.RAIN, in("in", Units.MM_PER_IN, 1, 2));
        us.put(Measure.TEMPERATURE, new ShownUnit("f", Units::fahrenheit, 0, 1));
        us.put(Measure.TEMPERATURE_STEP, in("f", 1 / 1.8, 0, 1));
        us.put(Measure.HEAT, in("gdd-f", 1, 0, 0));
        us.put(Measure.SPEED, in("mph", Units.MS_PER_MPH, 1, 2));
        us.put(Measure.WIND, in("mph", Units.MS_PER_MPH, 0, 1));
        us.put(Measure.YIELD, new ShownUnit("bu-ac", Units::buAc, 0, 1));
        us.put(Measure.PLANTS, in("plants-ac", 1 / Units.M2_PER_AC, -2, 0));
        us.put(Measure.MONEY_RATE, new ShownUnit("usd-ac", v -> v * Units.HA_PER_AC, 0, 2));
        us.put(Measure.NITROGEN_PRICE, in("usd-lb-n", 1 / Units.KG_PER_LB, 2, 2));
        us.put(Measure.CONCENTRATION, in("ppm", 1, 0, 1));
        return us;
    }

    private static Map<Measure, ShownUnit> metric() {
        Map<Measure, ShownUnit> metric = both();
        metric.put(Measure.NITROGEN_RATE, in("kg-n-ha", 1, 0, 1));
        metric.put(Measure.MASS_RATE, in("kg-ha", 1, 0, 1));
        metric.put(Measure.ACTIVE_RATE, in("kg-ha", 1, 3, 4));
        metric.put(Measure.VOLUME_RATE, in("l-ha", 1, 0, 1));
        metric.put(Measure.SMALL_VOLUME_RATE, in("l-ha", 1, 2, 3));
        metric.put(Measure.MASS, in("kg", 1, 0, 1));
        metric.put(Measure.VOLUME, in("l", 1e-3, 0, 1));
        metric.put(Measure.SMALL_VOLUME, in("ml", 1e-6, 0, 1));
        metric.put(Measure.FLOW, in("l-min", 1e-3 / 60, 2, 3));
        metric.put(Measure.PRESSURE, in("bar", 1e5, 1, 2));
        metric.put(Measure.DENSITY, in("kg-l", 1000, 2, 3));
        metric.put(Measure.AREA, in("ha", 1, 1, 2));
        metric.put(Measure.HEIGHT, in("cm", 1, 0, 1));
        metric.put(Measure.SPAN, in("cm", .01, 0, 1));
        metric.put(Measure.HOLE, in("mm", .001, 1, 2));
        metric.put(Measure.DEPTH, in("cm", 10, 0, 1));
        metric.put(Measure.LENGTH, in("m", 1, 1, 2));
        metric.put(Measure.DISTANCE, in("km", 1000, 1, 2));
        metric.put(Measure.RAIN, in("mm", 1, 0, 1));
        metric.put(Measure.TEMPERATURE, in("c", 1, 0, 1));
        metric.put(Measure.TEMPERATURE_STEP, in("c", 1, 0, 1));
        metric.put(Measure.HEAT, in("gdd-c", 1.8, 0, 0));
        metric.put(Measure.SPEED, in("km-h", 1 / 3.6, 1, 2));
        metric.put(Measure.WIND, in("m-s", 1, 1, 1));
        metric.put(Measure.YIELD, in("t-ha", 1000 * Units.DRY_SHARE_OF_TRADE_CORN, 1, 2));
        metric.put(Measure.PLANTS, in("plants-ha", 1 / M2_PER_HA, -2, 0));
        metric.put(Measure.MONEY_RATE, in("usd-ha", 1, 0, 2));
        metric.put(Measure.NITROGEN_PRICE, in("usd-kg-n", 1, 2, 2));
        metric.put(Measure.CONCENTRATION, in("mg-kg", 1, 0, 1));
        return metric;
    }

    /** What is the same in both. */
    private static Map<Measure, ShownUnit> both() {
        Map<Measure, ShownUnit> both = new EnumMap<>(Measure.class);
        both.put(Measure.MONEY, in("usd", 1, 0, 2));
        both.put(Measure.CORN_PRICE, in("usd-bu", 1, 2, 2));
        both.put(Measure.CHANCE, in("chance", .1, 0, 0));
        both.put(Measure.SHARE, in("percent", .01, 0, 1));
        both.put(Measure.DURATION, in("min", 60, 0, 1));
        both.put(Measure.DAYS, in("days", 1, 0, 1));
        both.put(Measure.HOURS, in("hours", 1, 0, 1));
        return both;
    }
}
