// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import org.earleaf.farm.NitrogenProduct;
import org.jspecify.annotations.Nullable;

/**
 * One product of a recipe.
 *
 * @param form gives its place in the mixing order; an adjuvant class wins over the formulation
 * @param nitrogen what it carries as a fertiliser, null when it is none
 */
public record MixLine(
        String product, Dose dose, MixForm form, @Nullable NitrogenProduct nitrogen) {
    /** Room that a kilogram of dissolved ammonium sulfate takes [m3]: specific gravity 1.77. */
    private static final double AMS_M3KG = 1 / 1770.0;

    public boolean isNitrogenSolution() {
        return nitrogen != null && nitrogen.isLiquid();
    }

    /** Whether it carries a pesticide label: neither fertiliser nor helper. */
    public boolean isLabelled() {
        return nitrogen == null && !form.isAdjuvant();
    }

    /** Whether it is a nitrogen solution that makes up half of a mix or more, and so carries the rest. */
    public boolean carries(double rate_m3m2) {
        return isNitrogenSolution() && dose.onGround(rate_m3m2) >= rate_m3m2 / 2;
    }

    /** Room that an amount of it takes in the tank; dry products other than ammonium sulfate are taken as none. */
    public double room_m3(Amount amount) {
        if (!amount.isMass()) {
            return amount.inside();
        }
        boolean sulfate = form.code().equals("AMS") || product.matches("(?i)ams|ammonium sul(f|ph)ate");
        return sulfate ? amount.inside() * AMS_M3KG : 0;
    }
}
