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
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class PulseWidthTest {
    // Source: square-root law and linear duty: 0.50505 of 0.8 gal/min; speeds 15.84 mph by 0.25 and 1.
    @Test
    void duty_and_the_speeds_it_allows() {
        assertThat(PulseWidth.duty(gpm(0.50505), gpm(0.8), psi(40), 1)).isCloseTo(0.6313, within(0.0001));
        FlowSetting setting =
                new FlowSetting(gpa(15), mph(10), in(20), gpm(0.50505), Double.NaN, Double.NaN, 1, List.of());
        PulseWidth.Held held = PulseWidth.held(setting, gpm(0.8), psi(40), 10);
        assertThat(held.duty()).isCloseTo(0.6313, within(0.0001));
        assertThat(held.slowest_ms() / mph(1)).isCloseTo(3.96, within(0.005));
        assertThat(held.fastest_ms() / mph(1)).isCloseTo(15.84, within(0.005));
        assertThat(held.shut_m()).isCloseTo((1 - held.duty()) * mph(10) / 10, within(1e-12));
        assertThat(held.remark()).isEmpty();
        assertThat(PulseWidth.held(setting, gpm(1.5), psi(40), 10).remark()).contains(Said.of("rig.pulses.skips"));
        assertThat(PulseWidth.held(setting, gpm(0.6), psi(40), 10).remark()).contains(Said.of("rig.pulses.cruise"));
    }

    // Source: arithmetic, 5 m/s by half of a tenth of a second.
    @Test
    void way_covered_shut_in_a_cycle() {
        assertThat(PulseWidth.off_m(0.5, 18 * KMH, 10)).isCloseTo(0.25, within(1e-9));
    }
}
