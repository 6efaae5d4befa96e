// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.units.EarleafException;

/**
 * What a jar test of a mix showed.
 *
 * @param water where its water or solution came from
 * @param note what was seen
 */
public record JarResult(Outcome outcome, Instant at, String person, String water, String note) {
    /** From good to bad. */
    public enum Outcome {
        PASSED("passed"),
        /** It parts and turns back into one: only with agitation all the time. */
        REMIXES("parts, and mixes again"),
        /** Gel, grains, an oily layer, flakes, heat or gas. */
        FAILED("failed");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public static Outcome parse(String word) {
            for (Outcome outcome : values()) {
                if (outcome.name().equals(word.strip().toUpperCase(Locale.ROOT))) {
                    return outcome;
                }
            }
            throw EarleafException.of(
                    "jar test", "\"" + word + "\"", "passed, remixes or failed", "Choose what the jar showed.");
        }
    }

    public JarResult {
        if (person.isBlank() || water.isBlank() || note.isBlank()) {
            throw EarleafException.of(
                    "jar test",
                    person.isBlank() ? "nobody named" : water.isBlank() ? "no water named" : "nothing seen",
                    "who looked, which water it was and what the jar showed",
                    "Write all three.");
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

    public String sentence() {
        return "Jar test " + outcome.words + " (" + person.strip() + ", " + water.strip() + "): " + note.strip();
    }
}
