// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Reads a catch: each outlet against its rated flow and against its neighbours.
 *
 * <pre>
 * deviation = Qi/Qn - 1, REPLACE above 0.10 either way; |Qi/Qm - 1| above 0.05 CHECK
 * CV = 100 s / Qm, s with n - 1; up to 5 good, to 10 fair, above fail
 *
 * Qi Qm  caught flow of an outlet, mean of the set     [m3/s]
 * Qn     rated flow at the pressure of the catch       [m3/s]
 * Range  three outlets at least
 * Source 10 % and 5 % rules: extension and state applicator guides; the whole set when more than two are worn or the
 *        mean is over 110 %: manual practice; CV limit 10 % from memory of ISO 16122-2
 * Check  CatchTestTest
 * </pre>
 */
public final class CatchTest {
    private static final double WORN = 0.10;
    private static final double UNEVEN = 0.05;
    private static final double GOOD_CV = 5;
    private static final double FAIR_CV = 10;
    private static final int MOST_WORN = 2;
    private static final double EPS = 1e-9;

    private CatchTest() {}

    /** What to do with an outlet. */
    public enum Verdict {
        GOOD,
        CHECK,
        REPLACE
    }

    /** What the hand does about an outlet. */
    public enum Advice {
        NONE,
        SCREEN,
        WORN,
        CLOGGED
    }

    /** How even a set is. */
    public enum Evenness {
        GOOD,
        FAIR,
        FAIL
    }

    /**
     * One outlet.
     *
     * @param number counts from 1
     * @param deviation from rated, share
     */
    public record Outlet(int number, double flow_m3s, double deviation, Verdict verdict) {
        public Advice advice() {
            return switch (verdict) {
                case GOOD -> Advice.NONE;
                case CHECK -> Advice.SCREEN;
                case REPLACE -> deviation > 0 ? Advice.WORN : Advice.CLOGGED;
            };
        }
    }

    /**
     * The set.
     *
     * @param cv_pct coefficient of variation [%]
     * @param replaceAll when the whole set should go
     */
    public record Result(
            double mean_m3s, double s_m3s, double cv_pct, Evenness evenness, boolean replaceAll, List<Outlet> outlets) {
        public Result {
            outlets = List.copyOf(outlets);
        }

        public List<Outlet> listToReplace() {
            return outlets.stream().filter(o -> o.verdict() == Verdict.REPLACE).toList();
        }
    }

    /** Reads catches of the same liquid as the rating: convert with the density factor when UAN was caught. */
    public static Result read(double[] flows_m3s, double rated_m3s) {
        if (flows_m3s.length < 3) {
            throw new EarleafException(Problem.of(
                    "catch.too-few", Said.of("where.catch-test"), Said.of("found.outlets", "n", flows_m3s.length)));
        }
        double sum = 0;
        for (double flow : flows_m3s) {
            sum += flow;
        }
        double mean = sum / flows_m3s.length;
        double squares = 0;
        for (double flow : flows_m3s) {
            squares += (flow - mean) * (flow - mean);
        }
        double s = Math.sqrt(squares / (flows_m3s.length - 1));
        List<Outlet> outlets = new ArrayList<>();
        for (int k = 0; k < flows_m3s.length; k++) {
            outlets.add(outlet(k + 1, flows_m3s[k], rated_m3s, mean));
        }
        long worn = outlets.stream().filter(o -> o.verdict() == Verdict.REPLACE).count();
        double cv = 100 * s / mean;
        Evenness evenness = cv <= GOOD_CV ? Evenness.GOOD : cv <= FAIR_CV ? Evenness.FAIR : Evenness.FAIL;
        boolean all = worn > MOST_WORN || mean > (1 + WORN) * rated_m3s * (1 + EPS);
        return new Result(mean, s, cv, evenness, all, outlets);
    }

    private static Outlet outlet(int number, double flow, double rated, double mean) {
        double fromRated = flow / rated - 1;
        Verdict verdict = Verdict.GOOD;
        if (Math.abs(fromRated) > WORN + EPS) {
            verdict = Verdict.REPLACE;
        } else if (Math.abs(flow / mean - 1) > UNEVEN + EPS) {
            verdict = Verdict.CHECK;
        }
        return new Outlet(number, flow, fromRated, verdict);
    }

    /** Flow from a volume caught in a time. */
    public static double flow_m3s(double volume_m3, double time_s) {
        return volume_m3 / time_s;
    }

    /** Way on which the volume caught from one outlet, in fluid ounces, is the rate in gal/ac: 1/128 acre. */
    public static double ounceWay_m(double width_m) {
        return 4046.8564224 / 128 / width_m;
    }

    /** Speed from a way and a time. */
    public static double speed_ms(double way_m, double time_s) {
        return way_m / time_s;
    }

    /** Flow meter number (pulses a volume) after a refill showed the true total. */
    public static double meterNumber(double oldNumber, double displayed_m3, double actual_m3) {
        return oldNumber * displayed_m3 / actual_m3;
    }
}
