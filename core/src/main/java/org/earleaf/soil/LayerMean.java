// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Overlap-weighted mean of horizons over a depth interval; a value that is missing in one horizon is skipped. */
final class LayerMean {
    private LayerMean() {}

    static Horizon of(List<Horizon> horizons, double top_mm, double bottom_mm) {
        return new Horizon(
                top_mm,
                bottom_mm,
                mean(horizons, top_mm, bottom_mm, Horizon::sand_pct),
                mean(horizons, top_mm, bottom_mm, Horizon::clay_pct),
                mean(horizons, top_mm, bottom_mm, Horizon::om_pct),
                mean(horizons, top_mm, bottom_mm, Horizon::ph),
                mean(horizons, top_mm, bottom_mm, Horizon::cec_cmolKg),
                new Horizon.Measured(
                        mean(horizons, top_mm, bottom_mm, h -> h.measured().bulkDensity_gcm3()),
                        mean(horizons, top_mm, bottom_mm, h -> h.measured().wiltingPoint_share()),
                        mean(horizons, top_mm, bottom_mm, h -> h.measured().fieldCapacity_share())));
    }

    private static double mean(
            List<Horizon> horizons, double top_mm, double bottom_mm, ToDoubleFunction<Horizon> value) {
        double sum = 0;
        double weight = 0;
        double last = Double.NaN;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Horizon h : horizons) {
            double v = value.applyAsDouble(h);
            if (Double.isNaN(v)) {
                continue;
            }
            last = v;
            double overlap = Math.min(bottom_mm, h.bottom_mm()) - Math.max(top_mm, h.top_mm());
            if (overlap > 0) {
                sum += overlap * v;
                weight += overlap;
                low = Math.min(low, v);
                high = Math.max(high, v);
            }
        }
        // A mean lies among its values; rounding must not carry it over the edge of a valid range.
        return weight > 0 ? Math.max(low, Math.min(high, sum / weight)) : last;
    }
}
