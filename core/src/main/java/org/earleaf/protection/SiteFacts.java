// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.Optional;
import org.earleaf.field.PreviousCrop;

/**
 * What makes disease likelier in a zone.
 *
 * @param hybridRating 1 (most susceptible) to 9; NaN: not known
 * @param residueCover share of ground covered, NaN: not known
 * @param wetPlace irrigated, or a river bottom
 * @param plantedLate later than usual
 * @param history the disease is known in the field
 * @param yieldGoal_kgHa dry grain, NaN: none
 * @param weather how the weather suits it; empty: not known, taken as moderate
 * @param drought the crop is short of water
 */
public record SiteFacts(
        double hybridRating,
        PreviousCrop previousCrop,
        double residueCover,
        boolean wetPlace,
        boolean plantedLate,
        boolean history,
        double yieldGoal_kgHa,
        Optional<WeatherRisk> weather,
        boolean drought) {
    static final double MUCH_RESIDUE = .35;

    public HybridClass hybrid() {
        return HybridClass.ofRating(hybridRating);
    }

    boolean isCornAfterCorn() {
        return previousCrop == PreviousCrop.CORN;
    }

    /** Residue that carries the disease over; not known counts as no. */
    boolean hasMuchResidue() {
        return residueCover >= MUCH_RESIDUE;
    }

    WeatherRisk weatherOrModerate() {
        return weather.orElse(WeatherRisk.MODERATE);
    }
}
