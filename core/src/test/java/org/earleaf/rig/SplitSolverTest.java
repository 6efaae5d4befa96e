// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.DIGITS;
import static org.earleaf.rig.Us.gpa;
import static org.earleaf.rig.Us.gpm;
import static org.earleaf.rig.Us.in;
import static org.earleaf.rig.Us.mph;
import static org.earleaf.rig.Us.psi;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class SplitSolverTest {
    private static final List<OutletGroup> TOP_AND_EAR =
            List.of(new OutletGroup("top", 1.5, 0.40), new OutletGroup("ear", 4, 0.60));
    private static final double ROW = FlowMath.flow_m3s(gpa(20), mph(9), in(30));

    // Source: extension form for the flow of a row, square-root law for pressure and shares, by hand.
    @Test
    void a_row_of_top_and_ear_nozzles() {
        assertThat(ROW).isCloseTo(gpm(0.9091), DIGITS);
        double[] wanted = SplitSolver.wanted_m3s(TOP_AND_EAR, ROW);
        assertThat(wanted[0]).isCloseTo(gpm(0.2424), within(gpm(0.00005)));
        assertThat(wanted[1]).isCloseTo(gpm(0.1364), within(gpm(0.00005)));
        SplitSolver.Split split = SplitSolver.of(
                TOP_AND_EAR,
                List.of(NozzleSize.parse("025", Said.text("")), NozzleSize.parse("015", Said.text(""))),
                ROW,
                1);
        assertThat(split.shares()[0]).isCloseTo(0.3846, within(5e-5));
        assertThat(split.shares()[1]).isCloseTo(0.6154, within(5e-5));
        assertThat(split.pressure_Pa() / psi(1)).isCloseTo(34.8, within(0.05));
        assertThat(split.warnings(TOP_AND_EAR)).isEmpty();
    }

    @Test
    void the_solver_finds_what_trying_every_combination_finds() {
        SplittableRandom random = new SplittableRandom(4);
        List<NozzleSize> sizes = NozzleSize.listAll();
        double low = Math.log(psi(15) / FlowMath.RATED_PA) / 2;
        double high = Math.log(psi(60) / FlowMath.RATED_PA) / 2;
        for (int k = 0; k < 40; k++) {
            double s = random.nextDouble(0.1, 0.6);
            double t = random.nextDouble(0.1, 0.3);
            List<OutletGroup> groups = List.of(
                    new OutletGroup("top", random.nextDouble(1, 2), s),
                    new OutletGroup("up", random.nextInt(1, 3), t),
                    new OutletGroup("side", random.nextInt(1, 3), 1 - s - t));
            double row = gpm(random.nextDouble(0.2, 3));
            double[] wanted = SplitSolver.wanted_m3s(groups, row);
            double least = Double.POSITIVE_INFINITY;
            for (NozzleSize a : sizes) {
                for (NozzleSize b : sizes) {
                    for (NozzleSize c : sizes) {
                        double misfit = SplitSolver.leastMisfit(groups, List.of(a, b, c), wanted, 1.1, low, high);
                        least = Math.min(least, misfit);
                    }
                }
            }
            SplitSolver.Split split = SplitSolver.solve(groups, sizes, row, 1.1, psi(15), psi(60));
            assertThat(split.misfit()).isCloseTo(least, within(1e-12));
        }
    }

    @Test
    void shares_add_up_and_scaling_every_size_moves_the_pressure_alone() {
        SplittableRandom random = new SplittableRandom(5);
        for (int k = 0; k < 200; k++) {
            double c = random.nextDouble(0.5, 2);
            NozzleSize a = new NozzleSize("a", gpm(random.nextDouble(0.1, 1)), Optional.empty());
            NozzleSize b = new NozzleSize("b", gpm(random.nextDouble(0.1, 1)), Optional.empty());
            List<NozzleSize> scaled = List.of(
                    new NozzleSize("a", c * a.rated_m3s(), Optional.empty()),
                    new NozzleSize("b", c * b.rated_m3s(), Optional.empty()));
            SplitSolver.Split one = SplitSolver.of(TOP_AND_EAR, List.of(a, b), ROW, 1.13);
            SplitSolver.Split two = SplitSolver.of(TOP_AND_EAR, scaled, ROW, 1.13);
            assertThat(one.shares()[0] + one.shares()[1]).isCloseTo(1, within(1e-12));
            assertThat(two.shares()[0]).isCloseTo(one.shares()[0], within(1e-12));
            assertThat(two.pressure_Pa() * c * c / one.pressure_Pa()).isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void a_share_that_is_far_off_is_named() {
        SplitSolver.Split split = SplitSolver.of(
                TOP_AND_EAR,
                List.of(NozzleSize.parse("04", Said.text("")), NozzleSize.parse("015", Said.text(""))),
                ROW,
                1);
        assertThat(split.warnings(TOP_AND_EAR)).hasSize(2);
        Said top = split.warnings(TOP_AND_EAR).get(0);
        assertThat(top.code()).isEqualTo("split.off");
        assertThat(top.values()).containsEntry("group", "top");
        assertThat(((Measured) top.values().get("share")).value()).isCloseTo(.5, within(.005));
    }

    @Test
    void shares_that_do_not_add_up_are_refused() {
        List<OutletGroup> wrong = List.of(new OutletGroup("top", 1, 0.4), new OutletGroup("ear", 2, 0.5));
        assertThatThrownBy(() -> SplitSolver.solve(wrong, NozzleSize.listAll(), ROW, 1, psi(15), psi(60)))
                .hasMessageContaining("split.shares");
    }
}
