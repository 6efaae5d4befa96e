// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * How like this season an earlier year was up to the same calendar day, and on which of its days the future may begin.
 *
 * <pre>
 * weight = 0.5 w/sum(w) + 0.5/n,   w = exp(-d^2/2),   d^2 = zP^2 + zT^2
 *
 * zP, zT  how far the last 60 days of the year lie from those of this season, in rain and in warmth (sum of daily mean
 *         temperatures above 10 °C), as multiples of the standard deviation over the n years
 * Range   any n; a year whose 60 days are not on record, and every year when this season's are not, counts as the mean
 * Source  weighting past years by likeness: Werner et al. 2004, J. Hydrometeorol. 5:1076, from memory; measure, kernel
 *         and the half that stays equal: own construct
 * Check   YearLikenessTest
 * </pre>
 */
final class YearLikeness {
    private static final int DAYS = 60;
    private static final double BASE_C = 10;
    /** A spell of more wet days than this is not cut; own construct. */
    private static final int SHORT_SPELL_D = 2;
    /** How far the days of a year may be moved for it. */
    private static final int MOST_SHIFT_D = 7;

    private YearLikeness() {}

    /** Rain [mm] and warmth [°C d] of the 60 days up to an evening; not numbers where the record has gaps. */
    static double[] before(WeatherSeries record, LocalDate evening) {
        LocalDate from = evening.minusDays(DAYS - 1);
        if (!record.covers(from, evening)) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double[] sums = new double[2];
        for (LocalDate d = from; !d.isAfter(evening); d = d.plusDays(1)) {
            WeatherDay day = record.at(d);
            sums[0] += day.rain_mm();
            sums[1] += Math.max(0, day.tmean_C() - BASE_C);
        }
        return sums;
    }

    /** Weights of years that add up to 1, from what {@link #before} tells of each and of now. */
    static double[] weights(double[][] years, double[] now) {
        double[] sd = {spread(years, 0), spread(years, 1)};
        double[] weights = new double[years.length];
        Arrays.setAll(weights, y -> alike((years[y][0] - now[0]) / sd[0], (years[y][1] - now[1]) / sd[1]));
        double mean =
                Arrays.stream(weights).filter(w -> !Double.isNaN(w)).average().orElse(0);
        // Where nothing is known, or no year is anything like this one, years count alike.
        Arrays.setAll(weights, y -> mean == 0 ? 1 : Double.isNaN(weights[y]) ? mean : weights[y]);
        double sum = Arrays.stream(weights).sum();
        Arrays.setAll(weights, y -> 0.5 * weights[y] / sum + 0.5 / years.length);
        return weights;
    }

    private static double alike(double zP, double zT) {
        return Math.exp(-0.5 * (zP * zP + zT * zT));
    }

    /** Standard deviation over the years on record; at least next to nothing, so that years all alike count alike. */
    private static double spread(double[][] years, int k) {
        double[] values = Arrays.stream(years)
                .mapToDouble(y -> y[k])
                .filter(v -> !Double.isNaN(v))
                .toArray();
        double mean = Arrays.stream(values).average().orElse(0);
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        return values.length < 2 ? Double.NaN : Math.max(1e-9, Math.sqrt(squares / (values.length - 1)));
    }

    /**
     * By how many days the days of a year are moved so that the future does not begin in the middle of a wet spell of
     * more than two days: the fewest, at most a week; 0 when no such day is near or on record.
     */
    static int shift_d(WeatherSeries record, LocalDate first, LocalDate last) {
        for (int k = 0; k <= 2 * MOST_SHIFT_D; k++) {
            int shift = (k + 1) / 2 * (k % 2 == 0 ? -1 : 1);
            LocalDate begin = first.plusDays(shift);
            boolean onRecord = record.covers(begin.minusDays(1), last.plusDays(shift));
            if (onRecord && !cutsSpell(record, begin)) {
                return shift;
            }
        }
        return 0;
    }

    private static boolean cutsSpell(WeatherSeries record, LocalDate begin) {
        int before = 0;
        while (before <= SHORT_SPELL_D && isWet(record, begin.minusDays(before + 1))) {
            before++;
        }
        int after = 0;
        while (after <= SHORT_SPELL_D && isWet(record, begin.plusDays(after))) {
            after++;
        }
        return before > 0 && after > 0 && before + after > SHORT_SPELL_D;
    }

    private static boolean isWet(WeatherSeries record, LocalDate date) {
        return record.covers(date, date) && record.at(date).rain_mm() >= RainMonth.WET_MM;
    }
}
