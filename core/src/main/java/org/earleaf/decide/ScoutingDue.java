// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Reading;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.protection.ProtectionRules;
import org.earleaf.protection.ScoutingValue;
import org.earleaf.protection.TarSpotFound;
import org.earleaf.units.Said;

/** Counts of lesions and aphids that would be worth the walk. */
final class ScoutingDue {
    /** Scouting is repeated every 5 to 7 days until milk (extension). */
    private static final int AGAIN_D = 7;
    /** Aphids are looked for so many days after a fungicide (assumption). */
    private static final int[] FLARE_D = {7, 14, 21};

    private final ZoneEnsemble futures;
    private final ProtectionCase facts;

    ScoutingDue(ZoneEnsemble futures, ProtectionCase facts) {
        this.futures = futures;
        this.facts = facts;
    }

    /** @param best the fungicide pass that scouting would decide on */
    List<ProtectionAnswer.Scouting> readings(Optional<ProtectionOption> best) {
        List<ProtectionAnswer.Scouting> all = new ArrayList<>();
        boolean untilMilk = facts.on().isBefore(ProtectionWords.day(facts, CropAhead::r4, .5));
        if (untilMilk && (ProtectionWords.isSeason(facts) || !facts.lesions().isEmpty())) {
            lesions(best).ifPresent(all::add);
        }
        flare().ifPresent(all::add);
        return all;
    }

    private Optional<ProtectionAnswer.Scouting> lesions(Optional<ProtectionOption> best) {
        if (!facts.fungicidesMade().isEmpty()) {
            return Optional.empty();
        }
        if (facts.lesions().isEmpty()) {
            double worth =
                    best.map(o -> ScoutingValue.beforeSpraying_usdHa(facts, o)).orElse(Double.NaN);
            return worth == 0 ? Optional.empty() : Optional.of(scouting(Said.of("scout.nobody-looked"), worth));
        }
        Optional<Said> open = ProtectionRules.undecided(facts);
        if (open.isPresent()) {
            return Optional.of(scouting(open.get(), Double.NaN));
        }
        Optional<TarSpotFound> tarSpot = TarSpotFound.of(facts);
        if (tarSpot.isPresent()) {
            return tarSpot.filter(t -> !facts.on().isBefore(t.next().from()))
                    .map(t -> scouting(
                            Said.of(
                                    "scout.tar-spot-again",
                                    "day",
                                    t.seen(),
                                    "by",
                                    t.next().by()),
                            Double.NaN));
        }
        LocalDate last = facts.lesions().stream()
                .map(l -> l.date())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return last.isAfter(facts.on().minusDays(AGAIN_D)) || ProtectionRules.isAbove(facts)
                ? Optional.empty()
                : Optional.of(scouting(Said.of("scout.look-again", "day", last), Double.NaN));
    }

    private static ProtectionAnswer.Scouting scouting(Said because, double worth_usdHa) {
        return new ProtectionAnswer.Scouting(
                Reading.Kind.LESIONS, Said.of("scout.walk", "because", because), worth_usdHa);
    }

    /** A fungicide lets aphids off the fungi that kill them. */
    private Optional<ProtectionAnswer.Scouting> flare() {
        for (LocalDate made : facts.fungicidesMade()) {
            for (int k = FLARE_D.length - 1; k >= 0; k--) {
                LocalDate due = made.plusDays(FLARE_D[k]);
                if (!facts.on().isBefore(due)) {
                    boolean late = facts.on().isAfter(due.plusDays(AGAIN_D - 1L));
                    boolean done = futures.farm().readings().stream()
                            .anyMatch(r -> r.kind() == Reading.Kind.INSECTS
                                    && r.isOn(futures.zone())
                                    && !r.date().isBefore(due.minusDays(2))
                                    && !r.date().isAfter(facts.on()));
                    if (late || done) {
                        break;
                    }
                    return Optional.of(new ProtectionAnswer.Scouting(
                            Reading.Kind.INSECTS, Said.of("scout.aphids-after-fungicide", "day", made), Double.NaN));
                }
            }
        }
        return Optional.empty();
    }
}
