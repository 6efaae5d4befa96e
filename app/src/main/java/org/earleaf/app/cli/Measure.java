// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.function.DoubleUnaryOperator;
import org.earleaf.units.Units;

/** A kind of figure that is printed: its unit in keys and in sentences, in either system, and how to get there. */
enum Measure {
    HEIGHT("in", "cm", "in", "cm", v -> v / 2.54, v -> v),
    /** Of soil, from mm. */
    DEPTH("in", "cm", "in", "cm", Units::inches, v -> v / 10),
    WATER("in", "mm", "in", "mm", Units::inches, v -> v),
    NITROGEN("lb_ac", "kg_ha", "lb/ac", "kg/ha", Units::lbAc, v -> v),
    /** From dry grain; both systems at the trade's 15.5 % moisture. */
    YIELD("bu_ac", "kg_ha", "bu/ac", "kg/ha", Units::buAc, v -> v / Units.DRY_SHARE_OF_TRADE_CORN),
    MONEY("usd_ac", "usd_ha", "$/ac", "$/ha", v -> v * Units.HA_PER_AC, v -> v),
    MONEY_A_DAY("usd_ac_day", "usd_ha_day", "$/ac", "$/ha", v -> v * Units.HA_PER_AC, v -> v),
    /** Heat sums, from °F d. */
    HEAT("f", "c", "F", "C", v -> v, v -> v / 1.8),
    /** At the boom, from m/s. */
    SPEED("mph", "m_s", "mph", "m/s", v -> v / Units.MS_PER_MPH, v -> v),
    /** Of the air, from °C. */
    AIR("f", "c", "F", "C", Units::fahrenheit, v -> v),
    LIQUID("gal_ac", "l_ha", "gal/ac", "L/ha", v -> v / Units.LHA_PER_GALAC, v -> v);

    private final String usKey;
    private final String metricKey;
    private final String usWord;
    private final String metricWord;
    private final DoubleUnaryOperator us;
    private final DoubleUnaryOperator metric;

    Measure(
            String usKey,
            String metricKey,
            String usWord,
            String metricWord,
            DoubleUnaryOperator us,
            DoubleUnaryOperator metric) {
        this.usKey = usKey;
        this.metricKey = metricKey;
        this.usWord = usWord;
        this.metricWord = metricWord;
        this.us = us;
        this.metric = metric;
    }

    String key(String name, boolean inMetric) {
        return name + "_" + (inMetric ? metricKey : usKey);
    }

    String unit(boolean inMetric) {
        return inMetric ? metricWord : usWord;
    }

    double value(double inside, boolean inMetric) {
        return (inMetric ? metric : us).applyAsDouble(inside);
    }
}
