// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.pressure.AphidSighting;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.units.Said;

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
public record AphidFinding(AphidSighting seen, Verdict verdict, boolean beforeFungicide, Because because)
        implements ProtectionReason {
    /** What decided. */
    public enum Because {
        AFTER_R3,
        BEFORE_FUNGICIDE,
        AT_TASSEL,
        AFTER_R1,
        ENEMIES_ABOUT
    }

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
            return new AphidFinding(seen, Verdict.BELOW, false, Because.AFTER_R3);
        }
        AphidFinding plain = plain(c, date, seen);
        if (plain.verdict != Verdict.ABOVE && withFungicide && seen.perPlant() > COLONY) {
            Verdict fifth = against(seen, FIFTH);
            if (fifth == Verdict.ABOVE) {
                return new AphidFinding(seen, fifth, true, Because.BEFORE_FUNGICIDE);
            }
        }
        return plain;
    }

    private static AphidFinding plain(ProtectionCase c, LocalDate date, AphidSighting seen) {
        boolean early = c.share(f -> date.isBefore(f.r2())) >= HALF;
        if (early) {
            Verdict v = seen.perPlant() >= COLONY ? against(seen, HALF) : Verdict.BELOW;
            return new AphidFinding(seen, v, false, Because.AT_TASSEL);
        }
        Verdict v = seen.perPlant() > LATE && c.site().drought() ? against(seen, HALF) : Verdict.BELOW;
        if (v == Verdict.ABOVE && seen.enemies() > 0) {
            return new AphidFinding(seen, Verdict.UNDECIDED, false, Because.ENEMIES_ABOUT);
        }
        return new AphidFinding(seen, v, false, Because.AFTER_R1);
    }

    private static Verdict against(AphidSighting seen, double share) {
        return seen.plants().map(p -> p.against(share)).orElse(Verdict.UNDECIDED);
    }

    public boolean callsForInsecticide() {
        return verdict == Verdict.ABOVE;
    }

    @Override
    public Said said() {
        return Said.of(
                switch (verdict) {
                    case ABOVE -> "aphids.call-for-insecticide";
                    case BELOW -> "aphids.call-for-none";
                    case UNDECIDED -> "aphids.not-clear";
                },
                "counted",
                counted(),
                "because",
                because);
    }

    private Said counted() {
        long perPlant = Math.round(seen.perPlant());
        return seen.plants()
                .map(p -> Said.of("aphids.on-plants", "n", perPlant, "shows", p.shows(), "plants", p.plants()))
                .orElseGet(() -> Said.of("aphids.a-plant", "n", perPlant));
    }
}
