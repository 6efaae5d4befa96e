// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.FlowPart.FLOW;
import static org.earleaf.rig.FlowPart.PRESSURE;
import static org.earleaf.rig.FlowPart.RATE;
import static org.earleaf.rig.FlowPart.SIZE;
import static org.earleaf.rig.FlowPart.SPEED;
import static org.earleaf.rig.FlowPart.WIDTH;
import static org.earleaf.rig.Us.DIGITS;
import static org.earleaf.rig.Us.gpa;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class FlowSolverTest {
    private static final double OUT = Double.NaN;

    private static FlowSetting solve(double rate, double speed, double width, double flow, double p, double size) {
        return FlowSolver.solve(new FlowQuestion(rate, speed, width, flow, p, size, 1));
    }

    private static Problem problem(double rate, double speed, double width, double flow, double p, double size) {
        EarleafException e =
                catchThrowableOfType(EarleafException.class, () -> solve(rate, speed, width, flow, p, size));
        assertThat(e).isNotNull();
        return e.problems().get(0);
    }

    // Source: extension form and square-root law, worked by hand (0.50505 gal/min, 40.81 psi with size 05).
    @Test
    void rate_speed_and_width_give_the_flow_and_with_a_size_the_pressure() {
        FlowSetting open = solve(gpa(15), mph(10), in(20), OUT, OUT, OUT);
        assertThat(open.flow_m3s()).isCloseTo(gpm(0.50505), DIGITS);
        assertThat(open.hasPressure()).isFalse();
        FlowSetting sized = solve(gpa(15), mph(10), in(20), OUT, OUT, gpm(0.5));
        assertThat(sized.pressure_Pa()).isCloseTo(psi(40.81), DIGITS);
    }

    @Test
    void size_and_pressure_stand_for_the_flow() {
        assertThat(solve(gpa(15), OUT, in(20), OUT, psi(40), gpm(0.5)).speed_ms())
                .isCloseTo(mph(9.90), DIGITS);
        assertThat(solve(OUT, mph(9.9), in(20), OUT, psi(40), gpm(0.5)).rate_m3m2())
                .isCloseTo(gpa(15), DIGITS);
    }

    @Test
    void pressure_alone_tells_the_size_that_is_needed() {
        FlowSetting setting = solve(gpa(15), mph(10), in(20), OUT, psi(40.81), OUT);
        assertThat(setting.rated_m3s()).isCloseTo(gpm(0.5), DIGITS);
    }

    @Test
    void a_heavier_liquid_needs_more_pressure_for_the_same_flow() {
        double factor = FlowMath.densityFactor(Us.lbGal(11.06));
        FlowSetting uan = FlowSolver.solve(new FlowQuestion(gpa(15), mph(10), in(20), OUT, OUT, gpm(0.5), factor));
        assertThat(uan.flow_m3s()).isCloseTo(gpm(0.50505), DIGITS);
        assertThat(uan.pressure_Pa()).isCloseTo(psi(40.81) * 11.06 / 8.34, DIGITS);
        assertThat(uan.waterFlow_m3s()).isCloseTo(gpm(0.50505 * 1.1516), DIGITS);
        assertThat(uan.waterRate_m3m2()).isCloseTo(gpa(15 * 1.1516), DIGITS);
    }

    @Test
    void whatever_is_left_out_comes_back_for_a_thousand_random_settings() {
        SplittableRandom random = new SplittableRandom(6);
        Percentage bits = Percentage.withPercentage(1e-7);
        int solved = 0;
        while (solved < 1000) {
            double factor = random.nextDouble(0.9, 1.3);
            double[] all = new double[6];
            all[0] = gpa(random.nextDouble(1, 150));
            all[1] = mph(random.nextDouble(1, 22));
            all[2] = in(random.nextDouble(4, 80));
            all[3] = FlowMath.flow_m3s(all[0], all[1], all[2]);
            all[4] = psi(random.nextDouble(5, 120));
            all[5] = FlowMath.rated_m3s(all[3], all[4], factor);
            double[] q = all.clone();
            // Leave out one of rate, speed, width, flow and one of pressure and size; or the flow and one more.
            if (random.nextBoolean()) {
                q[random.nextInt(4)] = OUT;
                q[4 + random.nextInt(2)] = OUT;
            } else {
                q[3] = OUT;
                q[random.nextInt(3)] = OUT;
            }
            FlowSetting s = FlowSolver.solve(new FlowQuestion(q[0], q[1], q[2], q[3], q[4], q[5], factor));
            double[] back = {s.rate_m3m2(), s.speed_ms(), s.width_m(), s.flow_m3s(), s.pressure_Pa(), s.rated_m3s()};
            for (int part = 0; part < 6; part++) {
                assertThat(back[part]).isCloseTo(all[part], bits);
            }
            solved++;
        }
    }

    @Test
    void too_little_says_what_to_add() {
        Problem outlet = problem(gpa(15), mph(10), OUT, OUT, OUT, OUT);
        assertThat(outlet.code()).isEqualTo("flow.too-little-outlet");
        assertThat(outlet.seen()).isEqualTo(Said.of("found.only", "parts", List.of(RATE, SPEED)));
        assertThat(outlet.rule().values()).containsEntry("more", 1).containsEntry("choices", List.of(WIDTH, FLOW));
        assertThat(problem(gpa(15), mph(10), OUT, OUT, OUT, gpm(0.5)).rule().values())
                .containsEntry("other", PRESSURE);
        Problem nothing = problem(OUT, OUT, OUT, OUT, OUT, OUT);
        assertThat(nothing.seen()).isEqualTo(Said.of("found.nothing"));
        assertThat(nothing.rule().values()).containsEntry("more", 3);
        Problem ground = problem(OUT, OUT, OUT, OUT, psi(40), gpm(0.5));
        assertThat(ground.code()).isEqualTo("flow.too-little");
        assertThat(ground.rule().values())
                .containsEntry("more", 2)
                .containsEntry("choices", List.of(RATE, SPEED, WIDTH));
    }

    @Test
    void values_that_disagree_are_named_with_a_way_out() {
        Problem flow = problem(gpa(15), mph(10), in(20), gpm(0.6), OUT, OUT);
        assertThat(flow.code()).isEqualTo("flow.ground-disagrees");
        assertThat(flow.place()).isEqualTo(parts(RATE, SPEED, WIDTH, FLOW));
        assertThat(us(flow.seen(), "needed", FLOW)).isCloseTo(.505, within(.0005));
        assertThat(us(flow.seen(), "flow", FLOW)).isCloseTo(.6, within(1e-9));
        assertThat(us(flow.rule(), "speed", SPEED)).isCloseTo(11.9, within(.05));
        Problem five = problem(gpa(15), mph(10), in(20), OUT, psi(40), gpm(0.4));
        assertThat(five.code()).isEqualTo("flow.outlet-disagrees");
        assertThat(five.place()).isEqualTo(parts(RATE, SPEED, WIDTH, SIZE, PRESSURE));
        assertThat(us(five.rule(), "pressure", PRESSURE)).isCloseTo(63.8, within(.05));
        assertThat(us(five.rule(), "size", SIZE)).isCloseTo(.505, within(.0005));
        Problem outlet = problem(gpa(15), mph(10), OUT, gpm(0.505), psi(20), gpm(0.4));
        assertThat(outlet.place()).isEqualTo(parts(FLOW, SIZE, PRESSURE));
    }

    private static Said parts(FlowPart... parts) {
        return Said.of("where.flow-parts", "parts", List.of(parts));
    }

    /** A value of a sentence, in US units. */
    private static double us(Said said, String name, FlowPart part) {
        return part.outside(((Measured) said.values().get(name)).value(), false);
    }

    @Test
    void values_rounded_by_hand_are_taken_as_agreeing() {
        FlowSetting setting = solve(gpa(15), mph(10), in(20), gpm(0.505), psi(40.8), gpm(0.5));
        assertThat(setting.pressure_Pa()).isEqualTo(psi(40.8));
    }

    @Test
    void values_out_of_range_are_refused_all_at_once() {
        EarleafException e = catchThrowableOfType(
                EarleafException.class, () -> solve(gpa(151), mph(0.9), in(81), OUT, psi(121), OUT));
        assertThat(e.problems()).hasSize(4);
        Problem rate = e.problems().get(0);
        assertThat(rate.code()).isEqualTo("flow.out-of-range");
        assertThat(rate.place()).isEqualTo(Said.of("where.flow-part", "part", RATE));
        assertThat(rate.rule().values())
                .containsEntry("low", RATE.measured(RATE.low()))
                .containsEntry("high", RATE.measured(RATE.high()));
    }

    @Test
    void limits_themselves_are_accepted_with_a_remark() {
        assertThat(solve(gpa(1), mph(22), in(80), OUT, OUT, OUT).remarks()).hasSize(3);
        assertThat(solve(gpa(150), mph(1), in(4), OUT, psi(120), OUT).remarks()).hasSize(4);
        assertThat(solve(gpa(15), mph(10), in(20), OUT, OUT, OUT).remarks()).isEmpty();
    }

    @Test
    void nothing_negative_or_infinite_gets_through() {
        List<Problem> problems = new ArrayList<>();
        for (double wrong : new double[] {-1, 0, Double.POSITIVE_INFINITY}) {
            problems.add(problem(wrong, mph(10), in(20), OUT, OUT, OUT));
            problems.add(problem(gpa(15), mph(10), OUT, wrong, OUT, OUT));
            problems.add(problem(gpa(15), mph(10), in(20), OUT, OUT, wrong));
        }
        assertThat(problems).hasSize(9);
    }

    @Test
    void a_size_that_cannot_serve_is_answered_with_one_that_can() {
        Problem small = problem(gpa(15), mph(10), in(20), OUT, OUT, gpm(0.2));
        assertThat(small.code()).isEqualTo("flow.other-size");
        assertThat(small.place()).isEqualTo(Said.of("where.flow-solved", "part", PRESSURE));
        assertThat(small.rule().values()).containsEntry("nearest", "05");
    }

    // Source: ISO 10625 sizes with the square-root law: 0.50505 gal/min needs 63.8, 40.8, 28.3, 15.9 psi.
    @Test
    void sizes_that_serve_are_listed_with_their_pressure() {
        List<FlowSetting.Serves> serving =
                solve(gpa(15), mph(10), in(20), OUT, OUT, OUT).sizesThatServe();
        assertThat(serving)
                .extracting(s -> s.size().number())
                .containsExactly("03", "035", "04", "05", "06", "08", "10");
        assertThat(serving.get(3).pressure_Pa()).isCloseTo(psi(40.81), DIGITS);
    }
}
