// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

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
            throw new EarleafException(Problem.of(
                    "strips.impossible",
                    Said.of("where.own-strips"),
                    Said.of("found.strips", "strips", strips, "variance", variance_kg2Ha2)));
        }
    }
}
