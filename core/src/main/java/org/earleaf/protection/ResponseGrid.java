// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.HashMap;
import java.util.Map;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.FungicideResponse;
import org.earleaf.pressure.ProtectionCase;

/**
 * Equally likely gains of a fungicide pass, without chance: the middles of equal slices of the response, which is of one
 * kind with little disease and of another with much.
 *
 * <pre>
 * q(k) = quantile (k - 1/2)/n of (1 - p) N(m1, s1) + p N(m2, s2),  k = 1 ... n
 *
 * p      chance of much disease
 * m s    mean and standard deviation by class   [kg/ha at 15.5 %]
 * Source definition of a mixture; quantiles by bisection
 * Check  ProtectionWorthTest
 * </pre>
 */
final class ResponseGrid {
    static final int SLICES = 40;

    private static final int HALVINGS = 60;
    private static final double WIDE = 8;

    private final FungicideResponse little;
    private final FungicideResponse much;
    private final Map<Double, double[]> known = new HashMap<>();

    /** The farm's own strips shift the means; how much fields differ stays as trials found it. */
    ResponseGrid(FungicideKind kind, ProtectionCase c) {
        little = withStrips(FungicideResponse.prior(kind, false), c);
        much = withStrips(FungicideResponse.prior(kind, true), c);
    }

    private static FungicideResponse withStrips(FungicideResponse prior, ProtectionCase c) {
        return c.strips()
                .map(s -> new FungicideResponse(prior.updated(s).mean_kgHa(), prior.sd_kgHa()))
                .orElse(prior);
    }

    /** Mean gain [kg/ha at 15.5 %]. */
    double mean_kgHa(double chanceSevere) {
        return (1 - chanceSevere) * little.mean_kgHa() + chanceSevere * much.mean_kgHa();
    }

    /** The grid; not to be modified. */
    double[] quantiles_kgHa(double chanceSevere) {
        return known.computeIfAbsent(chanceSevere, this::make);
    }

    private double[] make(double p) {
        double low = Math.min(edge(little, -1), edge(much, -1));
        double high = Math.max(edge(little, 1), edge(much, 1));
        double[] grid = new double[SLICES];
        double sum = 0;
        for (int k = 0; k < SLICES; k++) {
            grid[k] = quantile(p, (k + .5) / SLICES, low, high);
            sum += grid[k];
        }
        // Cut tails of an uneven mixture move the mean a little; the expected gain must be that of the formula.
        double shift = mean_kgHa(p) - sum / SLICES;
        for (int k = 0; k < SLICES; k++) {
            grid[k] += shift;
        }
        return grid;
    }

    private static double edge(FungicideResponse r, int side) {
        return r.mean_kgHa() + side * WIDE * r.sd_kgHa();
    }

    private double quantile(double p, double q, double from, double to) {
        double low = from;
        double high = to;
        for (int k = 0; k < HALVINGS; k++) {
            double mid = (low + high) / 2;
            if ((1 - p) * little.below(mid) + p * much.below(mid) < q) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return (low + high) / 2;
    }
}
