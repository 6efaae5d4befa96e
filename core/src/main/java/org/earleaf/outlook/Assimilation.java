// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.earleaf.field.Reading;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.ParameterDraws;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Lets readings correct an ensemble: members that foresaw a reading live on, the others give way to copies of them. A
 * nitrate test shifts all of them instead ({@link KalmanStep}).
 *
 * <pre>
 * w = prod exp(-z^2/2),  z = (y - h)/s, on the logarithm for nitrate and ammonium
 * systematic resampling to equal weights, then parameters move by the jitter of ParameterDraws
 * every |z| above 4: s is widened by 1.5 until one member explains it, and the reading is flagged
 *
 * y, h   what was read, what the member would show
 * s      nitrate 30 % (50 % with a band in the soil, 20 % below 12 in), ammonium 35 %, at one distance from the row 40 %;
 *        stage 0.4 leaf to V10, 0.7 after; height 4 cm + 4 %; cover 0.05; moisture 0.03
 * Source particle filter: Gordon, Salmond & Smith 1993; systematic resampling: Kitagawa 1996 (from memory); nitrate
 *        samples near lognormal: Starr, Meisinger & Parkin 1992, SSSAJ 56:1824; errors: own construct
 * Check  AssimilationTest
 * </pre>
 *
 * Readings choose among four times as many members as go on from today, and every fourth of the chosen goes on: a choice
 * made several times over among a hundred leaves a handful, and a handful is a poor forecast. States are copied whole, never mixed, so every member's water and nitrogen still close.
 */
final class Assimilation {
    private static final double CONFLICT_Z = 4;
    private static final double WIDEN = 1.5;

    private final ZoneSeason season;
    private final List<Flag> flags;
    private final List<Unforeseen> unforeseen = new ArrayList<>();
    private final long seed;
    private final boolean shiftsNitrate;

    /** @param shiftsNitrate whether a nitrate test shifts the members ({@link KalmanStep}) instead of choosing among them */
    Assimilation(ZoneSeason season, List<Flag> flags, long seed, boolean shiftsNitrate) {
        this.season = season;
        this.flags = flags;
        this.seed = seed;
        this.shiftsNitrate = shiftsNitrate;
    }

    /** The run corrected by the readings of one day: the day that was stepped last, or is next. */
    SeasonRun correct(SeasonRun run, List<Reading> readings) {
        long day = readings.get(0).date().toEpochDay() + 1;
        double[] log = new double[run.members()];
        boolean any = false;
        List<Reading> shifting = new ArrayList<>();
        for (Reading r : readings) {
            if (shiftsNitrate && r.kind() == Reading.Kind.NITRATE) {
                shifting.add(r);
            } else {
                any |= weigh(run, r, log);
            }
        }
        SeasonRun corrected = any ? resample(run, log, day) : run;
        for (Reading r : shifting) {
            corrected = shifted(corrected, r, seed + 97 * day + shifting.indexOf(r));
        }
        return corrected;
    }

    private SeasonRun shifted(SeasonRun run, Reading r, long draw) {
        double[] shown = Baseline.each(run, m -> Observing.of(run, m, r));
        if (Double.isNaN(shown[0])) {
            return run;
        }
        KalmanStep step = KalmanStep.of(run, r, spread(r), draw);
        if (step.isUnforeseen()) {
            Spread held = Spread.of(shown);
            unforeseen.add(new Unforeseen(r.date(), r.value(), held));
            flags.add(new Flag(
                    r.title(),
                    Said.of(
                            "flag.test-unforeseen",
                            "entered",
                            r.entered(),
                            "low",
                            Measure.CONCENTRATION.of(held.p10()),
                            "high",
                            Measure.CONCENTRATION.of(held.p90()))));
        }
        return step.shifted(run, r);
    }

    /** Nitrate tests that lay beyond what the members held, so that these had to be widened. */
    List<Unforeseen> unforeseen() {
        return List.copyOf(unforeseen);
    }

    private boolean weigh(SeasonRun run, Reading r, double[] log) {
        double[] z = new double[log.length];
        double least = Double.POSITIVE_INFINITY;
        for (int m = 0; m < z.length; m++) {
            double h = Observing.of(run, m, r);
            if (Double.isNaN(h)) {
                return false;
            }
            z[m] = deviation(r, h, run.collars(m));
            least = Math.min(least, Math.abs(z[m]));
        }
        double widened = 1;
        while (least / widened > CONFLICT_Z) {
            widened *= WIDEN;
        }
        if (widened > 1) {
            flags.add(new Flag(r.title(), Said.of("flag.reading-conflicts", "entered", r.entered())));
        }
        for (int m = 0; m < z.length; m++) {
            log[m] -= 0.5 * z[m] * z[m] / (widened * widened);
        }
        return true;
    }

    private double deviation(Reading r, double h, double collars) {
        return switch (r.kind()) {
            case NITRATE, AMMONIUM -> (Math.log(Math.max(.1, r.value())) - Math.log(Math.max(.1, h))) / spread(r);
            case STAGE -> (r.value() - h) / ReadingError.stage(collars);
            case HEIGHT -> (r.value() - h) / ReadingError.height_cm(h);
            case COVER -> (r.value() - h) / ReadingError.COVER;
            default -> (r.value() - h) / ReadingError.MOISTURE;
        };
    }

    /** Spread of the logarithm of a soil test. */
    private double spread(Reading r) {
        if (r.kind() == Reading.Kind.AMMONIUM) {
            return ReadingError.AMMONIUM;
        }
        if (r.position() != Reading.Position.RANDOM) {
            return ReadingError.AT_ONE_DISTANCE;
        }
        if (r.top_mm() >= SoilProfile.FOOT_MM) {
            return ReadingError.NITRATE_BELOW_FOOT;
        }
        return season.isBanded(r.date()) ? ReadingError.NITRATE_NEAR_BAND : ReadingError.NITRATE;
    }

    private SeasonRun resample(SeasonRun run, double[] log, long day) {
        int[] from = systematic(log, log.length, new SplittableRandom(seed + day).nextDouble());
        List<ParameterSet> sets = new ArrayList<>();
        for (int f : from) {
            sets.add(run.parameters(f));
        }
        int[] weatherOf = ZoneEnsemble.weatherOf(IntStream.range(0, from.length), run.weather());
        return run.branch(from, ParameterDraws.jittered(sets, seed + 31 * day), run.weather(), weatherOf);
    }

    /** The same with the comb in the middle, for weights that are no accident. */
    static int[] systematic(double[] logWeights, int n) {
        return systematic(logWeights, n, 0.5);
    }

    /** Which of the weighted each of n copies; u in [0, 1) starts the comb. */
    static int[] systematic(double[] logWeights, int n, double u) {
        double top = Arrays.stream(logWeights).max().orElseThrow();
        double[] weights = Arrays.stream(logWeights).map(w -> Math.exp(w - top)).toArray();
        double total = Arrays.stream(weights).sum();
        int[] from = new int[n];
        int at = 0;
        double sum = weights[0] / total;
        for (int m = 0; m < n; m++) {
            while (sum < (m + u) / n && at < weights.length - 1) {
                at++;
                sum += weights[at] / total;
            }
            from[m] = at;
        }
        return from;
    }
}
