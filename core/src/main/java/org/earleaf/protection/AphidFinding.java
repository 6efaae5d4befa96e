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
 * Whether scouted aphids reach the level at which an insecticide comes into question; weak evidence, as no late-season
 * threshold has been validated. The level opens the question; whether it pays is told by what it saves
 * ({@link ProtectionRules}), in the same dollars as the pass.
 *
 * <pre>
 * above where n p > N P
 * tassel to R1   N = 50 in a dry crop, 400 where it has water; P = 1/2
 * after R1       N = 100, P = 1/2, in a dry crop alone; where natural enemies are about a second look two days later
 * with a fungicide   N = 50 in a dry crop, 250 where it has water; P = 1/5
 *
 * n p    aphids on a plant that has them, and share of plants that do (90 % interval)
 * Range  to R3
 * Source tassel to R1: Illinois extension 1997 (read), 50 a plant also regional crop reports (read), more in a dry crop and
 *        little where it has water: Foott & Timmins 1973 (abstract read); after R1: agronomy sheets (read); with a
 *        fungicide: assumption, where there is water five times as many, as they take a fifth. Taking the same number of
 *        aphids on more or fewer plants for as much: own construct, as what they take is counted on the mean plant.
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
        BEFORE_FUNGICIDE_DRY,
        BEFORE_FUNGICIDE_WATERED,
        AT_TASSEL_DRY,
        AT_TASSEL_WATERED,
        AFTER_R1,
        ENEMIES_ABOUT
    }

    private static final double COLONY = 50;
    private static final double MANY = 400;
    private static final double MANY_WITH_FUNGICIDE = 250;
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
        boolean dry = c.site().drought();
        if (plain.verdict != Verdict.ABOVE
                && withFungicide
                && against(seen, dry ? COLONY : MANY_WITH_FUNGICIDE, FIFTH) == Verdict.ABOVE) {
            Because because = dry ? Because.BEFORE_FUNGICIDE_DRY : Because.BEFORE_FUNGICIDE_WATERED;
            return new AphidFinding(seen, Verdict.ABOVE, true, because);
        }
        return plain;
    }

    private static AphidFinding plain(ProtectionCase c, LocalDate date, AphidSighting seen) {
        boolean early = c.share(f -> date.isBefore(f.r2())) >= HALF;
        boolean dry = c.site().drought();
        if (early) {
            Because because = dry ? Because.AT_TASSEL_DRY : Because.AT_TASSEL_WATERED;
            return new AphidFinding(seen, against(seen, dry ? COLONY : MANY, HALF), false, because);
        }
        Verdict v = dry ? against(seen, LATE, HALF) : Verdict.BELOW;
        if (v == Verdict.ABOVE && seen.enemies() > 0) {
            return new AphidFinding(seen, Verdict.UNDECIDED, false, Because.ENEMIES_ABOUT);
        }
        return new AphidFinding(seen, v, false, Because.AFTER_R1);
    }

    /** Where plants were not counted, few enough on those that have them are few on all. */
    private static Verdict against(AphidSighting seen, double perPlant, double share) {
        double level = perPlant * share;
        double low = seen.plants().map(p -> p.low()).orElse(0.0) * seen.perPlant();
        double high = seen.plants().map(p -> p.high()).orElse(1.0) * seen.perPlant();
        if (low > level) {
            return Verdict.ABOVE;
        }
        return high < level ? Verdict.BELOW : Verdict.UNDECIDED;
    }

    boolean isAbove() {
        return verdict == Verdict.ABOVE;
    }

    @Override
    public Said said() {
        return Said.of(
                switch (verdict) {
                    case ABOVE -> "aphids.above-level";
                    case BELOW -> "aphids.below-level";
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
