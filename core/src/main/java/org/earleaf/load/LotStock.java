// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.mix.Amount;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What is free of one lot: on hand less what loads hold or have drawn.
 *
 * @param free m3 or kg
 */
public record LotStock(String product, String lot, double free, boolean isMass) {
    private static final double EPS = 1e-9;

    /** An amount out of a lot. */
    public record Draw(String product, String lot, double amount, boolean isMass) {}

    /**
     * Takes an amount out of lots in their order, the first in first out; refused when they do not hold it.
     *
     * @param lots of every product, oldest first
     */
    public static List<Draw> draw(List<LotStock> lots, String product, Amount wanted) {
        List<Draw> draws = new ArrayList<>();
        double left = wanted.inside();
        double held = 0;
        for (LotStock lot : lots) {
            if (!LoadLine.same(lot.product(), product) || lot.isMass() != wanted.isMass()) {
                continue;
            }
            held += lot.free();
            double take = Math.min(left, lot.free());
            if (take > 0) {
                draws.add(new Draw(lot.product(), lot.lot(), take, lot.isMass()));
                left -= take;
            }
        }
        if (left > wanted.inside() * EPS) {
            Amount free = new Amount(held, wanted.isMass(), wanted.unit());
            throw new EarleafException(Problem.of(
                    "stock.short",
                    Said.of("where.stock", "product", product),
                    Said.of("found.free", "amount", free.told()),
                    "wanted",
                    wanted.told(),
                    "short",
                    new Amount(left, wanted.isMass(), wanted.unit()).told()));
        }
        return draws;
    }
}
