// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Recipes.ac;
import static org.earleaf.load.Recipes.gal;
import static org.earleaf.load.Recipes.gpa;
import static org.earleaf.load.Recipes.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.mix.LoadCautions;
import org.earleaf.mix.LoadCautions.Caution;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.LoadJob.Split;
import org.earleaf.rig.PassNeed;
import org.earleaf.rig.RigSetup;
import org.earleaf.rig.Setup;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class LoadSheetTest {
    private static final NitrogenProduct UAN32 =
            NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
    private static final Rig HIGHBOY = new Rig(
            RigId.called("Highboy"),
            "self-propelled",
            new Rig.Clearance(1.83, Double.NaN),
            new Rig.Boom(27.432, 2, 7e4, 4e5),
            new Rig.Tank(gal(1000), gal(8), gal(6)),
            new Rig.Pace(2.2, 5.4, 0.65),
            Set.of(Placement.ROW_BASE),
            20);

    // Source: 11.302 gal/ac of 32 % UAN for 40 lb N/ac (extension table 3.539 lb N/gal), 160 ac, heel 8 and lines 6
    // gal.
    @Test
    void a_nitrogen_pass_gets_its_sheets() {
        PassNeed need = PassNeed.nitrogen(HIGHBOY, UAN32, Units.kgHa(40), 0.762, Placement.ROW_BASE, 1.2);
        Setup setup = RigSetup.find(need).setups().get(0);
        LoadPlan plan = NitrogenLoad.plan(HIGHBOY, UAN32, Units.kgHa(40), ac(160), Split.EQUAL);
        List<LoadSheet> sheets = NitrogenLoad.sheets(plan, "North 80", HIGHBOY, Optional.of(setup), List.of(), false);
        assertThat(sheets).hasSize(2);
        LoadSheet first = sheets.get(0);
        assertThat(first.load().volume_m3() / gal(1)).isCloseTo((160 * 11.302 + 14) / 2, within(0.5));
        assertThat(first.load().steps()).hasSize(1);
        LoadSheet.Settings settings = first.settings().orElseThrow();
        assertThat(settings.outlet().code()).isEqualTo("outlet.a-row");
        assertThat(settings.outlet().values()).containsEntry("count", 2);
        assertThat(settings.slowest_ms()).isLessThan(settings.speed_ms());
        assertThat(settings.fastest_ms()).isGreaterThan(settings.speed_ms());
        assertThat(first.cautions())
                .startsWith(Caution.LABEL)
                .contains(Caution.SALT, Caution.CHLORINE)
                .doesNotContain(Caution.JAR, Caution.RESTRICTED);
    }

    // Source: arithmetic by hand: 100 gal at 15 gal/ac is 6.67 ac, 66.7 fl oz and 18.7 fl oz.
    @Test
    void a_part_load_takes_its_share_of_ground_and_product() {
        LoadPlan plan = LoadPlanner.plan(LoadJob.of(Recipes.tassel(), ac(49), gpa(15), gal(980), Split.EQUAL));
        LoadSheet.PartLoad part = LoadSheet.of(plan, "", Optional.empty(), List.of(), false)
                .get(0)
                .part();
        assertThat(part.area_m2() / ac(1)).isCloseTo(6.667, within(0.001));
        assertThat(part.products().get(1).amount().in("fl oz")).isCloseTo(66.67, within(0.01));
        assertThat(part.products().get(2).amount().in("fl oz")).isCloseTo(18.67, within(0.01));
        assertThat(LoadSheet.of(plan, "", Optional.empty(), List.of(), true)
                        .get(0)
                        .part()
                        .volume_m3())
                .isEqualTo(0.5);
    }

    @Test
    void cautions_follow_what_is_in_the_tank() {
        List<Caution> labelled = LoadCautions.of(Recipes.tassel(), gpa(15));
        assertThat(labelled)
                .contains(Caution.RESTRICTED, Caution.JAR, Caution.MANY, Caution.TANK, Caution.LINES)
                .doesNotContain(Caution.SALT);
        List<Caution> carried = LoadCautions.of(
                List.of(line("UAN 28", 12, "gal/ac", "SL"), line("Demo H1", 30, "fl oz/ac", "SL")), gpa(15));
        assertThat(carried).contains(Caution.N_CARRIER, Caution.SALT);
    }

    @Test
    void dry_product_and_ammonia_are_not_loaded() {
        NitrogenProduct urea = NitrogenProduct.findBuiltIn("urea").orElseThrow();
        NitrogenProduct ammonia =
                NitrogenProduct.findBuiltIn("anhydrous ammonia").orElseThrow();
        assertThatThrownBy(() -> NitrogenLoad.plan(HIGHBOY, urea, 40, ac(10), Split.EQUAL))
                .hasMessageContaining("load.not-a-solution");
        assertThatThrownBy(() -> NitrogenLoad.plan(HIGHBOY, ammonia, 40, ac(10), Split.EQUAL))
                .hasMessageContaining("dose.ammonia");
    }

    // Source: state extension summary of Minnesota trials: 90 lb N/ac to V4, 60 at V7, none beyond.
    @Test
    void the_fence_for_nitrogen_over_leaves_is_told() {
        assertThat(NitrogenLoad.overTheTop(Placement.ROW_BASE, 10, 40)).isEmpty();
        assertThat(fence(4, 60).within()).isTrue();
        assertThat(fence(4, 60).said())
                .isEqualTo(Said.of(
                        "fence.within",
                        "stage",
                        "V4",
                        "asked",
                        Measure.NITROGEN_RATE.of(Units.kgHa(60)),
                        "most",
                        Measure.NITROGEN_RATE.of(Units.kgHa(90))));
        assertThat(fence(6, 75).said().code()).isEqualTo("fence.above");
        assertThat(Units.lbAc(((Measured) fence(6, 75).said().values().get("most")).value()))
                .isCloseTo(70, within(1e-9));
        assertThat(fence(6, 75).within()).isFalse();
        assertThat(fence(9, 30)).isEqualTo(new NitrogenLoad.Fence(false, Said.of("fence.none", "stage", "V9")));
    }

    private static NitrogenLoad.Fence fence(double collars, double nitrogen_lbAc) {
        return NitrogenLoad.overTheTop(Placement.BROADCAST, collars, Units.kgHa(nitrogen_lbAc))
                .orElseThrow();
    }
}
