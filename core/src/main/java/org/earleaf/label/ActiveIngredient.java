// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.List;

/**
 * What works in a product, and what its label allows of it from every product together.
 *
 * @param name as limits count it; salts and esters under the name of their acid
 * @param content kg in a litre of a liquid, kg in a kg of a dry product
 * @param counts kg that limits count for a kg of it: 1, or the share that is acid
 * @param groups mode-of-action groups as printed, with their list: "FRAC 11", "IRAC 3A", "HRAC 9"
 * @param single_kgHa most in one pass
 * @param season_kgHa most in a season
 */
public record ActiveIngredient(
        String name,
        double content,
        double counts,
        List<String> groups,
        LabelLimit single_kgHa,
        LabelLimit season_kgHa) {
    public ActiveIngredient {
        groups = List.copyOf(groups);
    }

    /**
     * Mass of it that limits count.
     *
     * <pre>
     * a = r c e
     *
     * r      product on ground                                     [L/ha] or [kg/ha]
     * c      content                                               [kg/L] or [kg/kg]
     * e      kg that limits count for a kg, 1 or the share of acid
     * a      active ingredient on ground                           [kg/ha]
     * Range  r and c 0 or more
     * Source arithmetic of extension label guides, from memory
     * Check  LabelCheckTest: 10 fl oz/ac of 1.2 lb/gal is 0.09375 lb/ac, worked by hand
     * </pre>
     */
    public double of_kgHa(double productPerHa) {
        return productPerHa * content * counts;
    }
}
