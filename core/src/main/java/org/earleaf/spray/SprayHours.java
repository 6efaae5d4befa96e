// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.LeafWetness;
import org.earleaf.weather.Site;
import org.earleaf.weather.SunTimes;
import org.earleaf.weather.WeatherHour;

/**
 * Which hours suit a pass: each hour as good as its worst factor, with everything that speaks against it, and the runs
 * of hours in which the pass may be made.
 *
 * <pre>
 * wind later than 24 h after the forecast was issued is taken a fifth stronger against upper limits
 *
 * Range  hours in order, gaps allowed; a gap ends a run
 * Source a fifth: assumption; the runs: own construct
 * Check  SprayHoursTest
 * </pre>
 */
public final class SprayHours {
    private static final double DOUBT_LATER = 1.2;
    private static final int SURE_H = 24;
    private static final int HALF_A_DAY = 12;

    private final List<WeatherHour> hours;
    private final SprayJob job;
    private final Site site;
    private final ZoneId zone;
    private final LocalDateTime issued;

    private SprayHours(List<WeatherHour> hours, SprayJob job, Site site, ZoneId zone, LocalDateTime issued) {
        this.hours = List.copyOf(hours);
        this.job = job;
        this.site = site;
        this.zone = zone;
        this.issued = issued;
        for (int k = 1; k < hours.size(); k++) {
            if (!hours.get(k).at().isAfter(hours.get(k - 1).at())) {
                throw new EarleafException(Problem.of(
                        "hours.out-of-order",
                        Said.of("where.hourly-weather"),
                        Said.of(
                                "found.hour-after",
                                "hour",
                                hours.get(k).at(),
                                "before",
                                hours.get(k - 1).at())));
            }
        }
    }

    /**
     * Judges every hour.
     *
     * @param hours in order; those before the first one of interest serve to see rain and dew
     * @param issued when the forecast was made, in the farm's own time
     */
    public static List<SprayHour> of(
            List<WeatherHour> hours, SprayJob job, Site site, ZoneId zone, LocalDateTime issued) {
        SprayHours judge = new SprayHours(hours, job, site, zone, issued);
        List<LeafWetness> leaves = LeafWetness.byHumidity(hours, job.canopyClosed());
        List<SprayHour> judged = new ArrayList<>();
        for (int k = 0; k < hours.size(); k++) {
            judged.add(judge.hour(k, leaves.get(k)));
        }
        return List.copyOf(judged);
    }

    /**
     * Runs of hours that are not unfit.
     *
     * @param least_h shortest run worth starting for, such as one load with its refill. The time until rainfast need
     *     not be part of it: each hour has looked at the rain after it.
     */
    public static List<SprayWindow> windows(List<SprayHour> hours, double least_h) {
        List<SprayWindow> windows = new ArrayList<>();
        int start = -1;
        for (int k = 0; k <= hours.size(); k++) {
            boolean fit = k < hours.size() && hours.get(k).fit() != SprayFit.UNFIT;
            boolean follows = start >= 0 && k < hours.size() && isNext(hours.get(k - 1), hours.get(k));
            if (start >= 0 && !(fit && follows)) {
                if (k - start >= least_h) {
                    windows.add(
                            window(hours.subList(start, k), follows ? Optional.of(hours.get(k)) : Optional.empty()));
                }
                start = -1;
            }
            if (fit && start < 0) {
                start = k;
            }
        }
        return List.copyOf(windows);
    }

    private static boolean isNext(SprayHour a, SprayHour b) {
        return a.hour().at().plusHours(1).equals(b.hour().at());
    }

    private static SprayWindow window(List<SprayHour> run, Optional<SprayHour> next) {
        SprayFit worst = run.stream().map(SprayHour::fit).reduce(SprayFit.FIT, SprayFit::worse);
        List<HourReason> cautions = new ArrayList<>();
        run.stream().flatMap(h -> h.against().stream()).forEach(reason -> {
            if (cautions.stream().noneMatch(c -> c.factor() == reason.factor())) {
                cautions.add(reason);
            }
        });
        return new SprayWindow(
                run.get(0).hour().at(),
                run.get(run.size() - 1).hour().at().plusHours(1),
                worst,
                cautions,
                next.flatMap(h -> h.against().stream().findFirst()));
    }

