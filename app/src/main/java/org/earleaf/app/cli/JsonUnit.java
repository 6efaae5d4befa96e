// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.app.words.Words;
import org.earleaf.units.Measure;

/** What a key of JSON says its figure is: a measure, and its unit in either system as keys have it. */
enum JsonUnit {
    HEIGHT(Measure.HEIGHT, "in", "cm"),
    /** Of soil. */
    DEPTH(Measure.DEPTH, "in", "cm"),
    WATER(Measure.RAIN, "in", "mm"),
    NITROGEN(Measure.NITROGEN_RATE, "lb_ac", "kg_ha"),
    /** At the trade's moisture; sentences have tonnes, keys kilograms. */
    YIELD(Measure.YIELD, "bu_ac", "kg_ha"),
    MONEY(Measure.MONEY_RATE, "usd_ac", "usd_ha"),
    MONEY_A_DAY(Measure.MONEY_RATE, "usd_ac_day", "usd_ha_day"),
    HEAT(Measure.HEAT, "f", "c"),
    /** At the boom. */
    SPEED(Measure.WIND, "mph", "m_s"),
    AIR(Measure.TEMPERATURE, "f", "c"),
    PLANTS(Measure.PLANTS, "plants_ac", "plants_ha"),
    LIQUID(Measure.VOLUME_RATE, "gal_ac", "l_ha");

    private static final double KG_PER_T = 1000;

    private final Measure measure;
    private final String us;
    private final String metric;

    JsonUnit(Measure measure, String us, String metric) {
        this.measure = measure;
        this.us = us;
        this.metric = metric;
    }

    String key(String name, boolean inMetric) {
        return name + "_" + (inMetric ? metric : us);
    }

    double value(double inside, boolean inMetric) {
        double shown = Words.in(inMetric).value(measure.of(inside));
        return this == YIELD && inMetric ? shown * KG_PER_T : shown;
    }
}
