// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.psi;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class HoseLossTest {
    private static final HoseLoss.Hose HOSE = new HoseLoss.Hose(100 * 0.3048, in(1.5));

    // Source: Darcy-Weisbach with the explicit friction factor of Swamee & Jain, 60 gal/min through 100 ft of 1.5-in
    // smooth hose, worked by hand; UAN 1326 kg/m3 and 3.5 mPa s is an assumption.
    @Test
    void friction_of_water_and_uan_in_a_smooth_hose() {
        Percentage two = Percentage.withPercentage(2);
        assertThat(HoseLoss.friction_Pa(gpm(60), HOSE, 999, HoseLoss.WATER_PAS) / psi(1))
                .isCloseTo(11.0, two);
        assertThat(HoseLoss.friction_Pa(gpm(60), HOSE, 1326, HoseLoss.UAN_PAS) / psi(1))
                .isCloseTo(17.9, two);
    }

    // Source: Hazen-Williams in US units, psi/ft = 4.52 Q^1.852 / (C^1.852 d^4.8704), C 140.
    @Test
    void hazen_williams_gives_the_us_form() {
        double us_psi = 100 * 4.52 * Math.pow(60, 1.852) / (Math.pow(140, 1.852) * Math.pow(1.5, 4.8704));
        assertThat(us_psi).isCloseTo(13.1, Percentage.withPercentage(1));
        assertThat(HoseLoss.hazenWilliams_Pa(gpm(60), HOSE) / psi(1)).isCloseTo(us_psi, Percentage.withPercentage(1));
    }

    // Source: laminar law 64/Re; friction factors of the Moody chart for smooth pipe (1e5: 0.018), read to two digits.
    @Test
    void friction_factor_in_both_regimes() {
        assertThat(HoseLoss.frictionFactor(1000, 0.05)).isCloseTo(0.064, within(1e-9));
        assertThat(HoseLoss.frictionFactor(1e5, 0.05)).isCloseTo(0.018, within(0.0006));
    }

    // Source: 0.433 psi a foot of water; velocity head.
    @Test
    void height_fittings_and_boom_line() {
        assertThat(HoseLoss.height_Pa(0.3048, 999) / psi(1)).isCloseTo(0.433, within(0.001));
        double v = HoseLoss.velocity_ms(gpm(60), HOSE);
        assertThat(HoseLoss.fittings_Pa(0.9, gpm(60), HOSE, 1000)).isCloseTo(0.9 * 1000 * v * v / 2, within(1e-6));
        assertThat(HoseLoss.boomLine_Pa(gpm(60), HOSE, 999, 1e-3) * 3)
                .isCloseTo(HoseLoss.friction_Pa(gpm(60), HOSE, 999, 1e-3), within(1e-6));
    }

    // Source: the exponents of viscosity in the smooth-pipe laws, about a fifth to a quarter.
    @Test
    void twice_the_viscosity_moves_the_loss_by_about_a_sixth() {
        double one = HoseLoss.friction_Pa(gpm(60), HOSE, 1326, 3.5e-3);
        double two = HoseLoss.friction_Pa(gpm(60), HOSE, 1326, 7.0e-3);
        assertThat(two / one).isBetween(1.14, 1.20);
    }
}
