// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Estimates how far effects stray between farms, between years of a farm and beyond, from what single site-years say.
 *
 * <pre>
 * x_i = mean + farm + year + rest,   each normal, rotations of one year share farm and year
 * up     L' = S^-1 B L, h' = S^-1 B h, B = (L + S^-1)^-1      what a branch says of what lies above it
 * down   x  = B (h - L t), cov x = B + B L P L B;  t' = t + x, P' = (I - B L) P (I - B L)' + B
 * again  S  = mean of x x' + cov x over the branches of a level, until nothing moves
 *
 * L, h   precision and information that a branch carries     S  covariance of its level
 * t, P   effect above the branch and its covariance
 * Source expectation and maximisation: Dempster, Laird & Rubin 1977, J. R. Stat. Soc. B 39:1; where the mean is not known it
 *        is integrated out, which makes it restricted likelihood: Laird & Ware 1982, Biometrics 38:963; both from memory
 * Check  NestedEffectsTest: the strengths of paste and the yields of dyestuff of Davies & Goldsmith 1972
 * </pre>
 */
final class NestedEffects {
    private static final double STILL = 1e-7;

    /** An effect with how sure. */
    record Likely(RealVector mean, RealMatrix covariance) {
        RealMatrix square() {
            return covariance.add(mean.outerProduct(mean));
        }
    }

    /** One branch on its way up: what it carries, and its level's covariance. */
    private static final class Branch {
        private final RealMatrix precision;
        private final RealVector information;
        private final RealMatrix inverse;
        private final RealMatrix gain;
        private final List<Branch> under;
        private Likely total;

        Branch(RealMatrix precision, RealVector information, RealMatrix covariance, List<Branch> under) {
            this.precision = precision;
            this.information = information;
            this.under = under;
            inverse = MatrixUtils.inverse(covariance);
            gain = MatrixUtils.inverse(precision.add(inverse));
            total = new Likely(information, precision);
        }

        static Branch of(List<Branch> under, RealMatrix covariance) {
            return new Branch(precision(under), information(under), covariance, under);
        }

        static RealMatrix precision(List<Branch> under) {
            return under.stream()
                    .map(each -> each.inverse.multiply(each.gain).multiply(each.precision))
                    .reduce(RealMatrix::add)
                    .orElseThrow();
        }

        static RealVector information(List<Branch> under) {
            return under.stream()
                    .map(each -> each.inverse.multiply(each.gain).operate(each.information))
                    .reduce(RealVector::add)
                    .orElseThrow();
        }

        /** The branch's own effect, where what lies above is known so far; sets its total. */
        Likely down(Likely above) {
            RealMatrix passed = gain.multiply(precision);
            RealVector own = gain.operate(information.subtract(precision.operate(above.mean)));
            RealMatrix spread = gain.add(passed.multiply(above.covariance).multiply(passed.transpose()));
            RealMatrix left = MatrixUtils.createRealIdentityMatrix(passed.getRowDimension())
                    .subtract(passed);
            total = new Likely(
                    above.mean.add(own),
                    left.multiply(above.covariance).multiply(left.transpose()).add(gain));
            return new Likely(own, spread);
        }
    }

    /** Squares of a level's effects as they come. */
    private static final class Level {
        private RealMatrix sum;
        private int count;

        Level(int n) {
            sum = MatrixUtils.createRealMatrix(n, n);
        }

        void add(Likely effect) {
            sum = sum.add(effect.square());
            count++;
        }

        RealMatrix mean() {
            return sum.scalarMultiply(1.0 / count);
        }
    }

    private final List<Evidence> all;
    private final boolean meanKnown;
    private Nested now;
    private final List<Likely> totals = new ArrayList<>();

    /** @param meanKnown effects stray about 0; else about a mean that is to be found as well */
    NestedEffects(List<Evidence> all, boolean meanKnown, Nested start) {
        this.all = all;
        this.meanKnown = meanKnown;
        now = start;
    }

    /** The likeliest covariances, or what so many rounds came to. */
    Nested search(int rounds) {
        for (int round = 0; round < rounds; round++) {
            Nested before = now;
            again();
            if (now.change(before) < STILL) {
                break;
            }
        }
        return now;
    }

    /** The effects of each site-year, farm and year included, as the last round had them. */
    List<Likely> totals() {
        return List.copyOf(totals);
    }

    private void again() {
        Map<String, Map<String, List<Branch>>> tree = new LinkedHashMap<>();
        List<Branch> leaves = new ArrayList<>();
        for (Evidence each : all) {
            Branch leaf = new Branch(each.precision(), each.information(), now.rest(), List.of());
            leaves.add(leaf);
            tree.computeIfAbsent(each.farm(), farm -> new LinkedHashMap<>())
                    .computeIfAbsent(each.year(), year -> new ArrayList<>())
                    .add(leaf);
        }
        List<Branch> farms = tree.values().stream()
                .map(years -> Branch.of(
                        years.values().stream()
                                .map(cases -> Branch.of(cases, now.year()))
                                .toList(),
                        now.farm()))
                .toList();
        int n = now.rest().getRowDimension();
        Level farm = new Level(n);
        Level year = new Level(n);
        Level rest = new Level(n);
        Likely root = root(farms, n);
        for (Branch f : farms) {
            farm.add(f.down(root));
            for (Branch y : f.under) {
                year.add(y.down(f.total));
                y.under.forEach(leaf -> rest.add(leaf.down(y.total)));
            }
        }
        totals.clear();
        leaves.forEach(leaf -> totals.add(leaf.total));
        now = new Nested(farm.mean(), year.mean(), rest.mean());
    }

    private Likely root(List<Branch> farms, int n) {
        if (meanKnown) {
            return new Likely(MatrixUtils.createRealVector(new double[n]), MatrixUtils.createRealMatrix(n, n));
        }
        RealMatrix covariance = MatrixUtils.inverse(Branch.precision(farms));
        return new Likely(covariance.operate(Branch.information(farms)), covariance);
    }
}
