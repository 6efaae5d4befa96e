// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.kernel;

import java.util.Arrays;
import java.util.Locale;
import org.earleaf.season.SeasonRun;

/**
 * Seasons a second on one thread: one member at a time, and 128 side by side. Each is timed in turns, 15 times after a
 * warm-up; printed are the medians and the 95 % interval of the median (ranks 4 and 12 of 15, binomial). Exit status 1
 * when a member alone does not give the yield it gives among the others.
 */
public final class Kernel {
    private static final int MEMBERS = 128;
    private static final int TURNS = 15;
    private static final int LOW_RANK = 3;
    private static final int HIGH_RANK = 11;
    private static final double WARM_S = 2;
    private static final double TURN_S = 0.25;
    private static final double NANO = 1e-9;

    private final InventedSeason season = new InventedSeason(1, MEMBERS);
    private double sink;

    public static void main(String[] args) {
        System.exit(new Kernel().run() ? 0 : 1);
    }

    private boolean run() {
        measureAlone(WARM_S);
        measureTogether(WARM_S);
        double[] alone = new double[TURNS];
        double[] together = new double[TURNS];
        double[] ratio = new double[TURNS];
        for (int k = 0; k < TURNS; k++) {
            alone[k] = measureAlone(TURN_S);
            together[k] = measureTogether(TURN_S);
            ratio[k] = together[k] / alone[k];
        }
        int different = different();
        System.out.printf(
                "Seasons of %d days a second on one thread; median (95 %% interval of %d turns)%n",
                InventedSeason.DAYS, TURNS);
        line("one member at a time", alone, "%.0f");
        line(MEMBERS + " members side by side", together, "%.0f");
        line("side by side over one at a time", ratio, "%.2f");
        System.out.printf("members whose yield differs alone and among others: %d of %d%n", different, MEMBERS);
        System.out.println("{\"bench\":\"kernel\",\"days\":" + InventedSeason.DAYS
                + ",\"lanes\":" + MEMBERS
                + ",\"seasons_per_s_one\":" + json(alone, "%.0f")
                + ",\"seasons_per_s_lanes\":" + json(together, "%.0f")
                + ",\"speed_up\":" + json(ratio, "%.3f")
                + ",\"different\":" + different + "}");
        return different == 0 && sink > 0;
    }

    private double measureAlone(double seconds) {
        long start = System.nanoTime();
        int done = 0;
        while ((System.nanoTime() - start) * NANO < seconds) {
            sink += season.alone(done % MEMBERS).yield(0).grain_kgHa();
            done++;
        }
        return done / ((System.nanoTime() - start) * NANO);
    }

    private double measureTogether(double seconds) {
        long start = System.nanoTime();
        int done = 0;
        while ((System.nanoTime() - start) * NANO < seconds) {
            sink += season.together().yield(done % MEMBERS).grain_kgHa();
            done += MEMBERS;
        }
        return done / ((System.nanoTime() - start) * NANO);
    }

    private int different() {
        SeasonRun together = season.together();
        int count = 0;
        for (int m = 0; m < MEMBERS; m++) {
            boolean same = Double.compare(
                            season.alone(m).yield(0).grain_kgHa(),
                            together.yield(m).grain_kgHa())
                    == 0;
            count += same ? 0 : 1;
        }
        return count;
    }

    private static double[] summary(double[] turns) {
        double[] sorted = turns.clone();
        Arrays.sort(sorted);
        return new double[] {sorted[TURNS / 2], sorted[LOW_RANK], sorted[HIGH_RANK]};
    }

    private static void line(String what, double[] turns, String form) {
        double[] s = summary(turns);
        String numbers = form + " (" + form + " to " + form + ")";
        System.out.printf(Locale.ROOT, "%-34s " + numbers + "%n", what, s[0], s[1], s[2]);
    }

    private static String json(double[] turns, String form) {
        double[] s = summary(turns);
        String numbers = "{\"median\":" + form + ",\"low\":" + form + ",\"high\":" + form + "}";
        return String.format(Locale.ROOT, numbers, s[0], s[1], s[2]);
    }
}
