// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;

/**
 * How far the height of a crop may lie from the model's: the model does not know the hybrid, so the same stage may
 * stand 30 cm apart (common practice, no source). The latest height reading moves the whole curve and narrows it.
 *
 * @param factor observed over modelled height on the day of the reading, 1 without one
 * @param cv coefficient of variation around that
 * @param read day of the reading
 */
record CropHeight(double factor, double cv, Optional<LocalDate> read) {
    /** Spread of height among hybrids at the same stage (own construct). */
    private static final double HYBRIDS_CV = .08;
    /** Spread of a mean of ten plants (own construct). */
    private static final double READING_CV = .05;
    /** Deciles of the standard normal distribution from the first to the ninth, every second one. */
    private static final double[] NORMAL = {-1.2816, -.5244, 0, .5244, 1.2816};

    /** Modelled heights by day before {@code on}, from the trace of the zone. */
    static CropHeight of(Farm farm, Zone zone, LocalDate on, java.util.function.ToDoubleFunction<LocalDate> model_cm) {
        Optional<Reading> latest = farm.readings().stream()
                .filter(r -> r.kind() == Reading.Kind.HEIGHT
                        && r.isOn(zone)
                        && !r.date().isAfter(on))
                .filter(r -> !r.date().isBefore(zone.planted()))
                .max(java.util.Comparator.comparing(Reading::date));
        if (latest.isEmpty()) {
            return new CropHeight(1, HYBRIDS_CV, Optional.empty());
        }
        double model = model_cm.applyAsDouble(latest.get().date());
        double factor = model > 5 ? Math.max(.5, Math.min(1.6, latest.get().value() / model)) : 1;
        return new CropHeight(factor, READING_CV, Optional.of(latest.get().date()));
    }

    /** Spread over the futures and over what is not known of the hybrid. */
    Spread spread(double[] model_cm) {
        double[] all = new double[model_cm.length * NORMAL.length];
        int at = 0;
        for (double h : model_cm) {
            for (double z : NORMAL) {
                all[at++] = h * factor * (1 + cv * z);
            }
        }
        return Spread.of(all);
    }
}
