// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.load.TankLoads.T;

import java.util.Optional;
import org.earleaf.mix.JarResult.Outcome;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** What a jar test lets into the tank: common practice of extension guides, from memory. */
class JarResultTest {
    private static Optional<JarResult> jar(Outcome outcome) {
        return Optional.of(new JarResult(outcome, T, "A. Grower", "well", "clear after 30 minutes"));
    }

    @Test
    void one_that_failed_stops_the_mix_whether_or_not_one_was_asked_for() {
        for (boolean asked : new boolean[] {false, true}) {
            assertThat(JarResult.allows(jar(Outcome.FAILED), asked)).isFalse();
            assertThat(JarResult.allows(jar(Outcome.PASSED), asked)).isTrue();
            assertThat(JarResult.allows(jar(Outcome.REMIXES), asked)).isTrue();
            assertThat(JarResult.allows(Optional.empty(), asked)).isEqualTo(!asked);
        }
    }

    @Test
    void it_says_who_looked_at_which_water_and_what_was_seen() {
        assertThat(jar(Outcome.REMIXES).orElseThrow().said())
                .isEqualTo(Said.of(
                        "jar.result",
                        "outcome",
                        Outcome.REMIXES,
                        "person",
                        "A. Grower",
                        "water",
                        "well",
                        "note",
                        "clear after 30 minutes"));
        assertThat(Outcome.parse(" Failed ")).isEqualTo(Outcome.FAILED);
        assertThatThrownBy(() -> Outcome.parse("good")).hasMessageContaining("jar.outcome-unknown");
        assertThatThrownBy(() -> new JarResult(Outcome.PASSED, T, " ", "well", "clear"))
                .hasMessageContaining("found.no-person");
        assertThatThrownBy(() -> new JarResult(Outcome.PASSED, T, "A", "", "clear"))
                .hasMessageContaining("found.no-water");
        assertThatThrownBy(() -> new JarResult(Outcome.PASSED, T, "A", "well", ""))
                .hasMessageContaining("found.nothing-seen");
    }
}
