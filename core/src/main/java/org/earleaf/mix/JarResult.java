// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What a jar test of a mix showed.
 *
 * @param water where its water or solution came from
 * @param note what was seen
 */
public record JarResult(Outcome outcome, Instant at, String person, String water, String note) {
    /** From good to bad. */
    public enum Outcome {
        PASSED,
        /** It parts and turns back into one: only with agitation all the time. */
        REMIXES,
        /** Gel, grains, an oily layer, flakes, heat or gas. */
        FAILED;

        public static Outcome parse(String word) {
            for (Outcome outcome : values()) {
                if (outcome.name().equals(word.strip().toUpperCase(Locale.ROOT))) {
                    return outcome;
                }
            }
            throw new EarleafException(Problem.of("jar.outcome-unknown", Said.of("where.jar-test"), Said.text(word)));
        }
    }

    public JarResult {
        if (person.isBlank() || water.isBlank() || note.isBlank()) {
            throw new EarleafException(Problem.of("jar.incomplete", Said.of("where.jar-test"), missing(person, water)));
        }
    }

    /**
     * Whether the newest test of a mix lets it into the tank.
     *
     * @param asked whether the mix may not be poured without one
     */
    public static boolean allows(Optional<JarResult> newest, boolean asked) {
        return newest.map(r -> r.outcome != Outcome.FAILED).orElse(!asked);
    }

    private static Said missing(String person, String water) {
        if (person.isBlank()) {
            return Said.of("found.no-person");
        }
        return water.isBlank() ? Said.of("found.no-water") : Said.of("found.nothing-seen");
    }

    public Said said() {
        return Said.of(
                "jar.result",
                "outcome",
                outcome,
                "person",
                person.strip(),
                "water",
                water.strip(),
                "note",
                note.strip());
    }
}
