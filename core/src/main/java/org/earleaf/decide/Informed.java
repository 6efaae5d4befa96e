// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;
import org.earleaf.units.Ranks;

/**
 * Choices made later with what will be known then, and not with what only the member knows: members that have seen about
 * the same choose alike, and a member's own course of weather has no vote in its choice.
 *
 * <pre>
 * a_m = argmax_a mean of R_a over the members of m's group whose course is another than m's;  none when all are below 0
 *
 * R      gain of choice a                                   [$/ha]
 * groups thirds by what is seen (rain since this morning); equal values fall together
 * Source recourse on scenarios that cannot be told apart (non-anticipativity): Rockafellar & Wets 1991, Math. Oper. Res.
 *        16:119, from memory; leaving out the own course: cross-validation, own construct here
 * Check  InformedTest
 * </pre>
 */
final class Informed {
    static final int NONE = -1;
    private static final int GROUPS = 3;

    private final int[] group;
    private final int[] course;
    private final double[] edges;

    /**
     * @param seen what has been seen by then, by member
     * @param course which course of weather a member follows; members of one course share their future
     */
    Informed(double[] seen, int[] course) {
        Ranks ranks = Ranks.of(seen);
        edges = new double[] {ranks.quantile(1.0 / GROUPS), ranks.quantile(2.0 / GROUPS)};
        group = new int[seen.length];
        for (int m = 0; m < seen.length; m++) {
            group[m] = (seen[m] > edges[0] ? 1 : 0) + (seen[m] > edges[1] ? 1 : 0);
        }
        this.course = course;
    }

    /** The choice of each member, {@link #NONE} for none. */
    int[] choices(double[][] gains) {
        int[] best = new int[group.length];
        double[] most = new double[group.length];
        Arrays.fill(best, NONE);
        for (int a = 0; a < gains.length; a++) {
            Votes votes = new Votes(gains[a]);
            for (int m = 0; m < group.length; m++) {
                double mean = votes.mean(group[m], course[m]);
                if (mean > most[m]) {
                    most[m] = mean;
                    best[m] = a;
                }
            }
        }
        return best;
    }

    /** Sums of one choice's gains by group and course; the last row and column hold the totals. */
    private final class Votes {
        private final int courses = Arrays.stream(course).max().orElse(0) + 1;
        private final double[][] sum = new double[GROUPS + 1][courses + 1];
        private final int[][] n = new int[GROUPS + 1][courses + 1];

        Votes(double[] gains) {
            for (int m = 0; m < group.length; m++) {
                for (int g : new int[] {group[m], GROUPS}) {
                    for (int c : new int[] {course[m], courses}) {
                        sum[g][c] += gains[m];
                        n[g][c]++;
                    }
                }
            }
        }

        /** Of the other courses of the group; of all other courses where it has none; of all where there is one. */
        double mean(int g, int c) {
            if (n[g][courses] > n[g][c]) {
                return (sum[g][courses] - sum[g][c]) / (n[g][courses] - n[g][c]);
            }
            return g < GROUPS ? mean(GROUPS, c) : sum[GROUPS][courses] / n[GROUPS][courses];
        }
    }

    /** The choice of each group when all its members vote: what can be told beforehand. */
    int[] rule(double[][] gains) {
        int[] best = new int[GROUPS];
        double[] most = new double[GROUPS];
        Arrays.fill(best, NONE);
        for (int a = 0; a < gains.length; a++) {
            for (int g = 0; g < GROUPS; g++) {
                double mean = mean(gains[a], g);
                if (mean > most[g]) {
                    most[g] = mean;
                    best[g] = a;
                }
            }
        }
        return best;
    }

    private double mean(double[] values, int g) {
        double sum = 0;
        int n = 0;
        for (int m = 0; m < values.length; m++) {
            sum += group[m] == g ? values[m] : 0;
            n += group[m] == g ? 1 : 0;
        }
        return n > 0 ? sum / n : 0;
    }

    /** What each member gains by its choice; 0 by none. */
    static double[] realised(double[][] gains, int[] choices) {
        double[] realised = new double[choices.length];
        Arrays.setAll(realised, m -> choices[m] == NONE ? 0 : gains[choices[m]][m]);
        return realised;
    }

    /** Share of members in a group, 0 to 2 from the least seen to the most. */
    double share(int g) {
        return (double) Arrays.stream(group).filter(x -> x == g).count() / group.length;
    }

    /** Where the groups part, two values. */
    double[] edges() {
        return edges.clone();
    }
}
