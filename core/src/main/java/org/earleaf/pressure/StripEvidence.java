// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.EarleafException;

/**
 * What the farm's own strips say about such a pass.
 *
 * @param strips how many differences, treated less untreated
 * @param mean_kgHa their mean, grain at 15.5 % moisture
 * @param variance_kg2Ha2 variance of one difference
 */
public record StripEvidence(int strips, double mean_kgHa, double variance_kg2Ha2) {
    public StripEvidence {
        if (strips < 1 || !(variance_kg2Ha2 > 0)) {
            throw EarleafException.of(
                    "own strips",
                    strips + " differences with variance " + variance_kg2Ha2,
                    "at least one difference and a variance above 0",
                    "Give the variance of a single difference; with one strip take it from other trials.");
        }
    }
}
