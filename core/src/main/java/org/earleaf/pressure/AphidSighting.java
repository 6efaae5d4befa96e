// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Incidence;

/**
 * Corn leaf aphids as scouted on a day.
 *
 * @param perPlant aphids on a plant that has them
 * @param plants how many have them; empty: not noted, every plant is taken to
 * @param ladyBeetles a plant, likewise the next two
 * @param lacewings larvae
 * @param mummies aphids killed by parasitoids
 */
public record AphidSighting(
        LocalDate date,
        double perPlant,
        Optional<Incidence> plants,
        double ladyBeetles,
        double lacewings,
        double mummies) {
    /** Aphids over all plants. */
    public double mean() {
        return perPlant * plants.map(Incidence::share).orElse(1.0);
    }

    /**
     * Natural enemies a plant, in lady beetles.
     *
     * <pre>
     * NE = lady beetles + 0.5 lacewing larvae + 0.1 mummies
     *
     * Source assumption
     * Check  AphidModelTest
     * </pre>
     */
    public double enemies() {
        return ladyBeetles + .5 * lacewings + .1 * mummies;
    }
}
