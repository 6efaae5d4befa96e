// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Setups by droplet class. The class tables are invented; flows and pressures are checked by the square-root law. */
class DropletSetupTest {
    private static final Said VC_TO_UC = Said.of("setup.range", "first", "VC", "last", "UC");
    private static final double PSI = Units.PA_PER_PSI;
    private static final Rig RIG = new Rig(
            RigId.called("high"),
            "self-propelled",
            new Rig.Clearance(3, Double.NaN),
            new Rig.Boom(90 * Units.M_PER_FT, 1, 15 * PSI, 90 * PSI),
            new Rig.Tank(4, 0, 0),
            new Rig.Pace(Us.mph(4), Us.mph(18), .65),
            Set.of(Placement.OVER_THE_TOP, Placement.ROW_BASE),
            20);

    private static NozzleModel model(String size, Object... pressuresAndClasses) {
        TreeMap<Double, DropletClass> classes = new TreeMap<>();
        for (int k = 0; k < pressuresAndClasses.length; k += 2) {
            classes.put((Integer) pressuresAndClasses[k] * PSI, (DropletClass) pressuresAndClasses[k + 1]);
        }
        return new NozzleModel("Invented " + size, NozzleSize.parse(size, Said.text("size")), classes);
    }

    private static final NozzleModel N04 =
            model("04", 20, DropletClass.C, 40, DropletClass.M, 60, DropletClass.M, 80, DropletClass.F);
    private static final NozzleModel N05 =
            model("05", 20, DropletClass.VC, 30, DropletClass.C, 50, DropletClass.M, 80, DropletClass.F);
    private static final NozzleModel N06 = model("06", 20, DropletClass.VC, 40, DropletClass.C, 70, DropletClass.M);

    private static PassNeed need(double galAc, double mph, Placement placement) {
        return new PassNeed(
                RIG,
                Liquid.WATER,
                galAc * Units.M3M2_PER_GALAC,
                .762,
                placement,
                PassNeed.USUAL_NOZZLE_M,
                Us.mph(mph),
                Double.NaN);
    }

    private static RigSetup.Answer find(double mph, DropletClass finest, DropletClass coarsest) {
        return RigSetup.find(
                need(15, mph, Placement.OVER_THE_TOP), new RigSetup.Droplets(finest, coarsest, List.of(N04, N05, N06)));
    }

    @Test
    void the_class_is_that_of_the_next_higher_entered_pressure_and_unknown_outside() {
        assertThat(N05.at(20 * PSI)).contains(DropletClass.VC);
        assertThat(N05.at(20.1 * PSI)).contains(DropletClass.C);
        assertThat(N05.at(80 * PSI)).contains(DropletClass.F);
        assertThat(N05.at(19.9 * PSI)).isEmpty();
        assertThat(N05.at(80.1 * PSI)).isEmpty();
    }

    @Test
    void a_table_that_turns_coarser_with_pressure_or_holds_nothing_is_refused() {
        assertThatThrownBy(() -> model("05", 20, DropletClass.M, 40, DropletClass.C))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("nozzle.coarser")
                .hasMessageContaining("class=C")
                .hasMessageContaining("classBefore=M");
        assertThatThrownBy(() -> model("05")).hasMessageContaining("nozzle.no-class");
        assertThatThrownBy(() -> new RigSetup.Droplets(DropletClass.C, DropletClass.M, List.of(N05)))
                .hasMessageContaining("droplets.turned");
    }

    /** 15 gal/ac at 10 mph and 20 in are 0.50505 gal/min: 05 at 40.8 psi (M), 06 at 28.3 psi (C), 04 at 63.8 psi (F). */
    @Test
    void medium_or_coarser_at_ten_miles_an_hour_is_served_by_two_of_three_and_says_what_binds() {
        RigSetup.Answer answer = find(10, DropletClass.M, DropletClass.VC);
        assertThat(answer.setups())
                .extracting(s -> ((Outlet.Classed) s.outlet()).model().name())
                .containsExactlyInAnyOrder("Invented 05", "Invented 06");
        Setup five = answer.setups().stream()
                .filter(s ->
                        ((Outlet.Classed) s.outlet()).model().size().number().equals("05"))
                .findFirst()
                .orElseThrow();
        assertThat(five.setting().pressure_Pa() / PSI).isCloseTo(40.81, within(.01));
        // From 20 psi, below which nothing was entered, to 50 psi, above which the droplets are fine.
        assertThat(five.speeds().slowest_ms() / Us.mph(1)).isCloseTo(10 * Math.sqrt(20 / 40.812), within(.005));
        assertThat(five.speeds().fastest_ms() / Us.mph(1)).isCloseTo(10 * Math.sqrt(50 / 40.812), within(.005));
        assertThat(five.speeds().slowestBinds()).isEqualTo(Setup.Bind.DROPLETS_BELOW);
        assertThat(five.speeds().fastestBinds()).isEqualTo(Setup.Bind.DROPLETS_ABOVE);
    }

