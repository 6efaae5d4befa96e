// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/**
 * Yield and what held it there.
 *
 * @param grain_kgHa dry grain
 * @param kernelsPerPlant kernels set
 * @param grainN_kgHa nitrogen in the grain, at most 1.5 % of it
 */
public record Yield(double grain_kgHa, double kernelsPerPlant, double grainN_kgHa, Limit limit) {
    /** What binds the yield. */
    public enum Limit {
        /** The kernels set. */
        SINK,
        /** The share of growth that goes to grain. */
        HARVEST_INDEX,
        /** What the leaves make. */
        SOURCE,
        NITROGEN
    }

    static Yield least(double kernels, double sink, double index, double source, double nitrogen, double grainN) {
        double y = Math.min(Math.min(sink, index), Math.min(source, nitrogen));
        Limit limit = y == nitrogen
                ? Limit.NITROGEN
                : y == sink ? Limit.SINK : y == source ? Limit.SOURCE : Limit.HARVEST_INDEX;
        return new Yield(y, kernels, Math.min(grainN, 0.015 * y), limit);
    }

    /** Dry weight of a kernel [mg] at a population. */
    public double kernel_mg(double population_m2) {
        return kernelsPerPlant > 0 ? grain_kgHa / (kernelsPerPlant * population_m2 * 1e4) * 1e6 : 0;
    }
}
