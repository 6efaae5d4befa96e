// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.pressure.AphidSighting;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.units.Figure;

/**
 * What scouted aphids say about an insecticide; weak evidence, as no late-season threshold has been validated.
 *
 * <pre>
 * tassel to R1: 50 or more on half of the plants; after it: over 100 on half of the plants and drought, and where natural
 * enemies are about a second look two days later; before a fungicide: over 50 on a fifth of the plants
 *
 * Range  to R3
 * Source regional crop reports and extension of Iowa (read); a fifth of the plants: assumption
 * Check  AphidModelTest
 * </pre>
 *
 * @param verdict undecided: look again
 * @param beforeFungicide whether it is the rule before a fungicide that decided
 */
public record AphidFinding(AphidSighting seen, Verdict verdict, boolean beforeFungicide, String because)
        implements ProtectionReason {
    private static final double COLONY = 50;
    private static final double LATE = 100;
    private static final double HALF = .5;
    private static final double FIFTH = .2;

    /** What speaks for an insecticide on a day, with or without a fungicide; empty where nobody counted. */
    public static Optional<AphidFinding> of(ProtectionCase c, LocalDate date, boolean withFungicide) {
        return c.aphids().map(seen -> of(c, date, withFungicide, seen));
    }

    private static AphidFinding of(ProtectionCase c, LocalDate date, boolean withFungicide, AphidSighting seen) {
        if (c.share(f -> date.isAfter(f.r3())) > HALF) {
            return new AphidFinding(seen, Verdict.BELOW, false, "after R3 they no longer take enough");
        }
        AphidFinding plain = plain(c, date, seen);
        if (plain.verdict != Verdict.ABOVE && withFungicide && seen.perPlant() > COLONY) {
            Verdict fifth = against(seen, FIFTH);
            if (fifth == Verdict.ABOVE) {
                return new AphidFinding(
                        seen,
                        fifth,
                        true,
                        "a fungicide keeps fungi off them, over 50 on a fifth of the plants may flare");
            }
        }
        return plain;
    }

    private static AphidFinding plain(ProtectionCase c, LocalDate date, AphidSighting seen) {
        boolean early = c.share(f -> date.isBefore(f.r2())) >= HALF;
        if (early) {
            Verdict v = seen.perPlant() >= COLONY ? against(seen, HALF) : Verdict.BELOW;
            return new AphidFinding(seen, v, false, "the rule at tassel is 50 or more on half of the plants");
        }
        String rule = "the rule after R1 is over 100 on half of the plants in a dry crop";
        Verdict v = seen.perPlant() > LATE && c.site().drought() ? against(seen, HALF) : Verdict.BELOW;
        if (v == Verdict.ABOVE && seen.enemies() > 0) {
            return new AphidFinding(
                    seen, Verdict.UNDECIDED, false, rule + "; natural enemies are about, look again in 2 days");
        }
        return new AphidFinding(seen, v, false, rule);
    }

    private static Verdict against(AphidSighting seen, double share) {
        return seen.plants().map(p -> p.against(share)).orElse(Verdict.UNDECIDED);
    }

    public boolean callsForInsecticide() {
        return verdict == Verdict.ABOVE;
    }

    @Override
    public String sentence() {
        String plants = seen.plants().map(p -> " on " + p).orElse("");
        String word =
                switch (verdict) {
                    case ABOVE -> "call for an insecticide";
                    case BELOW -> "call for none";
                    case UNDECIDED -> "are not clear of the threshold";
                };
        return Figure.fixed(seen.perPlant(), 0) + " aphids a plant" + plants + " " + word + ": " + because
                + " (weak evidence).";
    }
}
