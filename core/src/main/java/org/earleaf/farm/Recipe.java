// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.List;

/**
 * What goes together on ground, amounts as entered.
 *
 * @param carrier_LHa finished spray or liquid on a hectare; NaN when the product goes on alone
 */
public record Recipe(String name, double carrier_LHa, List<Line> lines) {
    public Recipe {
        lines = List.copyOf(lines);
    }

    /**
     * One product of a recipe.
     *
     * @param rate as entered
     * @param rateUnit as entered ("fl oz/ac", "% v/v" ...)
     */
    public record Line(String product, double rate, String rateUnit) {}
}
