// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class CatchTestTest {
    private static final double[] CAUGHT = {.492, .505, .510, .498, .571, .503, .495, .441, .507, .500};

    // Source: sample mean and standard deviation by hand; the 10 % rule of extension guides.
    @Test
    void finds_the_two_outlets_to_replace_and_how_even_the_set_is() {
        CatchTest.Result read = CatchTest.read(CAUGHT, 0.500);
        assertThat(read.mean_m3s()).isCloseTo(0.5022, within(5e-5));
        assertThat(read.s_m3s()).isCloseTo(0.03118, within(5e-6));
        assertThat(read.cv_pct()).isCloseTo(6.21, within(0.005));
        assertThat(read.evenness()).isEqualTo(CatchTest.Evenness.FAIR);
        assertThat(read.replaceAll()).isFalse();
        assertThat(read.listToReplace()).extracting(CatchTest.Outlet::number).containsExactly(5, 8);
        assertThat(read.outlets().get(4).deviation()).isCloseTo(0.142, within(0.0005));
        assertThat(read.outlets().get(7).deviation()).isCloseTo(-0.118, within(0.0005));
        assertThat(read.outlets().get(4).advice()).isEqualTo(CatchTest.Advice.WORN);
        assertThat(read.outlets().get(7).advice()).isEqualTo(CatchTest.Advice.CLOGGED);
        assertThat(read.outlets().get(0).advice()).isEqualTo(CatchTest.Advice.NONE);
    }

    @Test
    void without_the_two_the_rest_is_even() {
        double[] rest =
                Arrays.stream(CAUGHT).filter(q -> q != .571 && q != .441).toArray();
        CatchTest.Result read = CatchTest.read(rest, 0.500);
        assertThat(read.mean_m3s()).isCloseTo(0.50125, within(5e-6));
        assertThat(read.cv_pct()).isCloseTo(1.22, within(0.005));
        assertThat(read.evenness()).isEqualTo(CatchTest.Evenness.GOOD);
    }

    @Test
    void a_worn_set_goes_as_a_whole_and_exactly_ten_per_cent_is_still_good() {
        assertThat(CatchTest.read(new double[] {.56, .56, .56}, 0.5).replaceAll())
                .isTrue();
        CatchTest.Result limit = CatchTest.read(new double[] {.55, .55, .55}, 0.5);
        assertThat(limit.replaceAll()).isFalse();
        assertThat(limit.listToReplace()).isEmpty();
        assertThat(CatchTest.read(new double[] {.50, .50, .50, .535}, 0.5)
                        .outlets()
                        .get(3)
                        .verdict())
                .isEqualTo(CatchTest.Verdict.CHECK);
        assertThat(CatchTest.read(new double[] {.3, .5, .7}, 0.5).evenness()).isEqualTo(CatchTest.Evenness.FAIL);
    }

    @Test
    void two_catches_are_too_few() {
        assertThatThrownBy(() -> CatchTest.read(new double[] {1, 1}, 1)).hasMessageContaining("catch.too-few");
    }

    // Source: the 1/128 acre short cut of extension sheets, 340.3 ft / width in ft.
    @Test
    void the_short_cut_in_fluid_ounces() {
        assertThat(CatchTest.ounceWay_m(Us.in(20)) / Units.M_PER_FT).isCloseTo(204.2, within(0.05));
        assertThat(CatchTest.ounceWay_m(Us.in(30)) / Units.M_PER_FT).isCloseTo(136.1, within(0.05));
    }

    // Source: arithmetic, 300 ft in 20.45 s; new number = old number x shown / true.
    @Test
    void speed_and_meter_checks() {
        assertThat(CatchTest.speed_ms(300 * Units.M_PER_FT, 20.45) / Us.mph(1)).isCloseTo(10.00, within(0.005));
        assertThat(CatchTest.meterNumber(720, 103, 100)).isCloseTo(741.6, within(1e-9));
        assertThat(CatchTest.flow_m3s(0.001, 60)).isCloseTo(Us.LMIN, within(1e-12));
    }
}
