// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.HALF_PERCENT;
import static org.earleaf.rig.Us.LMIN;
import static org.earleaf.rig.Us.gpa;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.lbGal;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class OrificeMathTest {
    private static final double UAN32 = lbGal(11.06);

    // Source: orifice equation in US units, GPM = 29.84 Cd d2 sqrt(psi / SG) with water of 999 kg/m3, and in metric
    // ones, L/min = 0.6664 Cd mm2 sqrt(bar / SG).
    @Test
    void the_constants_of_the_us_and_metric_forms_come_out() {
        assertThat(OrificeMath.flow_m3s(in(1), 1, psi(1), 999) / gpm(1)).isCloseTo(29.84, within(0.02));
        assertThat(OrificeMath.flow_m3s(1e-3, 1, 1e5, 999) / LMIN).isCloseTo(0.6664, within(0.0005));
    }

    // Source: 40 lb N/ac of 32 % UAN (3.539 lb N/gal) at 8 mph in 30-in rows, extension form for the flow and the
    // orifice equation for the plate: Cd 0.62, 20 psi, SG 1.3261.
    @Test
    void plates_for_one_and_two_hoses_a_row() {
        double rate = gpa(40 / 3.539);
        double one = FlowMath.flow_m3s(rate, mph(8), in(30));
        double two = FlowMath.flow_m3s(rate, mph(8), in(15));
        assertThat(one / gpm(1)).isCloseTo(0.45665, HALF_PERCENT);
        assertThat(one / gpm(1) * FlowMath.densityFactor(UAN32)).isCloseTo(0.5259, HALF_PERCENT);
        assertThat(two / gpm(1)).isCloseTo(0.22832, HALF_PERCENT);
        assertThat(two / gpm(1) * FlowMath.densityFactor(UAN32)).isCloseTo(0.2629, HALF_PERCENT);
        assertThat(OrificeMath.diameter_m(one, 0.62, psi(20), UAN32)).isCloseTo(in(0.0797), HALF_PERCENT);
        assertThat(OrificeMath.diameter_m(two, 0.62, psi(20), UAN32)).isCloseTo(in(0.0564), HALF_PERCENT);
    }

    // Source: metric orifice form by hand, 0.6664 x 0.65 x 4 x sqrt(1.4 / 1.326).
    @Test
    void a_metric_plate() {
        double flow = OrificeMath.flow_m3s(2e-3, 0.65, 1.4e5, 1.326 * FlowMath.WATER_KGM3);
        assertThat(flow / LMIN).isCloseTo(1.780, HALF_PERCENT);
    }

    // Source: US orifice form by hand, 0.300 / (29.84 x 0.0591^2 x sqrt(20)).
    @Test
    void a_catch_gives_the_coefficient() {
        assertThat(OrificeMath.cd(gpm(0.300), in(0.0591), psi(20), FlowMath.WATER_KGM3))
                .isCloseTo(0.644, within(0.003));
        double mean = OrificeMath.fitCd(new double[] {gpm(0.29), gpm(0.31)}, in(0.0591), psi(20), FlowMath.WATER_KGM3);
        assertThat(mean).isCloseTo(0.644, within(0.003));
    }

    @Test
    void every_part_solves_back_and_a_plate_stands_beside_nozzles_by_its_rating() {
        SplittableRandom random = new SplittableRandom(3);
        Percentage bits = Percentage.withPercentage(1e-7);
        for (int k = 0; k < 1000; k++) {
            double d = random.nextDouble(5e-4, 8e-3);
            double cd = random.nextDouble(0.5, 1);
            double p = psi(random.nextDouble(5, 120));
            double rho = random.nextDouble(800, 1500);
            double q = OrificeMath.flow_m3s(d, cd, p, rho);
            assertThat(OrificeMath.diameter_m(q, cd, p, rho)).isCloseTo(d, bits);
            assertThat(OrificeMath.pressure_Pa(q, d, cd, rho)).isCloseTo(p, bits);
            assertThat(OrificeMath.cd(q, d, p, rho)).isCloseTo(cd, bits);
            double byRating = FlowMath.flowAt_m3s(OrificeMath.rated_m3s(d, cd), p, FlowMath.densityFactor(rho));
            assertThat(byRating).isCloseTo(q, bits);
        }
    }

    // Source: definition of the Reynolds number, 4 Q density / (pi d mu).
    @Test
    void the_plates_of_a_usual_pass_lie_where_the_equation_holds_for_water() {
        assertThat(OrificeMath.reynolds(gpm(0.457), in(0.08), 1000, 1e-3)).isBetween(17_000.0, 19_000.0);
    }
}
