// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.DIGITS;
import static org.earleaf.rig.Us.HALF_PERCENT;
import static org.earleaf.rig.Us.KMH;
import static org.earleaf.rig.Us.LHA;
import static org.earleaf.rig.Us.LMIN;
import static org.earleaf.rig.Us.gpa;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.lbGal;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class FlowMathTest {
    private static final Percentage BITS = Percentage.withPercentage(1e-7);

    // Source: university extension calibration sheets, GPM = GPA mph in / 5940.
    @Test
    void flow_of_one_outlet_is_that_of_the_extension_form() {
        assertThat(FlowMath.flow_m3s(gpa(15), mph(10), in(20))).isCloseTo(gpm(0.50505), DIGITS);
        assertThat(FlowMath.rate_m3m2(gpm(0.5), mph(9.9), in(20))).isCloseTo(gpa(15.000), DIGITS);
    }

    // Source: metric form of spray manuals, L/min = L/ha km/h m / 600.
    @Test
    void flow_of_one_outlet_is_that_of_the_metric_form() {
        assertThat(FlowMath.flow_m3s(140 * LHA, 16 * KMH, 0.508)).isCloseTo(1.8965 * LMIN, DIGITS);
        assertThat(FlowMath.flow_m3s(80 * LHA, 18 * KMH, 0.5)).isCloseTo(1.200 * LMIN, DIGITS);
    }

    // Source: unit algebra; the two printed forms must give one flow.
    @Test
    void us_and_metric_forms_agree_for_a_thousand_random_settings() {
        SplittableRandom random = new SplittableRandom(1);
        for (int k = 0; k < 1000; k++) {
            double galAc = random.nextDouble(1, 150);
            double mph = random.nextDouble(1, 22);
            double inches = random.nextDouble(4, 80);
            double us_gpm = galAc * mph * inches / 5940;
            double metric_lMin = galAc * 9.353956 * (mph * 1.609344) * (inches * 0.0254) / 600;
            double ours = FlowMath.flow_m3s(gpa(galAc), mph(mph), in(inches));
            assertThat(ours / gpm(1)).isCloseTo(us_gpm, BITS);
            assertThat(ours / LMIN).isCloseTo(metric_lMin, Percentage.withPercentage(1e-5));
        }
    }

    // Source: area algebra; a rate "per treated acre" holds on the band.
    @Test
    void a_band_uses_its_share_of_the_row() {
        assertThat(FlowMath.fieldRate_m3m2(gpa(10), in(10), in(30))).isCloseTo(gpa(3.333), DIGITS);
        assertThat(FlowMath.bandRate_m3m2(gpa(10.0 / 3), in(10), in(30))).isCloseTo(gpa(10), BITS);
    }

    // Source: square-root law of a fixed orifice, GPM = N sqrt(psi / 40).
    @Test
    void flow_follows_the_square_root_of_pressure() {
        assertThat(FlowMath.flowAt_m3s(gpm(0.5), psi(20), 1)).isCloseTo(gpm(0.3536), DIGITS);
        assertThat(FlowMath.flowAt_m3s(gpm(0.5), psi(60), 1)).isCloseTo(gpm(0.6124), DIGITS);
        assertThat(FlowMath.pressure_Pa(gpm(0.50505), gpm(0.5), 1)).isCloseTo(psi(40.81), DIGITS);
        assertThat(FlowMath.pressure_Pa(gpm(0.50505), gpm(0.6), 1)).isCloseTo(psi(28.34), DIGITS);
        assertThat(FlowMath.pressure_Pa(gpm(1), gpm(0.5), 1)).isCloseTo(psi(160), DIGITS);
    }

    // Source: university extension density tables (28 % UAN 10.65 lb/gal, F 1.13; 32 % UAN 11.06 lb/gal).
    @Test
    void heavier_liquids_need_the_flow_of_more_water() {
        assertThat(20 * FlowMath.densityFactor(lbGal(10.65))).isCloseTo(22.60, DIGITS);
        assertThat(FlowMath.densityFactor(lbGal(11.06))).isCloseTo(1.1516, DIGITS);
        assertThat(FlowMath.densityFactor(FlowMath.WATER_KGM3)).isEqualTo(1);
        assertThat(FlowMath.density_kgM3(1.1516)).isCloseTo(lbGal(11.06), DIGITS);
    }

    // Source: extension tables of nitrogen per gallon, 2.982 and 3.539 lb N/gal.
    @Test
    void nitrogen_wanted_gives_the_rate_of_the_solution() {
        double lbPerGal = Units.KG_PER_LB / Units.L_PER_GAL;
        assertThat(FlowMath.rateOfNutrient_m3m2(Units.kgHa(75), 0.28 * 10.65 * lbPerGal))
                .isCloseTo(gpa(25.15), HALF_PERCENT);
        assertThat(FlowMath.rateOfNutrient_m3m2(Units.kgHa(40), 0.32 * 11.06 * lbPerGal))
                .isCloseTo(gpa(11.302), DIGITS);
        double uan32_kgL = NitrogenProduct.findBuiltIn("UAN 32").orElseThrow().nitrogen_kgL();
        assertThat(FlowMath.rateOfNutrient_m3m2(Units.kgHa(40), uan32_kgL)).isCloseTo(gpa(11.302), HALF_PERCENT);
    }

    // Source: volume additivity (error under 1 %), mass balance.
    @Test
    void a_blend_weighs_what_its_parts_weigh() {
        assertThat(FlowMath.blend_kgM3(new double[] {3, 1}, new double[] {1000, 1400}))
                .isEqualTo(1100);
    }

    // Source: square-root law with rate = 5940 GPM / (mph in), size 05, 15 gal/ac, 20 in, water.
    @Test
    void speed_range_of_a_fixed_nozzle() {
        double[][] psiMph = {{25, 7.83}, {40, 9.90}, {60, 12.12}, {80, 14.00}};
        for (double[] pair : psiMph) {
            double flow = FlowMath.flowAt_m3s(gpm(0.5), psi(pair[0]), 1);
            assertThat(FlowMath.speed_ms(flow, gpa(15), in(20)) / mph(1)).isCloseTo(pair[1], within(0.006));
        }
    }

    @Test
    void every_part_solves_back_to_what_it_came_from() {
        SplittableRandom random = new SplittableRandom(2);
        for (int k = 0; k < 1000; k++) {
            double rate = gpa(random.nextDouble(1, 150));
            double speed = mph(random.nextDouble(1, 22));
            double width = in(random.nextDouble(4, 80));
            double rated = gpm(random.nextDouble(0.05, 2));
            double factor = random.nextDouble(0.9, 1.3);
            double flow = FlowMath.flow_m3s(rate, speed, width);
            assertThat(FlowMath.rate_m3m2(flow, speed, width)).isCloseTo(rate, BITS);
            assertThat(FlowMath.speed_ms(flow, rate, width)).isCloseTo(speed, BITS);
            assertThat(FlowMath.width_m(flow, rate, speed)).isCloseTo(width, BITS);
            double pressure = FlowMath.pressure_Pa(flow, rated, factor);
            assertThat(FlowMath.flowAt_m3s(rated, pressure, factor)).isCloseTo(flow, BITS);
            assertThat(FlowMath.rated_m3s(flow, pressure, factor)).isCloseTo(rated, BITS);
            assertThat(FlowMath.densityFactor(flow, rated, pressure)).isCloseTo(factor, BITS);
            assertThat(FlowMath.flowAt_m3s(rated, pressure * 1.01, factor)).isGreaterThan(flow);
            assertThat(FlowMath.rate_m3m2(flow, speed * 1.01, width)).isLessThan(rate);
        }
    }
}
