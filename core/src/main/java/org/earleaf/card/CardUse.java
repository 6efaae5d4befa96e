// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * What a card's stains are wanted for, and how many serve.
 *
 * <p>Source: guides to water-sensitive paper (20 to 30 stains/cm2 for insecticides and before emergence, 30 to 40 for
 * contact herbicides after it, 50 to 70 for contact fungicides) and a journal review for systemic fungicides. They are
 * rules of the trade for flat cards, not limits of a label.
 */
public enum CardUse {
    INSECTICIDE(20, 30),
    BEFORE_EMERGENCE(20, 30),
    CONTACT_HERBICIDE(30, 40),
    CONTACT_FUNGICIDE(50, 70),
    SYSTEMIC_FUNGICIDE(30, 40);

    /** Cover above which leaves drip (common practice, no source). */
    private static final double DRIPS = 0.30;

    private final double least_cm2;
    private final double most_cm2;

    CardUse(double least_cm2, double most_cm2) {
        this.least_cm2 = least_cm2;
        this.most_cm2 = most_cm2;
    }

    public double least_cm2() {
        return least_cm2;
    }

    public double most_cm2() {
        return most_cm2;
    }

    /** How far stains serve. */
    public enum Verdict {
        POOR,
        LOW,
        ENOUGH,
        DRIPPING
    }

    public Verdict verdict(double cover, double stains_cm2) {
        if (cover > DRIPS) {
            return Verdict.DRIPPING;
        }
        if (stains_cm2 < least_cm2 / 2) {
            return Verdict.POOR;
        }
        return stains_cm2 < least_cm2 ? Verdict.LOW : Verdict.ENOUGH;
    }
}
