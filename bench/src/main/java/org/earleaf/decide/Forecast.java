// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.earleaf.exchange.StationFile;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherFill;
import org.earleaf.weather.WeatherSeries;

/**
 * How honest the forecast is and what its advice is worth, on twins over real weather of 2005 to 2014 with the years
 * before as record: whether p10 to p90 holds eight truths of ten, what each reading adds, and how the advice does beside
 * simple rules and beside knowing everything.
 */
public final class Forecast {
    private static final Site[] SITES = {
        new Site(40.08, -88.24, 220), new Site(41.79, -90.26, 180), new Site(41.05, -83.66, 235)
    };
    private static final String[] FILES = {"USC00118740.txt", "USC00131635.txt", "USC00332791.txt"};
    private static final double[][] SOILS = {{20, 24, 3.5, 18}, {10, 35, 5, 26}, {40, 20, 2.5, 14}, {65, 10, 1.2, 8}};
    private static final String[] STEPS = {"no reading", "nitrate", "nitrate, stage", "nitrate, stage, height"};

    private Forecast() {}

    /** One twin's scores by step of readings. */
    private record Score(boolean[] yield, boolean[] uptake, boolean[] dates, double[] crps, double[] nitrateMiss) {}

    /** @param args folder of the station files, twins scored, twins advised */
    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        int scored = args.length > 1 ? Integer.parseInt(args[1]) : 1000;
        int advised = args.length > 2 ? Integer.parseInt(args[2]) : 120;
        List<WeatherSeries> records = records(folder);
        String coverage = print(rows(records, scored), scored);
        List<double[]> regrets = IntStream.range(0, advised)
                .parallel()
                .mapToObj(k -> Regret.of(twin(records, k)))
                .toList();
        System.out.println(
                "{\"bench\":\"forecast\",\"twins\":" + scored + "," + coverage + "," + Regret.report(regrets) + "}");
    }

    static List<WeatherSeries> records(Path folder) {
        List<WeatherSeries> records = new ArrayList<>();
        for (int k = 0; k < FILES.length; k++) {
            Path file = folder.resolve(FILES[k]);
            records.add(
                    WeatherFill.fill(StationFile.read(file), SITES[k], FILES[k]).series());
        }
        return records;
    }

    /**
     * By step of readings: share of truths within p10 to p90 of yield, uptake and N short date, score of the yield
     * [bu/ac], miss of the logarithm of nitrate on the morning after the test.
     */
    static double[][] rows(List<WeatherSeries> records, int twins) {
        List<Score> scores = IntStream.range(0, twins)
                .parallel()
                .mapToObj(k -> score(twin(records, k)))
                .toList();
        double[][] rows = new double[STEPS.length][];
        for (int step = 0; step < STEPS.length; step++) {
            int k = step;
            rows[k] = new double[] {
                share(scores, s -> s.yield()[k] ? 1 : 0),
                share(scores, s -> s.uptake()[k] ? 1 : 0),
                share(scores, s -> s.dates()[k] ? 1 : 0),
                Units.buAc(share(scores, s -> s.crps()[k])),
                share(scores, s -> s.nitrateMiss()[k])
            };
        }
        return rows;
    }

    static Twin twin(List<WeatherSeries> records, int k) {
        int place = k % 3;
        double[] s = SOILS[k / 3 % 4];
        SoilProfile soil = SoilProfile.of(
                List.of(
                        new Horizon(0, 152.4, s[0], s[1], s[2], 6.5, s[3], Horizon.Measured.NOT_GIVEN),
                        new Horizon(152.4, 304.8, s[0], s[1], .8 * s[2], 6.5, s[3], Horizon.Measured.NOT_GIVEN),
                        new Horizon(304.8, 609.6, s[0], s[1], .43 * s[2], 6.5, s[3], Horizon.Measured.NOT_GIVEN),
                        new Horizon(609.6, 1524, s[0], s[1], .15 * s[2], 6.5, s[3], Horizon.Measured.NOT_GIVEN)),
                "twin",
                new ArrayList<>());
        PreviousCrop before = k / 12 % 2 == 0 ? PreviousCrop.CORN : PreviousCrop.SOYBEAN;
        return new Twin(records.get(place), SITES[place], 2005 + k / 24 % 10, soil, before, 1000 + k);
    }

    private static Score score(Twin twin) {
        SeasonRun truth = twin.end();
        double yield = truth.yield(0).grain_kgHa();
        double uptake = truth.shootN_kgHa(0);
        double shortDay = truth.shortDay(0) < 0 ? Double.POSITIVE_INFINITY : truth.shortDay(0);
        double nitrate = Math.log(Math.max(.1, twin.nitrate_ppm()));
        List<Reading> readings = twin.readings(true, true, true);
        int steps = STEPS.length;
        Score score = new Score(
                new boolean[steps], new boolean[steps], new boolean[steps], new double[steps], new double[steps]);
        for (int step = 0; step < steps; step++) {
            ZoneEnsemble ensemble =
                    ZoneEnsemble.of(twin.farm(readings.subList(0, step)), twin.zone(), twin.on(), false);
            score.nitrateMiss()[step] = Math.abs(mean(logNitrate(afterTest(twin, readings, step))) - nitrate);
            Baseline base = new Baseline(ensemble, ensemble.season());
            SeasonRun end = base.end();
            double[] uptakes = new double[end.members()];
            Arrays.setAll(uptakes, end::shootN_kgHa);
            double[] days = new double[end.members()];
            Arrays.setAll(days, m -> end.shortDay(m) < 0 ? Double.POSITIVE_INFINITY : end.shortDay(m));
            score.yield()[step] = within(base.yields_kgHa(), yield);
            score.uptake()[step] = within(uptakes, uptake);
            score.dates()[step] = within(days, shortDay);
            score.crps()[step] = crps(base.yields_kgHa(), yield);
        }
        return score;
    }

    /** All members on the morning after the soil test. */
    private static SeasonRun afterTest(Twin twin, List<Reading> readings, int step) {
        List<Reading> known = readings.subList(0, Math.min(1, step));
        return ZoneEnsemble.of(twin.farm(known), twin.zone(), twin.tested().plusDays(1), false)
                .members();
    }

    private static double[] logNitrate(SeasonRun run) {
        Reading foot = new Reading(
                "",
                new FieldPart("", ""),
                run.date(),
                Reading.Kind.NITRATE,
                0,
                "",
                new Reading.Sampled(0, 304.8, Reading.Position.RANDOM),
                "",
                Scouted.NOTHING);
        double[] seen = new double[run.members()];
        Arrays.setAll(seen, m -> Math.log(Math.max(.1, Observing.of(run, m, foot))));
        return seen;
    }

    private static boolean within(double[] members, double truth) {
        Spread s = Spread.of(members);
        return truth >= s.p10() && truth <= s.p90();
    }

    /** Continuous ranked probability score of an ensemble: mean |x - y| - mean |x - x'|/2 (Gneiting & Raftery 2007). */
    private static double crps(double[] x, double y) {
        double miss = 0;
        double apart = 0;
        for (double a : x) {
            miss += Math.abs(a - y);
            for (double b : x) {
                apart += Math.abs(a - b);
            }
        }
        return miss / x.length - apart / (2.0 * x.length * x.length);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    private static String print(double[][] rows, int twins) {
        System.out.printf(
                "Truth within p10 to p90, %d twins      yield  uptake  N short   CRPS yield bu/ac   nitrate miss (log)%n",
                twins);
        for (int k = 0; k < STEPS.length; k++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-36s %6.3f %7.3f %8.3f %18.2f %20.3f%n",
                    STEPS[k],
                    rows[k][0],
                    rows[k][1],
                    rows[k][2],
                    rows[k][3],
                    rows[k][4]);
        }
        double[] last = rows[STEPS.length - 1];
        return String.format(
                Locale.ROOT,
                "\"coverage_yield\":%.4f,\"coverage_uptake\":%.4f,\"coverage_n_short\":%.4f,\"crps_yield_bu_ac\":[%.3f,%.3f,%.3f,%.3f],\"nitrate_error_reduction\":%.4f",
                last[0],
                last[1],
                last[2],
                rows[0][3],
                rows[1][3],
                rows[2][3],
                rows[3][3],
                1 - rows[1][4] / rows[0][4]);
    }

    private static double share(List<Score> scores, ToDoubleFunction<Score> value) {
        return scores.stream().mapToDouble(value).average().orElse(Double.NaN);
    }
}
