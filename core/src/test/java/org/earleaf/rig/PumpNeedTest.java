// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.gpm;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class PumpNeedTest {
    // Source: applicator study guides, 20 % reserve on outlets and agitation: 1.2 (54 x 0.505 + 30).
    @Test
    void outlets_agitation_and_a_fifth_in_reserve() {
        double tank = 1000 * Units.M3_PER_GAL;
        double pump = PumpNeed.pump_m3s(54 * gpm(0.505), tank, PumpNeed.SOLUTIONS_PER_MIN);
        assertThat(pump / gpm(1)).isCloseTo(68.7, within(0.05));
        assertThat(PumpNeed.outlets_m3s(pump, tank, 0.03) / gpm(1)).isCloseTo(54 * 0.505, within(1e-9));
    }
}
