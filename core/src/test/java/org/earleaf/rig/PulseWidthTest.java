// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.KMH;
import static org.earleaf.rig.Us.gpa;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.List;
import org.junit.jupiter.api.Test;

class PulseWidthTest {
    // Source: square-root law and linear duty: 0.50505 of 0.8 gal/min; speeds 15.84 mph by 0.25 and 1.
    @Test
    void duty_and_the_speeds_it_allows() {
        assertThat(PulseWidth.duty(gpm(0.50505), gpm(0.8), psi(40), 1)).isCloseTo(0.6313, within(0.0001));
        FlowSetting setting = new FlowSetting(gpa(15), mph(10), in(20), gpm(0.50505), psi(40), gpm(0.8), 1, List.of());
        assertThat(PulseWidth.speed_ms(0.25, setting) / mph(1)).isCloseTo(3.96, within(0.005));
        assertThat(PulseWidth.speed_ms(1, setting) / mph(1)).isCloseTo(15.84, within(0.005));
    }

    // Source: arithmetic, 5 m/s by half of a tenth of a second.
    @Test
    void way_covered_open_and_shut_in_a_cycle() {
        assertThat(PulseWidth.on_m(0.5, 18 * KMH, 10)).isCloseTo(0.25, within(1e-9));
        assertThat(PulseWidth.off_m(0.5, 18 * KMH, 10)).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void in_a_turn_the_duty_follows_the_outlet_and_says_when_it_meets_a_limit() {
        assertThat(PulseWidth.inTurn(0.6, 3, 4)).isEqualTo(new PulseWidth.InTurn(0.6 * 3 / 4, false));
        assertThat(PulseWidth.inTurn(0.7, 8, 4)).isEqualTo(new PulseWidth.InTurn(1, true));
        assertThat(PulseWidth.inTurn(0.6, 0.5, 4)).isEqualTo(new PulseWidth.InTurn(0.25, true));
    }
}
