// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.earleaf.season.PhaseClock;
import org.earleaf.season.SeasonRun;
import org.junit.jupiter.api.Test;

/** The order of the phases is stated twice, in the kernel and for its profile. A definition; it needs no source. */
class PhaseClockTest {
    @Test
    void a_season_stepped_phase_by_phase_is_the_season_to_the_last_bit() {
        for (SeasonCase c : new SeasonCase[] {Cases.golden(), Cases.timed(3)}) {
            PhaseClock clock = new PhaseClock(c.setup(), c.sets(), c.weather(), c.weatherOf());
            SeasonRun run = c.start();
            for (int day = 0; day < c.days(); day++) {
                c.applyPasses(clock.run(), day);
                clock.step();
                c.step(run, day);
                assertThat(clock.isAs(run)).as("day %d", day).isTrue();
            }
        }
    }
}
