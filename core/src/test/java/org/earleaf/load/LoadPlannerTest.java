// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Recipes.ac;
import static org.earleaf.load.Recipes.gal;
import static org.earleaf.load.Recipes.gpa;
import static org.earleaf.load.Recipes.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.LoadJob.Split;
import org.earleaf.mix.MixHow;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.MixStep;
import org.earleaf.mix.MixWhy;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class LoadPlannerTest {
    private static final Offset<Double> FIVE_DIGITS = within(0.0005);

    private static LoadPlan plan(double acres, double galAc, double usableGal, Split split) {
        return LoadPlanner.plan(LoadJob.of(Recipes.tassel(), ac(acres), gpa(galAc), gal(usableGal), split));
    }

    private static double in(Load load, String product, String unit) {
        return Recipes.of(load, product).in(unit);
    }

    // Source: arithmetic by hand: 49 ac x 10 fl oz, 0.25 % of 735 gal, 7.35 x 8.5 lb, ammonium sulfate 0.068 gal/lb.
    @Test
    void amounts_of_one_load_worked_by_hand() {
        Load load = plan(49, 15, 980, Split.EQUAL).loads().get(0);
        assertThat(load.volume_m3()).isCloseTo(gal(735), within(1e-9));
        assertThat(in(load, "Demo F1", "fl oz")).isCloseTo(490, FIVE_DIGITS);
        assertThat(in(load, "Demo F1", "gal")).isCloseTo(3.828, FIVE_DIGITS);
        assertThat(in(load, "Demo I1", "fl oz")).isCloseTo(137.2, FIVE_DIGITS);
        assertThat(in(load, "Demo I1", "gal")).isCloseTo(1.072, FIVE_DIGITS);
        assertThat(in(load, "Demo Spreader", "gal")).isCloseTo(1.8375, FIVE_DIGITS);
        assertThat(in(load, "AMS", "lb")).isCloseTo(62.475, FIVE_DIGITS);
        assertThat(in(load, "water", "gal")).isCloseTo(724.0, within(0.3));
    }

    // Source: arithmetic by hand: 147 ac x 15 gal/ac = 2205 gal.
    @Test
    void equal_loads_and_full_loads_with_a_rest() {
        LoadPlan equal = plan(147, 15, 980, Split.EQUAL);
        assertThat(equal.loads()).hasSize(3);
        for (Load load : equal.loads()) {
            assertThat(load.volume_m3() / gal(1)).isCloseTo(735, within(1e-9));
            assertThat(load.area_m2() / ac(1)).isCloseTo(49.0, within(1e-9));
        }
        LoadPlan full = plan(147, 15, 1000, Split.FULL);
        assertThat(full.loads())
                .extracting(load -> load.volume_m3() / gal(1))
                .satisfiesExactly(
                        v -> assertThat(v).isCloseTo(1000, within(1e-9)),
                        v -> assertThat(v).isCloseTo(1000, within(1e-9)),
                        v -> assertThat(v).isCloseTo(205, within(1e-9)));
        assertThat(full.loads().get(2).area_m2() / ac(1)).isCloseTo(13.67, within(0.005));
    }

    // Source: arithmetic by hand, 2205 + 8 + 6 gal.
    @Test
    void heel_and_lines_are_filled_once_with_finished_mix() {
        LoadPlan plan = LoadPlanner.plan(
                new LoadJob(Recipes.tassel(), ac(147), gpa(15), gal(980), gal(8), gal(6), Split.EQUAL, Set.of()));
        assertThat(plan.total_m3() / gal(1)).isCloseTo(2219, within(1e-9));
        double area = plan.loads().stream().mapToDouble(Load::area_m2).sum();
        assertThat(area / ac(1)).isCloseTo(147, within(1e-9));
        assertThat(plan.loads().get(0).area_m2()).isLessThan(plan.loads().get(1).area_m2());
        double product = plan.loads().stream()
                .mapToDouble(l -> in(l, "Demo F1", "fl oz"))
                .sum();
        assertThat(product).isCloseTo(10 * 2219 / 15.0, within(1e-9));
        assertThat(plan.remarks())
                .filteredOn(r -> r.code().equals("load.heel-used"))
                .singleElement()
                .satisfies(r -> assertThat(((Measured) r.values().get("volume")).value() / gal(1))
                        .isCloseTo(14, within(1e-9)));
    }

    @Test
    void an_exact_fit_needs_no_further_load() {
        assertThat(plan(200, 15, 1000, Split.EQUAL).loads()).hasSize(3);
        assertThat(plan(200, 15, 1000, Split.FULL).loads()).hasSize(3);
        assertThat(plan(200.001, 15, 1000, Split.FULL).loads()).hasSize(4);
    }

    @Test
    void a_small_rest_is_told() {
        assertThat(plan(140, 15, 1000, Split.FULL).remarks())
                .filteredOn(r -> r.code().equals("load.last-small"))
                .singleElement()
                .satisfies(r -> assertThat(((Measured) r.values().get("volume")).value() / gal(1))
                        .isCloseTo(100, within(1e-6)));
        assertThat(plan(140, 15, 1000, Split.EQUAL).remarks())
                .extracting(Said::code)
                .doesNotContain("load.last-small");
    }

    @Test
    void loads_add_up_to_the_whole_for_a_thousand_random_jobs() {
        SplittableRandom random = new SplittableRandom(8);
        for (int k = 0; k < 1000; k++) {
            double acres = random.nextDouble(1, 600);
            double rate = random.nextDouble(8, 40);
            double usable = random.nextDouble(300, 1600);
            double heel = random.nextDouble(0, 12);
            double prime = random.nextDouble(0, 12);
            Split split = random.nextBoolean() ? Split.EQUAL : Split.FULL;
            LoadJob job = new LoadJob(
                    Recipes.tassel(), ac(acres), gpa(rate), gal(usable), gal(heel), gal(prime), split, Set.of());
            if (split == Split.FULL && (acres * rate + heel + prime) % usable < 30) {
                continue;
            }
            LoadPlan plan = LoadPlanner.plan(job);
            double volume = 0;
            double area = 0;
            double ounces = 0;
            double spreader = 0;
            for (Load load : plan.loads()) {
                volume += load.volume_m3();
                area += load.area_m2();
                ounces += in(load, "Demo F1", "fl oz");
                spreader += in(load, "Demo Spreader", "gal");
                assertThat(load.volume_m3()).isLessThanOrEqualTo(gal(usable) * (1 + 1e-9));
                double filled = Recipes.amounts(load).entrySet().stream()
                        .filter(e -> !e.getValue().isMass())
                        .mapToDouble(e -> e.getValue().inside())
                        .sum();
                double sulfate_m3 = Recipes.of(load, "AMS").inside() / 1770;
                assertThat(filled + sulfate_m3).isCloseTo(load.volume_m3(), within(1e-9));
            }
            double total = acres * rate + heel + prime;
            assertThat(volume / gal(total)).isCloseTo(1, within(1e-9));
            assertThat(area / ac(acres)).isCloseTo(1, within(1e-9));
            assertThat(ounces / (10 * total / rate)).isCloseTo(1, within(1e-9));
            assertThat(spreader / (0.0025 * total)).isCloseTo(1, within(1e-9));
            if (split == Split.EQUAL) {
                assertThat(plan.loads())
                        .allMatch(l -> l.volume_m3() == plan.loads().get(0).volume_m3());
                assertThat(plan.loads())
                        .allMatch(l -> l.steps().equals(plan.loads().get(0).steps()));
            }
        }
    }

    // Source: extension density tables, 3.539 lb N/gal of 32 % UAN: 40 lb N/ac is 11.30 gal/ac.
    @Test
    void a_nitrogen_solution_goes_on_alone_without_water() {
        List<MixLine> uan = List.of(line("UAN 32", 40, "lb N/ac", "SL"));
        LoadPlan plan = LoadPlanner.plan(LoadJob.of(uan, ac(72), Double.NaN, gal(1200), Split.EQUAL));
        assertThat(plan.neat()).isTrue();
        assertThat(plan.rate_m3m2() / gpa(1)).isCloseTo(11.302, within(0.002));
        Load load = plan.loads().get(0);
        assertThat(load.steps()).hasSize(1);
        assertThat(in(load, "UAN 32", "gal")).isCloseTo(813.7, within(0.2));
        assertThat(load.steps().get(0).why()).isEqualTo(MixWhy.ALONE);
        // The rate rounded by hand is still neat; a rate that leaves room is filled up with water.
        LoadPlan rounded = LoadPlanner.plan(LoadJob.of(uan, ac(72), gpa(11.3), gal(1200), Split.EQUAL));
        assertThat(rounded.neat()).isTrue();
        LoadPlan thinned = LoadPlanner.plan(LoadJob.of(uan, ac(72), gpa(15), gal(1200), Split.EQUAL));
        assertThat(in(thinned.loads().get(0), "water", "gal")).isCloseTo(72 * 15 - 813.7, within(0.2));
    }

    @Test
    void a_solution_that_carries_other_products_goes_first_and_last() {
        List<MixLine> mix = List.of(
                line("UAN 32", 12, "gal/ac", "SL"),
                line("Demo I2", 2, "oz/ac", "WG"),
                line("Demo I1", 2.8, "fl oz/ac", "EC"));
        Load load = LoadPlanner.plan(LoadJob.of(mix, ac(10), gpa(15), gal(1200), Split.EQUAL))
                .loads()
                .get(0);
        assertThat(load.steps())
                .extracting(MixStep::product)
                .containsExactly("water", "UAN 32", "Demo I2", "Demo I1", "UAN 32");
        assertThat(in(load, "UAN 32", "gal")).isCloseTo(120, within(1e-9));
        assertThat(load.steps().get(2).how()).isEqualTo(MixHow.SLURRY_TWICE);
        assertThat(load.steps().get(3).how()).isEqualTo(MixHow.PREMIX_TWICE);
    }

    @Test
    void most_of_the_carrier_goes_first_and_the_rest_to_the_mark() {
        List<MixStep> steps = plan(49, 15, 980, Split.EQUAL).loads().get(0).steps();
        MixStep first = steps.get(0);
        MixStep last = steps.get(steps.size() - 1);
        assertThat(first.part()).isEqualTo(MixStep.Part.CARRIER_FIRST);
        assertThat(last.part()).isEqualTo(MixStep.Part.CARRIER_LAST);
        double water = first.amount().inside() + last.amount().inside();
        assertThat(first.amount().inside() / water).isBetween(0.5, 0.7);
        assertThat(steps).extracting(MixStep::order).containsExactly(1, 2, 3, 4, 5, 6);
    }

    @Test
    void jobs_that_cannot_be_meant_are_refused() {
        assertThatThrownBy(() -> plan(0, 15, 980, Split.EQUAL)).hasMessageContaining("where.area");
        assertThatThrownBy(() -> plan(147, 15, -1, Split.EQUAL)).hasMessageContaining("where.tank");
        assertThatThrownBy(() -> plan(147, 200, 980, Split.EQUAL)).hasMessageContaining("flow.out-of-range");
        assertThatThrownBy(() -> plan(147_000, 15, 980, Split.EQUAL)).hasMessageContaining("load.too-many");
        assertThatThrownBy(() -> LoadPlanner.plan(LoadJob.of(List.of(), ac(1), gpa(15), gal(100), Split.EQUAL)))
                .hasMessageContaining("load.no-product");
        assertThatThrownBy(() -> LoadPlanner.plan(
                        new LoadJob(Recipes.tassel(), ac(1), gpa(15), gal(980), gal(-1), 0, Split.EQUAL, Set.of())))
                .hasMessageContaining("where.heel");
        assertThatThrownBy(() -> LoadPlanner.plan(
                        new LoadJob(Recipes.tassel(), ac(50), gpa(15), gal(10), gal(8), gal(6), Split.EQUAL, Set.of())))
                .hasMessageContaining("load.below-heel");
    }

    @Test
    void products_that_overfill_the_rate_are_refused_and_a_missing_rate_is_asked_for() {
        List<MixLine> much = List.of(line("UAN 32", 60, "lb N/ac", "SL"));
        assertThatThrownBy(() -> LoadPlanner.plan(LoadJob.of(much, ac(10), gpa(15), gal(1000), Split.EQUAL)))
                .hasMessageContaining("load.products-overfill");
        assertThatThrownBy(() -> plan(10, Double.NaN, 1000, Split.EQUAL)).hasMessageContaining("found.no-rate-for");
        List<MixLine> noCarrier = new ArrayList<>(List.of(line("Demo F1", 200, "fl oz/ac", "SC")));
        assertThatThrownBy(() -> LoadPlanner.plan(LoadJob.of(noCarrier, ac(10), Double.NaN, gal(1000), Split.EQUAL)))
                .hasMessageContaining("load.rate-missing");
    }
}
