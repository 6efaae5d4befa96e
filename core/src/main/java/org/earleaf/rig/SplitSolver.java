// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Splits the flow of a row over groups of outlets fed by one boom line: which sizes, at which common pressure.
 *
 * <pre>
 * q_i = s_i Q F / n_i
 * least sum of s_i (ln(k_i sqrt(p/p0) / q_i))2 over sizes k_i and p in the window
 * r_i = n_i k_i / sum(n_j k_j),  p = p0 (Q F / sum(n_j k_j))2
 *
 * Q      flow of the liquid a row needs           [m3/s]
 * F      density factor
 * s_i n_i  share wanted and outlets a row of group i
 * k_i    rated flow of the size chosen            [m3/s]
 * r_i    share that it gives, whatever the pressure
 * Range  shares above 0 that add up to 1
 * Source own construct on the square-root law of FlowMath
 * Check  SplitSolverTest: worked split, every combination tried for small tables.
 * </pre>
 *
 * <p>Promises the least sum over all combinations: for a given pressure the groups do not depend on each other, and
 * the best size of a group changes only at pressures half way (in logarithms) between two sizes, so that it is enough
 * to look at each stretch between such pressures. Cost: groups x sizes stretches.
 */
public final class SplitSolver {
    /** A realised share further than this from the wanted one is a warning. */
    public static final double SHARE_OFF = 0.05;

    private static final double SUM_EPS = 1e-6;

    private SplitSolver() {}

    /**
     * A split.
     *
     * @param sizes one a group
     * @param shares realised, one a group
     * @param pressure_Pa common pressure for the whole flow
     * @param misfit the sum that was made least
     */
    public record Split(List<NozzleSize> sizes, double[] shares, double pressure_Pa, double misfit) {
        /** Groups whose realised share is off by more than {@link #SHARE_OFF}. */
        public List<Said> warnings(List<OutletGroup> groups) {
            List<Said> off = new ArrayList<>();
            for (int i = 0; i < shares.length; i++) {
                if (Math.abs(shares[i] - groups.get(i).share()) > SHARE_OFF) {
                    off.add(Said.of(
                            "split.off",
                            "group",
                            groups.get(i).name(),
                            "share",
                            Measure.SHARE.of(shares[i]),
                            "wanted",
                            Measure.SHARE.of(groups.get(i).share())));
                }
            }
            return off;
        }
    }

    /** Flow of the liquid wanted through one outlet of each group. */
    public static double[] wanted_m3s(List<OutletGroup> groups, double rowFlow_m3s) {
        return groups.stream()
                .mapToDouble(g -> g.share() * rowFlow_m3s / g.perRow())
                .toArray();
    }

    /** What given sizes do. */
    public static Split of(List<OutletGroup> groups, List<NozzleSize> sizes, double rowFlow_m3s, double factor) {
        double[] wanted = wanted_m3s(groups, rowFlow_m3s);
        double total = 0;
        for (int i = 0; i < sizes.size(); i++) {
            total += groups.get(i).perRow() * sizes.get(i).rated_m3s();
        }
        double[] shares = new double[sizes.size()];
        double open = rowFlow_m3s * factor / total;
        double misfit = 0;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = groups.get(i).perRow() * sizes.get(i).rated_m3s() / total;
            double ln = Math.log(sizes.get(i).rated_m3s() * open / (wanted[i] * factor));
            misfit += groups.get(i).share() * ln * ln;
        }
        return new Split(List.copyOf(sizes), shares, FlowMath.RATED_PA * open * open, misfit);
    }

    /** The sizes and pressure that come closest to the wanted split. */
    public static Split solve(
            List<OutletGroup> groups,
            List<NozzleSize> available,
            double rowFlow_m3s,
            double factor,
            double low_Pa,
            double high_Pa) {
        requireShares(groups);
        double[] wanted = wanted_m3s(groups, rowFlow_m3s);
        double low = Math.log(low_Pa / FlowMath.RATED_PA) / 2;
        double high = Math.log(high_Pa / FlowMath.RATED_PA) / 2;
        double[] cuts = cuts(wanted, available, factor, low, high);
        List<NozzleSize> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c + 1 < cuts.length; c++) {
            double middle = (cuts[c] + cuts[c + 1]) / 2;
            List<NozzleSize> sizes = nearest(wanted, available, factor, middle);
            double misfit = leastMisfit(groups, sizes, wanted, factor, low, high);
            if (misfit < least) {
                least = misfit;
                best = sizes;
            }
        }
        Split split = of(groups, best, rowFlow_m3s, factor);
        return new Split(split.sizes(), split.shares(), split.pressure_Pa(), least);
    }

    /** Half logarithms of pressure between which no group changes its best size. */
    private static double[] cuts(double[] wanted, List<NozzleSize> sizes, double factor, double low, double high) {
        double[] ratings =
                sizes.stream().mapToDouble(NozzleSize::rated_m3s).sorted().toArray();
        List<Double> cuts = new ArrayList<>(List.of(low, high));
        for (double flow : wanted) {
            for (int k = 0; k + 1 < ratings.length; k++) {
                double cut = Math.log(flow * factor) - Math.log(ratings[k] * ratings[k + 1]) / 2;
                if (cut > low && cut < high) {
                    cuts.add(cut);
                }
            }
        }
        double[] sorted = cuts.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted;
    }

    private static List<NozzleSize> nearest(double[] wanted, List<NozzleSize> sizes, double factor, double half) {
        List<NozzleSize> chosen = new ArrayList<>();
        for (double flow : wanted) {
            double rated = Math.log(flow * factor) - half;
            NozzleSize best = sizes.get(0);
            for (NozzleSize size : sizes) {
                if (Math.abs(Math.log(size.rated_m3s()) - rated) < Math.abs(Math.log(best.rated_m3s()) - rated)) {
                    best = size;
                }
            }
            chosen.add(best);
        }
        return chosen;
    }

    /** The least sum for these sizes: its pressure has a closed form, kept within the window. */
    static double leastMisfit(
            List<OutletGroup> groups, List<NozzleSize> sizes, double[] wanted, double factor, double low, double high) {
        double[] off = new double[wanted.length];
        double half = 0;
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.log(sizes.get(i).rated_m3s() / (wanted[i] * factor));
            half -= groups.get(i).share() * off[i];
        }
        half = Math.max(low, Math.min(high, half));
        double sum = 0;
        for (int i = 0; i < off.length; i++) {
            sum += groups.get(i).share() * (off[i] + half) * (off[i] + half);
        }
        return sum;
    }

    private static void requireShares(List<OutletGroup> groups) {
        double sum = groups.stream().mapToDouble(OutletGroup::share).sum();
        if (groups.isEmpty() || Math.abs(sum - 1) > SUM_EPS || groups.stream().anyMatch(g -> g.share() <= 0)) {
            throw new EarleafException(Problem.of(
                    "split.shares", Said.of("where.split"), Said.of("found.shares", "sum", Measure.SHARE.of(sum))));
        }
    }
}