    private SprayHour hour(int k, LeafWetness leaves) {
        WeatherHour h = hours.get(k);
        double wind = BoomWind.fromStation_ms(h.wind_ms(), job.boom_m());
        double deltaT = WetBulb.deltaT_C(h.air_C(), h.rh_pct());
        boolean nearNight = Inversion.isNearNight(h.at(), SunTimes.of(h.at().toLocalDate(), site, zone));
        Inversion inversion = Inversion.of(
                new Inversion.Signs(nearNight, wind, h.cloud(), leaves != LeafWetness.DRY, false, range_C(k)));
        List<Optional<HourReason>> found = new ArrayList<>();
        found.add(SprayBands.label(job.label()));
        if (job.kind() == SprayJob.Kind.FOLIAR) {
            foliar(k, new Air(wind, deltaT, nearNight, leaves, inversion), found);
        } else {
            stream(k, wind, found);
        }
        found.add(ground(k));
        List<HourReason> against = found.stream()
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(HourReason::fit).reversed())
                .toList();
        SprayFit fit = against.isEmpty() ? SprayFit.FIT : against.get(0).fit();
        return new SprayHour(h, fit, wind, deltaT, inversion, against);
    }

    /** What an hour's weather comes to over the crop. */
    private record Air(double wind_ms, double deltaT_C, boolean nearNight, LeafWetness leaves, Inversion inversion) {}

    private void foliar(int k, Air air, List<Optional<HourReason>> found) {
        WeatherHour h = hours.get(k);
        double doubt = doubt(h);
        double gust = BoomWind.fromStation_ms(h.gust_ms(), job.boom_m());
        int rainfast = (int) Math.ceil(job.label().rainfast_h().or(0));
        List<WeatherHour> until = from(k, rainfast + 1);
        found.add(SprayBands.wind(air.wind_ms, doubt * air.wind_ms, air.nearNight, job.label()));
        found.add(SprayBands.gusts(doubt * gust, doubt * air.wind_ms, job.label()));
        found.add(SprayBands.deltaT(air.deltaT_C));
        found.add(SprayBands.temperature(h.air_C(), job.label()));
        found.add(SprayBands.humidity(h.rh_pct(), job.mediumOrFiner()));
        found.add(SprayBands.leaves(air.leaves));
        found.add(SprayBands.rain(until, until.size() == rainfast + 1, rainfast));
        found.add(SprayBands.inversion(air.inversion, job.label().inversionBan().orElse(false)));
    }

    /** A stream on the ground: of the label its wind still holds. */
    private void stream(int k, double wind, List<Optional<HourReason>> found) {
        double most = job.label().windMax_ms().or(Double.POSITIVE_INFINITY);
        if (doubt(hours.get(k)) * wind > most) {
            found.add(SprayBands.wind(wind, doubt(hours.get(k)) * wind, false, job.label()));
        }
        found.add(SprayBands.storm(rain_mm(from(k, 24))));
    }

    private double doubt(WeatherHour h) {
        return h.at().isAfter(issued.plusHours(SURE_H)) ? DOUBT_LATER : 1;
    }

    /** The hours of a stretch that begins with hour k. */
    private List<WeatherHour> from(int k, int length_h) {
        LocalDateTime end = hours.get(k).at().plusHours(length_h);
        int to = k;
        while (to < hours.size() && hours.get(to).at().isBefore(end)) {
            to++;
        }
        return hours.subList(k, to);
    }

    private Optional<HourReason> ground(int k) {
        int extra = job.ground().extraHours();
        return SprayBands.ground(job.ground(), rainBefore(k, 6), rainBefore(k, 24 + extra), rainBefore(k, 48 + extra));
    }

    /** Rain of the hours before hour k; where they reach behind the first one, the rain of whole days there is added. */
    private double rainBefore(int k, int length_h) {
        LocalDateTime begin = hours.get(k).at().minusHours(length_h);
        int from = k;
        while (from > 0 && !hours.get(from - 1).at().isBefore(begin)) {
            from--;
        }
        double rain = rain_mm(hours.subList(from, k));
        LocalDateTime first = hours.get(0).at();
        if (length_h >= 24 && begin.isBefore(first)) {
            rain += job.ground().rainDayBefore_mm();
            rain += begin.isBefore(first.minusHours(24)) ? job.ground().rainTwoDaysBefore_mm() : 0;
        }
        return rain;
    }

    private static double rain_mm(List<WeatherHour> of) {
        double sum = 0;
        for (WeatherHour h : of) {
            sum += Double.isNaN(h.rain_mm()) ? 0 : h.rain_mm();
        }
        return sum;
    }

    /** Between the warmest and the coldest hour within half a day; NaN when fewer than half a day is known. */
    private double range_C(int k) {
        LocalDateTime at = hours.get(k).at();
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        int known = 0;
        for (int j = Math.max(0, k - HALF_A_DAY); j < Math.min(hours.size(), k + HALF_A_DAY + 1); j++) {
            WeatherHour h = hours.get(j);
            boolean near = !h.at().isBefore(at.minusHours(HALF_A_DAY)) && !h.at().isAfter(at.plusHours(HALF_A_DAY));
            if (near && !Double.isNaN(h.air_C())) {
                high = Math.max(high, h.air_C());
                low = Math.min(low, h.air_C());
                known++;
            }
        }
        return known >= HALF_A_DAY ? high - low : Double.NaN;
    }
}
