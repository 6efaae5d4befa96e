// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.field.Placement;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Dose;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.MixOrder;
import org.earleaf.mix.MixStep;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Corners of loads that no usual job turns; amounts worked by hand. */
class LoadEdgesTest {
    private static final NitrogenProduct UAN =
            NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
    private static final NitrogenProduct UREA =
            NitrogenProduct.findBuiltIn("urea").orElseThrow();
    private static final MixForm SL = MixForm.parse("SL", Said.text("form"));
    private static final MixForm WG = MixForm.parse("WG", Said.text("form"));
    private static final MixForm AMS = MixForm.parse("AMS", Said.text("form"));

    private static Dose dose(double rate, String unit, MixForm form, NitrogenProduct nitrogen) {
        return Dose.parse(rate, unit, form, nitrogen, Said.text("rate"));
    }

    private static LoadPlan plan(double rate_m3m2, Set<MixOrder.Before> labels, MixLine... lines) {
        return LoadPlanner.plan(new LoadJob(
                List.of(lines), Recipes.ac(10), rate_m3m2, Recipes.gal(500), 0, 0, LoadJob.Split.EQUAL, labels));
    }

    @Test
    void helpers_are_told_from_formulations_by_their_place() {
        for (String helper : List.of("antifoam", "compatibility", "WC", "NIS", "COC", "drift", "micronutrient")) {
            assertThat(MixForm.parse(helper, Said.text("form")).isAdjuvant())
                    .as(helper)
                    .isTrue();
        }
        for (String form : List.of("WP-SB", "WG", "SC", "SL", "EC")) {
            assertThat(MixForm.parse(form, Said.text("form")).isAdjuvant())
                    .as(form)
                    .isFalse();
        }
    }

    @Test
    void fertiliser_and_helpers_carry_no_label_and_only_a_liquid_one_is_a_solution() {
        assertThat(new MixLine("Demo F1", dose(10, "fl oz/ac", SL, null), SL, null).isLabelled())
                .isTrue();
        assertThat(new MixLine("Oil", dose(1, "% v/v", SL, null), MixForm.parse("COC", Said.text("form")), null)
                        .isLabelled())
                .isFalse();
        MixLine urea = new MixLine("urea", dose(20, "lb/ac", WG, UREA), WG, UREA);
        assertThat(urea.isLabelled()).isFalse();
        assertThat(urea.isNitrogenSolution()).isFalse();
        assertThat(urea.carries(Recipes.gpa(15))).isFalse();
        MixLine uan = new MixLine("UAN 32", dose(10, "gal/ac", SL, UAN), SL, UAN);
        assertThat(uan.carries(Recipes.gpa(20))).isTrue();
        assertThat(uan.carries(Recipes.gpa(20.001))).isFalse();
    }

    @Test
    void ammonium_sulfate_takes_room_by_form_or_by_name_and_other_dry_goods_none() {
        Amount kg = new Amount(1770, true, "lb");
        assertThat(new MixLine("Salt", dose(8.5, "lb/100 gal", AMS, null), AMS, null).room_m3(kg))
                .isCloseTo(1, within(1e-9));
        for (String name : List.of("AMS", "ammonium sulfate", "Ammonium Sulphate")) {
            assertThat(new MixLine(name, dose(8.5, "lb/100 gal", WG, null), WG, null).room_m3(kg))
                    .isCloseTo(1, within(1e-9));
        }
        assertThat(new MixLine("Demo I2", dose(2, "oz/ac", WG, null), WG, null).room_m3(kg))
                .isZero();
    }

    @Test
    void two_liquids_that_fill_the_rate_go_on_without_water_and_keep_their_own_reasons() {
        LoadPlan neat = plan(
                Double.NaN,
                Set.of(new MixOrder.Before("Nobody", "Starter"), new MixOrder.Before("UAN 32", "UAN 32")),
                new MixLine("UAN 32", dose(10, "gal/ac", SL, UAN), SL, UAN),
                new MixLine("Starter", dose(5, "gal/ac", SL, null), SL, null));
        assertThat(neat.neat()).isTrue();
        assertThat(neat.rate_m3m2()).isCloseTo(Recipes.gpa(15), within(1e-12));
        List<MixStep> steps = neat.loads().get(0).steps();
        assertThat(steps).extracting(MixStep::product).containsExactly("UAN 32", "Starter", "UAN 32");
        assertThat(steps.get(1).how()).isEqualTo(SL.how());
        assertThat(steps.get(1).why()).isEqualTo(SL.why());
    }

    @Test
    void a_rate_left_out_is_the_sum_of_liquids_and_dry_goods_add_nothing_to_it() {
        LoadPlan plan = plan(
                Double.NaN,
                Set.of(),
                new MixLine("UAN 32", dose(10, "gal/ac", SL, UAN), SL, UAN),
                new MixLine("Demo I2", dose(2, "oz/ac", WG, null), WG, null));
        assertThat(plan.rate_m3m2()).isCloseTo(Recipes.gpa(10), within(1e-12));
    }

    @Test
    void a_recipe_by_volume_alone_is_not_told_that_its_amounts_differ() {
        assertThat(plan(Recipes.gpa(15), Set.of(), Recipes.line("Oil", 1, "% v/v", "COC"))
                        .remarks())
                .isEmpty();
        assertThat(plan(Recipes.gpa(15), Set.of(), Recipes.line("Demo F1", 10, "fl oz/ac", "SC"))
                        .remarks())
                .isEmpty();
    }

