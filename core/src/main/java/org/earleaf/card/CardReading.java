// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import java.util.Optional;

/**
 * What a card tells. Area is in cm2 here, as everyone counts stains.
 *
 * @param area_cm2 of the card that was read
 * @param cover stained share of it
 * @param patches patches of stained pixels, those cut by the edge included
 * @param scuffs patches longer than 2.5 times their width: scratched, or run
 * @param counted_cm2 patches for an area; one cut by the edge counts half
 * @param stains_cm2 stains for an area, with those that lie on others; empty when cover is above 0.40
 * @param sizes empty when no whole stain is there, or cover is above 0.40
 */
public record CardReading(
        double area_cm2,
        double cover,
        int patches,
        int scuffs,
        double counted_cm2,
        Optional<Double> stains_cm2,
        Optional<Sizes> sizes) {
    /** Cover above which patches hold many drops, so that counts and sizes lean on the correction. */
    public static final double CROWDED = 0.20;
    /** Cover above which only the cover is told. */
    public static final double COVER_ONLY = 0.40;

    /**
     * Whole patches; by volume of the drops where it says so.
     *
     * @param stain_um middle diameter of a stain
     * @param v10_um diameter below which a tenth of the volume lies
     * @param v50_um half of it
     * @param v90_um nine tenths
     * @param deposit_ulCm2 liquid that reached the card
     */
    public record Sizes(double stain_um, double v10_um, double v50_um, double v90_um, double deposit_ulCm2) {}

    public boolean isCrowded() {
        return cover > CROWDED;
    }

    /** Cover alone decides where stains cannot be told apart any more. */
    public CardUse.Verdict verdict(CardUse use) {
        return use.verdict(cover, stains_cm2.orElse(Double.POSITIVE_INFINITY));
    }
}
