// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Map;
import java.util.Set;

/**
 * What makes leaf disease likelier in a zone, as the grower knows it.
 *
 * @param rating how the hybrid stands up to leaf disease, 1 (most susceptible) to 9 (resistant); NaN: not given
 * @param ratings the same by disease, where the seed guide tells them apart
 * @param history diseases known in the field from earlier years
 * @param wetPlace irrigated, or a river bottom
 */
public record DiseaseFacts(double rating, Map<Disease, Double> ratings, Set<Disease> history, boolean wetPlace) {
    public static final double MOST_SUSCEPTIBLE = 1;
    public static final double MOST_RESISTANT = 9;

    /** Nothing told. */
    public static final DiseaseFacts NOT_GIVEN = new DiseaseFacts(Double.NaN, Map.of(), Set.of(), false);

    public DiseaseFacts {
        ratings = Map.copyOf(ratings);
        history = Set.copyOf(history);
    }

    /** The rating against a disease; NaN: not given. */
    public double rating(Disease disease) {
        return ratings.getOrDefault(disease, rating);
    }
}
