// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.util.List;

/**
 * How it rains in one calendar month: a chain of wet and dry days, and gamma amounts on wet days.
 *
 * <pre>
 * P(W|D) = n(D then W) / n(D)       P(W|W) = n(W then W) / n(W)       wet share = P(W|D) / (1 + P(W|D) - P(W|W))
 * s = ln(mean) - mean(ln)           a = (1 + sqrt(1 + 4 s / 3)) / (4 s)        b = mean / a
 *
 * P      chance that a day is wet after a dry or wet day
 * a, b   shape and scale [mm] of the amounts on wet days
 * Range  a day is wet from 0.25 mm (0.01 in)
 * Source chain and amounts: Richardson 1981, Water Resour. Res. 17:182; shape: Thom 1958, Mon. Weather Rev. 86:117.
 * Check  RainMonthTest, WeatherGeneratorTest
 * </pre>
 */
record RainMonth(double wetAfterDry, double wetAfterWet, double shape, double scale_mm) {
    static final double WET_MM = 0.25;
    /** Below this number of wet days a shape is not fitted. */
    private static final int FEW = 10;
    /** Shape of daily amounts, .74 +- .05 over the months of three Corn Belt stations 1985-2014; own construct. */
    private static final double USUAL_SHAPE = 0.74;
    /** P(W|W) - P(W|D): .20 at the same stations; Geng et al. 1986, Agric. For. Meteorol. 36:363, have .25 (memory). */
    private static final double PERSISTENCE = 0.20;

    /** Share of days that are wet in the long run. */
    double wetShare() {
        return wetAfterDry / (1 + wetAfterDry - wetAfterWet);
    }

    /** Fits days whose kinds of the day before are given. */
    static RainMonth fit(List<WeatherDay> days, List<Boolean> wetBefore) {
        int[] count = new int[2];
        int[] turnedWet = new int[2];
        double sum = 0;
        double logs = 0;
        for (int k = 0; k < days.size(); k++) {
            int before = wetBefore.get(k) ? 1 : 0;
            double rain_mm = days.get(k).rain_mm();
            count[before]++;
            if (rain_mm >= WET_MM) {
                turnedWet[before]++;
                sum += rain_mm;
                logs += StrictMath.log(rain_mm);
            }
        }
        int wet = turnedWet[0] + turnedWet[1];
        double mean = wet == 0 ? WET_MM : sum / wet;
        double shape = wet < FEW ? USUAL_SHAPE : thom(StrictMath.log(mean) - logs / wet);
        return new RainMonth(share(turnedWet[0], count[0]), share(turnedWet[1], count[1]), shape, mean / shape);
    }

    static double thom(double s) {
        return (1 + StrictMath.sqrt(1 + 4 * s / 3)) / (4 * s);
    }

    private static double share(int part, int whole) {
        return whole == 0 ? 0 : (double) part / whole;
    }

    /** From a month's mean rain and number of wet days. */
    static RainMonth of(MonthlyClimate month) {
        double wet = month.wetDays() / month.days();
        double wetAfterDry = (1 - PERSISTENCE) * wet;
        double mean = month.wetDays() > 0 ? month.rain_mm() / month.wetDays() : WET_MM;
        return new RainMonth(wetAfterDry, wetAfterDry + PERSISTENCE, USUAL_SHAPE, mean / USUAL_SHAPE);
    }
}