    @Test
    void when_no_nozzle_serves_each_says_its_pressure_and_class() {
        RigSetup.Answer answer = find(10, DropletClass.VC, DropletClass.UC);
        assertThat(answer.setups()).isEmpty();
        assertThat(answer.reasons())
                .hasOnlyElementsOfType(SetupReason.DropletsOut.class)
                .extracting(r -> (SetupReason.DropletsOut) r)
                .satisfiesOnlyOnce(r -> {
                    assertThat(r.is()).contains(DropletClass.M);
                    assertThat(r.needs_Pa() / PSI).isCloseTo(40.8, within(.05));
                    assertThat(r.said().values()).containsEntry("wanted", VC_TO_UC);
                })
                .satisfiesOnlyOnce(r -> {
                    assertThat(r.is()).contains(DropletClass.F);
                    assertThat(r.needs_Pa() / PSI).isCloseTo(63.8, within(.05));
                });
        assertThat(find(7, DropletClass.F, DropletClass.F).reasons())
                .anySatisfy(r -> {
                    assertThat(r).isInstanceOf(SetupReason.DropletsOut.class);
                    assertThat(r.said().values())
                            .containsEntry("is", Said.of("setup.droplets-unknown"))
                            .containsEntry("wanted", Said.text("F"));
                })
                .anySatisfy(r -> {
                    assertThat(r).isInstanceOf(SetupReason.PressureOut.class);
                    assertThat(((SetupReason.PressureOut) r).needs_Pa() / PSI).isCloseTo(13.9, within(.05));
                });
    }

    @Test
    void streams_have_no_class() {
        RigSetup.Answer answer = RigSetup.find(
                need(15, 8, Placement.ROW_BASE), new RigSetup.Droplets(DropletClass.M, DropletClass.UC, List.of(N05)));
        assertThat(answer.setups()).isEmpty();
        assertThat(answer.reasons().get(0))
                .isEqualTo(new SetupReason.NotSetHere(
                        need(15, 8, Placement.ROW_BASE).rig().name(), SetupReason.NotSetHere.Because.STREAMS));
    }

    /** Over random needs: the class holds at both ends of every range given, and the setups stand by room. */
    @Test
    void droplets_are_as_wanted_over_the_whole_range_of_speed_in_a_thousand_random_passes() {
        SplittableRandom random = new SplittableRandom(5);
        int served = 0;
        for (int k = 0; k < 1000; k++) {
            DropletClass finest = DropletClass.values()[2 + random.nextInt(3)];
            DropletClass coarsest = DropletClass.values()[5 + random.nextInt(3)];
            double galAc = 5 + 15 * random.nextDouble();
            double mph = 6 + 9 * random.nextDouble();
            double before = Double.POSITIVE_INFINITY;
            for (Setup s : RigSetup.find(
                            need(galAc, mph, Placement.OVER_THE_TOP),
                            new RigSetup.Droplets(finest, coarsest, List.of(N04, N05, N06)))
                    .setups()) {
                NozzleModel model = ((Outlet.Classed) s.outlet()).model();
                for (double v : new double[] {
                    s.speeds().slowest_ms() * (1 + 1e-9), s.speeds().fastest_ms() * (1 - 1e-9)
                }) {
                    double Pa =
                            s.setting().pressure_Pa() * Math.pow(v / s.setting().speed_ms(), 2);
                    Optional<DropletClass> is = model.at(Pa);
                    assertThat(is).isPresent();
                    assertThat(is.get()).isBetween(finest, coarsest);
                }
                assertThat(s.speeds().room()).isLessThanOrEqualTo(before + 1e-5);
                before = s.speeds().room();
                served++;
            }
        }
        assertThat(served).isGreaterThan(300);
    }
}
