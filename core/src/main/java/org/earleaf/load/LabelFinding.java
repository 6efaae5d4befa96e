// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.mix.MixRules;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What a label says to a load.
 *
 * @param product whose label it is; empty: the mix as a whole
 * @param place ground that the load goes on
 * @param what which limit: a {@link LabelItem}, a {@link MixRules.Rule} or a {@link Limit}
 * @param said what is found
 */
public record LabelFinding(Verdict verdict, String product, String place, Enum<?> what, Compared compared, Said said) {
    /**
     * Two amounts held against each other.
     *
     * @param planned what is planned or summed, in the label's unit
     * @param allowed what the label says
     * @param by how much it is outside, nothing when it is not
     */
    public record Compared(Said planned, Said allowed, Said by) {
        /** Where nothing is compared. */
        static final Compared NONE = new Compared(LabelFigure.NOTHING, LabelFigure.NOTHING, LabelFigure.NOTHING);

        static Compared with(Said allowed) {
            return new Compared(LabelFigure.NOTHING, allowed, LabelFigure.NOTHING);
        }
    }

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

    /** What a label may limit beside its items. */
    public enum Limit {
        LABEL,
        NEVER_WITH,
        GROUPS,
        ACTIVES,
        ACTIVE_SINGLE,
        ACTIVE_SEASON,
        OTHER_CROPS
    }

    public Said planned() {
        return compared.planned();
    }

    public Said allowed() {
        return compared.allowed();
    }

    public Said by() {
        return compared.by();
    }

    public boolean isStop() {
        return verdict.compareTo(Verdict.NOT_KNOWN) >= 0;
    }

    public static boolean isNothing(Said said) {
        return said.equals(LabelFigure.NOTHING);
    }

    /** All of it: which product on which ground, and what is found. */
    public Said sentence() {
        return product.isEmpty()
                ? Said.of("label.finding-mix", "place", place, "said", said)
                : Said.of("label.finding", "product", product, "place", place, "said", said);
    }

    /** As a refusal of the load that it stops. */
    Problem problem() {
        Said place = product().isEmpty()
                ? Said.of("where.mix", "place", place())
                : Said.of("where.label-of", "product", product());
        return isNothing(allowed())
                ? Problem.of("label.forbids", place, sentence())
                : Problem.of("label.outside", place, sentence(), "allowed", allowed());
    }
}
