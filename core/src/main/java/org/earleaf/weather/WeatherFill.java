// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Makes a contiguous series of a record with holes, and says what it did: never silently.
 *
 * <p>Temperatures are drawn on a straight line between the nearest known days, missing rain is 0, a highest temperature
 * below the lowest is swapped, and the two are kept at least 0.5 °C apart. Values that no corn country sees (beyond 55 °C
 * either way, more than 400 mm of rain in a day, radiation a tenth above a clear sky's) are taken as missing. These rules
 * are our own, in keeping with common practice, no source. A run of more than 30 filled days is reported as a
 * {@link WeatherGap} besides: it may be run through, but it says nothing about the place.
 */
public final class WeatherFill {
    /** A longer run of filled days is a {@link WeatherGap}. */
    public static final int LONG_GAP_DAYS = 30;

    static final double MOST_C = 55;
    static final double MOST_RAIN_MM = 400;
    private static final double MOST_OF_CLEAR_SKY = 1.1;
    static final double APART_C = 0.5;

    /** What was changed in a record. */
    enum Change {
        HIGHEST_BEYOND,
        LOWEST_BEYOND,
        RAIN_BEYOND,
        SUN_BEYOND,
        SWAPPED,
        NO_ROW,
        NO_HIGHEST,
        NO_LOWEST,
        NO_RAIN,
        APART
    }

    private final LocalDate first;
    private final WeatherDay[] given;
    private final double[] tmax;
    private final double[] tmin;
    private final double[] rain;
    private final double[] solar;
    private final FillNotes notes;

    /** The filled record, its long gaps, and a remark for every kind of change and year. */
    public record Filled(WeatherSeries series, List<WeatherGap> gaps, List<Flag> flags) {
        public Filled {
            gaps = List.copyOf(gaps);
            flags = List.copyOf(flags);
        }
    }

    /**
     * Fills a record.
     *
     * @param raw days in any order, each once; {@code NaN} where a value is missing; whole days may be missing
     * @param site where the record was made, for the radiation of a clear sky
     * @param where what to call the record in remarks, "weather.csv"
     */
    public static Filled fill(List<WeatherDay> raw, Site site, String where) {
        if (raw.isEmpty()) {
            return new Filled(new WeatherSeries(List.of()), List.of(), List.of());
        }
        List<WeatherDay> days = new ArrayList<>(raw);
        days.sort(Comparator.comparing(WeatherDay::date));
        WeatherFill work = new WeatherFill(days, where);
        work.rejectImpossible(site);
        work.swap();
        return work.filled(where);
    }

    private WeatherFill(List<WeatherDay> days, String where) {
        first = days.get(0).date();
        int n = index(days.get(days.size() - 1).date()) + 1;
        given = new WeatherDay[n];
        tmax = new double[n];
        tmin = new double[n];
        rain = new double[n];
        solar = new double[n];
        notes = new FillNotes(where);
        for (double[] values : List.of(tmax, tmin, rain, solar)) {
            Arrays.fill(values, Double.NaN);
        }
        for (WeatherDay day : days) {
            put(day, where);
        }
    }

    private void put(WeatherDay day, String where) {
        int k = index(day.date());
        if (given[k] != null) {
            throw new EarleafException(
                    Problem.of("weather.two-rows", Said.text(where), Said.of("found.two-rows", "day", day.date())));
        }
        given[k] = day;
        tmax[k] = day.tmax_C();
        tmin[k] = day.tmin_C();
        rain[k] = day.rain_mm();
        solar[k] = day.solar_MJm2();
    }

    private int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }

    private LocalDate date(int k) {
        return first.plusDays(k);
    }

    private void rejectImpossible(Site site) {
        for (int k = 0; k < given.length; k++) {
            if (Math.abs(tmax[k]) > MOST_C) {
                tmax[k] = Double.NaN;
                notes.add(date(k), Change.HIGHEST_BEYOND);
            }
            if (Math.abs(tmin[k]) > MOST_C) {
                tmin[k] = Double.NaN;
                notes.add(date(k), Change.LOWEST_BEYOND);
            }
            if (rain[k] < 0 || rain[k] > MOST_RAIN_MM) {
                rain[k] = Double.NaN;
                notes.add(date(k), Change.RAIN_BEYOND);
            }
            if (solar[k] < 0 || solar[k] > MOST_OF_CLEAR_SKY * clearSky_MJm2(k, site)) {
                solar[k] = Double.NaN;
                notes.add(date(k), Change.SUN_BEYOND);
            }
        }
    }

    private double clearSky_MJm2(int k, Site site) {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(site.latitude_deg(), date(k).getDayOfYear());
        return ReferenceEvapotranspiration.clearSky_MJm2(ra, site.elevation_m());
    }

    private void swap() {
        for (int k = 0; k < given.length; k++) {
            if (tmax[k] < tmin[k]) {
                double low = tmax[k];
                tmax[k] = tmin[k];
                tmin[k] = low;
                notes.add(date(k), Change.SWAPPED);
            }
        }
    }

    private Filled filled(String where) {
        boolean[] noHigh = missing(tmax);
        boolean[] noLow = missing(tmin);
        boolean[] noRain = missing(rain);
        noteMissing(noHigh, noLow, noRain);
        drawLine(tmax, Said.of("found.no-highest"), where);
        drawLine(tmin, Said.of("found.no-lowest"), where);
        List<WeatherDay> days = new ArrayList<>(given.length);
        for (int k = 0; k < given.length; k++) {
            keepApart(k, noHigh[k], noLow[k]);
            days.add(day(k, noRain[k] ? 0 : rain[k]));
        }
        List<WeatherGap> gaps = gaps(noHigh, noLow, noRain);
        List<Flag> flags = notes.flags();
        for (WeatherGap gap : gaps) {
            flags.add(gapFlag(gap, where));
        }
        return new Filled(new WeatherSeries(days), gaps, flags);
    }

    private static boolean[] missing(double[] values) {
        boolean[] out = new boolean[values.length];
        for (int k = 0; k < values.length; k++) {
            out[k] = Double.isNaN(values[k]);
        }
        return out;
    }

    private void noteMissing(boolean[] noHigh, boolean[] noLow, boolean[] noRain) {
        for (int k = 0; k < given.length; k++) {
            if (given[k] == null) {
                notes.add(date(k), Change.NO_ROW);
                continue;
            }
            if (noHigh[k]) {
                notes.add(date(k), Change.NO_HIGHEST);
            }
            if (noLow[k]) {
                notes.add(date(k), Change.NO_LOWEST);
            }
            if (noRain[k]) {
                notes.add(date(k), Change.NO_RAIN);
            }
        }
    }

    /** Straight line between known days; before the first and after the last known day the nearest value. */
    private static void drawLine(double[] values, Said none, String where) {
        int known = -1;
        for (int k = 0; k < values.length; k++) {
            if (!Double.isNaN(values[k])) {
                for (int gap = known + 1; gap < k; gap++) {
                    double share = (double) (gap - known) / (k - known);
                    values[gap] = known < 0 ? values[k] : values[known] + share * (values[k] - values[known]);
                }
                known = k;
            }
        }
        if (known < 0) {
            throw new EarleafException(Problem.of("weather.no-temperature", Said.text(where), none));
        }
        Arrays.fill(values, known + 1, values.length, values[known]);
    }

    /** What was observed stays; what was filled gives way. */
    private void keepApart(int k, boolean highFilled, boolean lowFilled) {
        if (tmax[k] - tmin[k] >= APART_C) {
            return;
        }
        if (highFilled && !lowFilled) {
            tmax[k] = tmin[k] + APART_C;
        } else if (lowFilled && !highFilled) {
            tmin[k] = tmax[k] - APART_C;
        } else {
            double middle = (tmax[k] + tmin[k]) / 2;
            tmax[k] = middle + APART_C / 2;
            tmin[k] = middle - APART_C / 2;
            if (!highFilled) {
                notes.add(date(k), Change.APART);
            }
        }
    }

    private WeatherDay day(int k, double rain_mm) {
        WeatherDay d = given[k] == null ? WeatherDay.of(date(k), 0, 0, 0) : given[k];
        return new WeatherDay(
                date(k),
                tmax[k],
                tmin[k],
                rain_mm,
                solar[k],
                d.wind_ms(),
                d.rhMax_pct(),
                d.rhMin_pct(),
                d.dewPoint_C());
    }

    private List<WeatherGap> gaps(boolean[] noHigh, boolean[] noLow, boolean[] noRain) {
        boolean[] inGap = new boolean[given.length];
        for (boolean[] filled : List.of(noHigh, noLow, noRain)) {
            markLongRuns(filled, LONG_GAP_DAYS, inGap);
        }
        List<WeatherGap> gaps = new ArrayList<>();
        int start = -1;
        for (int k = 0; k <= inGap.length; k++) {
            boolean in = k < inGap.length && inGap[k];
            if (in && start < 0) {
                start = k;
            } else if (!in && start >= 0) {
                gaps.add(new WeatherGap(date(start), date(k - 1)));
                start = -1;
            }
        }
        return gaps;
    }

    private static void markLongRuns(boolean[] filled, int longest, boolean[] mark) {
        int run = 0;
        for (int k = 0; k <= filled.length; k++) {
            if (k < filled.length && filled[k]) {
                run++;
            } else {
                if (run > longest) {
                    Arrays.fill(mark, k - run, k, true);
                }
                run = 0;
            }
        }
    }

    private static Flag gapFlag(WeatherGap gap, String where) {
        long days = ChronoUnit.DAYS.between(gap.first(), gap.last()) + 1;
        return new Flag(
                Said.of("flag.span", "where", where, "first", gap.first(), "last", gap.last()),
                Said.of("fill.long-gap", "n", days));
    }
}
