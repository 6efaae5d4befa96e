// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** How a hybrid stands up to a disease, by its rating from 1 (most susceptible) to 9; common practice, no source. */
public enum HybridClass {
    SUSCEPTIBLE("susceptible"),
    INTERMEDIATE("intermediate"),
    RESISTANT("resistant");

    private final String word;

    HybridClass(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** By its rating; one that is not known (NaN) counts as intermediate. */
    public static HybridClass ofRating(double rating) {
        if (rating < 1 || rating > 9) {
            throw new EarleafException(
                    Problem.of("rating.out-of-range", Said.of("where.rating"), Said.text(String.valueOf(rating))));
        }
        return rating <= 4 ? SUSCEPTIBLE : rating >= 7 ? RESISTANT : INTERMEDIATE;
    }

    /** How disease grows on it against the mean. */
    double growth(ProtectionSettings settings) {
        return switch (this) {
            case SUSCEPTIBLE -> settings.of(ProtectionAssumption.GROWTH_SUSCEPTIBLE);
            case INTERMEDIATE -> 1;
            case RESISTANT -> settings.of(ProtectionAssumption.GROWTH_RESISTANT);
        };
    }
}
