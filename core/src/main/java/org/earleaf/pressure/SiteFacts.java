// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Map;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.PreviousCrop;

/**
 * What makes disease likelier in a zone.
 *
 * @param disease ratings, history and place, as the grower told them
 * @param residueCover share of ground covered, NaN: not known
 * @param plantedLate later than usual
 * @param yieldGoal_kgHa dry grain, NaN: none
 * @param weather how the weather suits each disease; one that is missing is not known, and taken as moderate
 * @param drought the crop is short of water
 */
public record SiteFacts(
        DiseaseFacts disease,
        PreviousCrop previousCrop,
        double residueCover,
        boolean plantedLate,
        double yieldGoal_kgHa,
        Map<Disease, WeatherRisk> weather,
        boolean drought) {
    static final double MUCH_RESIDUE = .35;

    public SiteFacts {
        weather = Map.copyOf(weather);
    }

    public HybridClass hybrid(Disease against) {
        return HybridClass.ofRating(disease.rating(against));
    }

    /** By its rating for all diseases; where there is none, by the worst of those given. */
    public HybridClass hybrid() {
        return HybridClass.ofRating(rating());
    }

    /** NaN: not known. */
    public double rating() {
        return Double.isNaN(disease.rating())
                ? disease.ratings().values().stream().mapToDouble(v -> v).min().orElse(Double.NaN)
                : disease.rating();
    }

    public boolean isCornAfterCorn() {
        return previousCrop == PreviousCrop.CORN;
    }

    /** Residue that carries the disease over; not known counts as no. */
    public boolean hasMuchResidue() {
        return residueCover >= MUCH_RESIDUE;
    }

    public Optional<WeatherRisk> weather(Disease of) {
        return Optional.ofNullable(weather.get(of));
    }

    /** Whether the weather suits some disease very well. */
    boolean isHighRisk() {
        return weather.containsValue(WeatherRisk.HIGH);
    }
}