    @Test
    void areas_tanks_and_heels_without_end_or_below_nothing_are_refused() {
        List<MixLine> lines = Recipes.tassel();
        double endless = Double.POSITIVE_INFINITY;
        assertThatThrownBy(() -> LoadJob.of(lines, endless, Recipes.gpa(15), 1, LoadJob.Split.EQUAL))
                .hasMessageContaining("where.area: found");
        assertThatThrownBy(() -> LoadJob.of(lines, 1, Recipes.gpa(15), Double.NaN, LoadJob.Split.EQUAL))
                .hasMessageContaining("where.tank: found");
        assertThatThrownBy(() -> new LoadJob(lines, 1, 1, 1, endless, -1, LoadJob.Split.EQUAL, Set.of()))
                .hasMessageContaining("where.heel: found")
                .hasMessageContaining("where.prime: found");
    }

    @Test
    void a_place_is_its_field_with_its_zone_where_it_has_one() {
        LoadGround mill = TankLoads.mill();
        assertThat(mill.label()).isEqualTo("Mill Eighty");
        assertThat(RecordCopy.with(mill, "part.zone", "east").label()).isEqualTo("Mill Eighty, east");
    }

    @Test
    void the_fence_over_leaves_stands_for_both_ways_of_spraying_and_no_other() {
        assertThat(NitrogenLoad.overTheTop(Placement.BROADCAST, 5, Units.kgHa(40)))
                .isPresent();
        assertThat(NitrogenLoad.overTheTop(Placement.OVER_THE_TOP, 5, Units.kgHa(40)))
                .isPresent();
        assertThat(NitrogenLoad.overTheTop(Placement.ROW_BASE, 5, Units.kgHa(40)))
                .isEmpty();
    }

    @Test
    void every_way_of_writing_a_share_of_the_tank_is_one() {
        for (String word : List.of("%", "% v/v", "pct", "%vv")) {
            assertThat(dose(.25, word, SL, null).in(1, 1).inside()).as(word).isCloseTo(.0025, within(1e-12));
        }
        assertThat(dose(100, "ppm", SL, null).in(1, 1).inside()).isCloseTo(1e-4, within(1e-12));
        assertThat(dose(100, "ppm", SL, null).unit()).isEqualTo("gal");
        assertThat(dose(100, "ppm", WG, null).in(1, 1).inside()).isCloseTo(.1, within(1e-12));
        assertThat(dose(100, "ppm", WG, null).unit()).isEqualTo("lb");
        assertThat(dose(15, "gpa", SL, null).onGround(1)).isCloseTo(Recipes.gpa(15), within(1e-15));
    }

    @Test
    void weights_of_a_solution_become_volumes_and_those_of_others_stay() {
        Dose uan = dose(110.6, "lb/ac", SL, UAN);
        assertThat(uan.isMass()).isFalse();
        assertThat(uan.onGround(1)).isCloseTo(Units.kgHa(110.6) / UAN.density_kgL() * 1e-7, within(1e-12));
        MixForm any = MixForm.listAll().stream()
                .filter(f -> !f.isDry() && !f.isLiquid() && !f.isNever())
                .findFirst()
                .orElseThrow();
        assertThat(dose(2, "oz/ac", any, UAN).isMass()).isTrue();
        assertThat(dose(2, "lb/ac", any, null).isMass()).isTrue();
        assertThat(dose(2, "lb/ac", WG, UREA).isMass()).isTrue();
        assertThat(dose(46, "lb N/ac", WG, UREA).onGround(1)).isCloseTo(Units.kgHa(100) * 1e-4, within(1e-9));
    }

    @Test
    void units_are_said_as_people_write_them() {
        assertThat(dose(10, "FLOZ/ac", SL, null).unit()).isEqualTo("fl oz");
        assertThat(dose(1, "l/ha", SL, null).unit()).isEqualTo("L");
        assertThat(dose(500, "ml/ha", SL, null).unit()).isEqualTo("mL");
        assertThat(dose(1, "qt/ac", SL, null).unit()).isEqualTo("qt");
        assertThat(dose(1, "L/100 L", SL, null).onGround()).isFalse();
        assertThatThrownBy(() -> dose(1, "gal", SL, null)).hasMessageContaining("dose.unit-unknown at rate: found gal");
        assertThatThrownBy(() -> dose(1, "cn/ac", SL, null))
                .hasMessageContaining("dose.unit-unknown at rate: found cn/ac");
        assertThatThrownBy(() -> dose(1, "lb N/100 ac", SL, UAN)).hasMessageContaining("dose.unit-unknown");
        assertThatThrownBy(() -> dose(1, "gal/lb", SL, null)).hasMessageContaining("dose.unit-unknown");
        assertThatThrownBy(() -> dose(Double.POSITIVE_INFINITY, "gal/ac", SL, null))
                .hasMessageContaining("dose.rate-missing");
        assertThatThrownBy(() -> dose(
                        1,
                        "gal/ac",
                        SL,
                        NitrogenProduct.findBuiltIn("anhydrous ammonia").orElseThrow()))
                .hasMessageContaining("dose.ammonia");
    }
}
