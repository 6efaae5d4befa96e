// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.HALF_PERCENT;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.Set;
import java.util.SplittableRandom;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class RigSetupTest {
    private static final NitrogenProduct UAN32 =
            NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
    private static final double NO_HEIGHT = Double.NaN;

    private static Rig rig(String kind, int hoses, double speedMax, double pressureMax, Placement... placements) {
        return new Rig(
                RigId.called("Highboy"),
                kind,
                new Rig.Clearance(in(72), Double.NaN),
                new Rig.Boom(36 * in(30), hoses, psi(8), psi(pressureMax)),
                new Rig.Tank(1000 * Units.M3_PER_GAL, 0, 0),
                new Rig.Pace(mph(4), mph(speedMax), 0.65),
                Set.of(placements),
                20);
    }

    private static PassNeed need(Rig rig, double lbN, Placement placement, double speed, double height_m) {
        PassNeed usual = PassNeed.nitrogen(rig, UAN32, Units.kgHa(lbN), in(30), placement, height_m);
        return new PassNeed(
                rig, usual.liquid(), usual.rate_m3m2(), usual.row_m(), placement, usual.nozzle_m(), speed, height_m);
    }

    private static RigSetup.Answer find(Rig rig, double lbN, Placement placement, double speed) {
        return RigSetup.find(need(rig, lbN, placement, speed, NO_HEIGHT));
    }

    // Source: extension form and orifice equation by hand: 40 lb N/ac of 32 % UAN, 8 mph, 30 in, plate of 2.03 mm at
    // 20 psi for one hose a row, 1.43 mm for two.
    @Test
    void drop_hoses_get_plates_near_the_ones_worked_by_hand() {
        Rig one = rig("self-propelled", 1, 14, 60, Placement.ROW_BASE);
        Setup first = find(one, 40, Placement.ROW_BASE, mph(8)).setups().get(0);
        assertThat(((Outlet.Plate) first.outlet()).diameter_m()).isCloseTo(2.0e-3, within(1e-9));
        assertThat(first.setting().flow_m3s()).isCloseTo(gpm(0.45665), HALF_PERCENT);
        assertThat(first.outletsPerRow()).isEqualTo(1);
        assertThat(first.outlets()).isEqualTo(36);
        double hand_psi = 20 * Math.pow(0.0797 * 25.4 / 2.0, 4);
        assertThat(first.setting().pressure_Pa() / psi(1)).isCloseTo(hand_psi, HALF_PERCENT);

        Rig two = rig("self-propelled", 2, 14, 60, Placement.ROW_BASE);
        Setup both = find(two, 40, Placement.ROW_BASE, mph(8)).setups().get(0);
        assertThat(((Outlet.Plate) both.outlet()).diameter_m()).isCloseTo(1.4e-3, within(1e-9));
        assertThat(both.setting().flow_m3s()).isCloseTo(gpm(0.22832), HALF_PERCENT);
        assertThat(both.outlets()).isEqualTo(72);
        assertThat(both.total_m3s()).isCloseTo(36 * gpm(0.45665), HALF_PERCENT);
    }

    @Test
    void a_hose_in_the_middle_is_one_a_row_however_many_stand_at_the_base() {
        Rig rig = rig("self-propelled", 2, 14, 60, Placement.MID_DRIBBLE);
        Setup first = find(rig, 40, Placement.MID_DRIBBLE, mph(8)).setups().get(0);
        assertThat(first.outletsPerRow()).isEqualTo(1);
        assertThat(first.setting().width_m()).isCloseTo(in(30), within(1e-12));
    }

    // Source: rate = 5940 GPM / (mph in) with F 1.1516: 11.3 gal/ac over 20-in nozzles.
    @Test
    void broadcast_nozzles_are_sizes_of_the_standard_corrected_for_density() {
        Rig rig = rig("self-propelled", 0, 16, 60, Placement.BROADCAST);
        Setup first = find(rig, 40, Placement.BROADCAST, mph(10)).setups().get(0);
        double water_gpm = 40 / 3.539 * 10 * 20 / 5940 * 1.1516;
        assertThat(first.setting().waterFlow_m3s()).isCloseTo(gpm(water_gpm), HALF_PERCENT);
        assertThat(first.outlet()).isInstanceOf(Outlet.Nozzle.class);
        assertThat(first.outlets()).isEqualTo(54);
        assertThat(first.outletSaid().code()).isEqualTo("nozzle.size-colour");
    }

    @Test
    void both_ends_of_the_speed_range_hold_the_rate_within_the_pressures() {
        SplittableRandom random = new SplittableRandom(7);
        for (int k = 0; k < 300; k++) {
            Placement placement = random.nextBoolean() ? Placement.ROW_BASE : Placement.BROADCAST;
            Rig rig = rig("self-propelled", random.nextInt(1, 3), 16, random.nextDouble(30, 90), placement);
            PassNeed need = need(rig, random.nextDouble(20, 120), placement, Double.NaN, NO_HEIGHT);
            double highest = need.isByRow()
                    ? Math.min(psi(40), rig.boom().highest_Pa())
                    : rig.boom().highest_Pa();
            double before = Double.POSITIVE_INFINITY;
            for (Setup setup : RigSetup.find(need).setups()) {
                for (double speed : new double[] {
                    setup.speeds().slowest_ms(), setup.speeds().fastest_ms()
                }) {
                    double flow = FlowMath.flow_m3s(need.rate_m3m2(), speed, need.width_m());
                    double pressure = FlowMath.pressure_Pa(
                            flow, setup.outlet().rated_m3s(), need.liquid().densityFactor());
                    assertThat(pressure).isBetween(psi(8) * (1 - 1e-9), highest * (1 + 1e-9));
                }
                assertThat(setup.speeds().slowest_ms())
                        .isLessThanOrEqualTo(setup.setting().speed_ms() * (1 + 1e-9));
                assertThat(setup.speeds().fastest_ms())
                        .isGreaterThanOrEqualTo(setup.setting().speed_ms() * (1 - 1e-9));
                assertThat(setup.speeds().room()).isLessThanOrEqualTo(before + 1e-6);
                before = setup.speeds().room();
            }
        }
    }

    @Test
    void what_binds_is_named() {
        Rig rig = rig("self-propelled", 1, 14, 60, Placement.ROW_BASE);
        Setup first = find(rig, 40, Placement.ROW_BASE, mph(8)).setups().get(0);
        assertThat(first.speeds().fastestBinds()).isEqualTo(Setup.Bind.FASTEST_SPEED);
        assertThat(first.speeds().slowestBinds()).isEqualTo(Setup.Bind.LOWEST_PRESSURE);
        assertThat(first.speeds().fastest_ms()).isCloseTo(mph(10), within(1e-9));
        Setup last = find(rig, 40, Placement.ROW_BASE, mph(9.9)).setups().stream()
                .filter(s -> s.setting().pressure_Pa() > psi(39))
                .findFirst()
                .orElseThrow();
        assertThat(last.speeds().fastestBinds()).isEqualTo(Setup.Bind.HIGHEST_PRESSURE);
    }

    @Test
    void a_bar_that_matches_no_whole_rows_is_told() {
        Rig rig = rig("self-propelled", 1, 14, 60, Placement.ROW_BASE);
        PassNeed odd = new PassNeed(
                rig, Liquid.parse("uan32", Said.text("")), 1e-5, in(22), Placement.ROW_BASE, in(20), mph(8), NO_HEIGHT);
        assertThat(RigSetup.find(odd).setups().get(0).remarks().get(0))
                .isEqualTo(Said.of("setup.guess-rows", "rows", 49.09));
        assertThat(find(rig, 40, Placement.ROW_BASE, mph(8)).setups().get(0).remarks())
                .extracting(Said::code)
                .doesNotContain("setup.guess-rows")
                .contains("setup.plate-assumed");
    }

    @Test
    void when_nothing_serves_the_nearest_outlets_say_why() {
        Rig rig = rig("self-propelled", 0, 16, 10, Placement.BROADCAST);
        RigSetup.Answer answer = RigSetup.find(need(rig, 400, Placement.BROADCAST, mph(15), NO_HEIGHT));
        assertThat(answer.setups()).isEmpty();
        assertThat(answer.reasons()).hasSize(4);
        assertThat(answer.reasons().get(0)).isInstanceOfSatisfying(SetupReason.PressureOut.class, r -> {
            assertThat(r.outlet()).isEqualTo(Said.of("nozzle.size", "number", "20"));
            assertThat(r.needs_Pa()).isGreaterThan(r.high_Pa());
        });
    }

    @Test
    void a_rig_that_cannot_does_not_and_says_so() {
        Rig rig = rig("self-propelled", 1, 14, 60, Placement.ROW_BASE);
        assertThat(find(rig, 40, Placement.BROADCAST, mph(8)).reasons())
                .containsExactly(new SetupReason.NoSuchPlacement("Highboy", Placement.BROADCAST));
        assertThat(find(rig, 40, Placement.ROW_BASE, mph(12)).reasons().get(0))
                .isInstanceOfSatisfying(SetupReason.SpeedOut.class, r -> {
                    assertThat(r.speed_ms()).isEqualTo(mph(12));
                    assertThat(r.low_ms()).isCloseTo(mph(5), within(1e-9));
                    assertThat(r.high_ms()).isCloseTo(mph(10), within(1e-9));
                });
        assertThat(RigSetup.find(need(rig, 40, Placement.ROW_BASE, mph(8), 2.0))
                        .reasons()
                        .get(0))
                .isInstanceOf(SetupReason.TooTall.class);
        assertThat(RigSetup.find(need(rig, 40, Placement.ROW_BASE, mph(8), 1.5)).setups())
                .isNotEmpty();
        assertThat(find(rig, 40, Placement.AMMONIA, mph(6)).reasons())
                .containsExactly(new SetupReason.NotSetHere("Highboy", SetupReason.NotSetHere.Because.AMMONIA));
        assertThat(find(rig, 40, Placement.BY_AIR, mph(6)).reasons())
                .containsExactly(new SetupReason.NotSetHere("Highboy", SetupReason.NotSetHere.Because.BY_AIR));
        Rig tender = rig("tender", 1, 14, 60, Placement.ROW_BASE);
        assertThat(find(tender, 40, Placement.ROW_BASE, mph(8)).reasons())
                .containsExactly(new SetupReason.NotSetHere("Highboy", SetupReason.NotSetHere.Because.TENDER));
        Rig slow = rig("self-propelled", 1, 4.5, 60, Placement.ROW_BASE);
        assertThat(find(slow, 40, Placement.ROW_BASE, Double.NaN)
                        .reasons()
                        .get(0)
                        .said()
                        .code())
                .isEqualTo("setup.no-speed");
        assertThat(find(rig, 2, Placement.ROW_BASE, mph(8)).reasons().get(0)).isInstanceOf(SetupReason.RateOut.class);
    }

    // Source: definition of the Reynolds number by hand: 0.23 gal/min of UAN (assumed 3.5 mPa s) through 1.4 mm is
    // 5,000.
    @Test
    void a_stream_too_slow_for_the_equation_asks_for_a_catch() {
        Rig rig = rig("self-propelled", 2, 14, 60, Placement.ROW_BASE, Placement.MID_DRIBBLE);
        assertThat(find(rig, 40, Placement.ROW_BASE, mph(8)).setups().get(0).remarks())
                .extracting(Said::code)
                .contains("setup.slow-stream")
                .doesNotContain("setup.end-outlets");
        assertThat(find(rig, 100, Placement.MID_DRIBBLE, mph(8)).setups().get(0).remarks())
                .extracting(Said::code)
                .doesNotContain("setup.slow-stream")
                .contains("setup.end-outlets");
    }

    @Test
    void outlets_that_share_the_rate_are_left_to_the_split() {
        Rig rig = rig("self-propelled", 2, 14, 60, Placement.UNDER_CANOPY);
        assertThat(find(rig, 40, Placement.UNDER_CANOPY, mph(6)).reasons())
                .containsExactly(new SetupReason.NotSetHere("Highboy", SetupReason.NotSetHere.Because.SPLIT));
    }

    @Test
    void in_tall_corn_the_usual_speed_is_lower() {
        Rig rig = rig("self-propelled", 0, 16, 60, Placement.OVER_THE_TOP);
        PassNeed tall =
                new PassNeed(rig, Liquid.WATER, 1.4e-5, in(30), Placement.OVER_THE_TOP, in(20), Double.NaN, 1.7);
        assertThat(RigSetup.find(tall).setups().get(0).setting().speed_ms()).isCloseTo(mph(8), within(1e-9));
    }
}
