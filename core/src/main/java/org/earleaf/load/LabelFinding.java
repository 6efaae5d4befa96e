// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

/**
 * What a label says to a load.
 *
 * @param limit which limit, in words
 * @param planned what is planned or summed, in the label's unit
 * @param allowed what the label says
 * @param by how much it is outside, empty when it is not
 * @param sentence all of it in one sentence
 */
public record LabelFinding(
        Verdict verdict, String product, String limit, String planned, String allowed, String by, String sentence) {
    /** From good to worst. */
    public enum Verdict {
        WITHIN,
        /** Judged in the air of the day, before the first drop. */
        BEFORE_START,
        MIND,
        NOT_KNOWN,
        NOT_ENTERED,
        OUTSIDE
    }

    /** One whose sentence begins with the product and the place. */
    static LabelFinding of(
            Verdict verdict,
            String product,
            String place,
            String limit,
            String planned,
            String allowed,
            String by,
            String said) {
        return new LabelFinding(verdict, product, limit, planned, allowed, by, product + " on " + place + ": " + said);
    }

    public boolean isStop() {
        return verdict.compareTo(Verdict.NOT_KNOWN) >= 0;
    }
}
