// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.earleaf.field.PreviousCrop;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.BundledTable;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;

class EffectsTest {
    private static final List<Parameter> EFFECTS = List.of(Parameter.RUE, Parameter.MINERALISATION);

    private static Evidence of(String farm, int year) {
        return new Evidence(
                farm, farm + year, MatrixUtils.createRealIdentityMatrix(1), MatrixUtils.createRealVector(new double[] {
                    year
                }));
    }

    @Test
    void years_are_drawn_anew_within_their_farm_with_both_rotations() {
        List<Evidence> all = IntStream.range(0, 24)
                .mapToObj(k -> of(k < 10 ? "a" : "b", k / 2))
                .toList();
        List<Evidence> drawn = Residuals.drawn(all, new SplittableRandom(7));
        assertThat(drawn.stream().filter(e -> e.farm().equals("a"))).hasSize(10);
        Map<String, Double> saidBefore = new HashMap<>();
        Map<String, Integer> cases = new HashMap<>();
        for (Evidence each : drawn) {
            double says = each.information().getEntry(0);
            assertThat(says < 5).isEqualTo(each.farm().equals("a"));
            assertThat(saidBefore.getOrDefault(each.year(), says)).isEqualTo(says);
            saidBefore.put(each.year(), says);
            cases.merge(each.year(), 1, Integer::sum);
        }
        assertThat(cases).hasSize(12);
        assertThat(cases.values()).containsOnly(2);
        assertThat(saidBefore.values().stream().distinct()).hasSizeLessThan(12);
    }

    @Test
    void the_table_has_the_columns_of_the_one_in_use_and_correlations_of_the_whole() {
        Nested nested = new Nested(
                MatrixUtils.createRealMatrix(new double[][] {{.01, 0}, {0, .04}}),
                MatrixUtils.createRealMatrix(new double[][] {{.04, .03}, {.03, .09}}),
                MatrixUtils.createRealMatrix(new double[][] {{.04, 0}, {0, .12}}));
        String text = new EffectsTable(EFFECTS, nested).text();
        assertThat(text).isEqualTo("""
                        parameter,farm_sd,year_sd,rest_sd,r_rue,r_mineralisation
                        RUE,0.100,0.200,0.200,1.000,0.200
                        MINERALISATION,0.200,0.300,0.346,0.200,1.000
                        """);
        assertThat(BundledTable.rows("trial-effects.csv").get(0).cells())
                .containsKeys("parameter", "farm_sd", "year_sd", "rest_sd", "r_rue", "r_mineralisation");
    }

    @Test
    void a_measured_value_lies_below_within_or_above_the_tenths() {
        double[] members = IntStream.range(0, 100).mapToDouble(m -> m).toArray();
        assertThat(Coverage.place(9.5, members)).isEqualTo(-1);
        assertThat(Coverage.place(10, members)).isZero();
        assertThat(Coverage.place(90, members)).isZero();
        assertThat(Coverage.place(90.5, members)).isEqualTo(1);
    }

    /** A field that yields more is thought to grow more; the rougher a measurement, the less it says. */
    @Test
    void a_higher_yield_speaks_for_more_growth_and_a_rough_one_says_less() {
        Linearised low = seen(new Measured(5000, 40, -.1, 200, 9000));
        Linearised high = seen(new Measured(6000, 48, -.12, 200, 10_800));
        assertThat(likeliestGrowth(high, 300)).isGreaterThan(likeliestGrowth(low, 300));
        assertThat(high.evidence(300).precision().getEntry(0, 0))
                .isGreaterThan(high.evidence(600).precision().getEntry(0, 0));
        assertThat(high.evidence(300).precision().getEntry(0, 1))
                .isCloseTo(high.evidence(300).precision().getEntry(1, 0), within(1e-6));
    }

    private static Linearised seen(Measured measured) {
        Optional<Path> folder = Rows.findFolder();
        assumeTrue(folder.isPresent(), "skipped: no folder of measured corn beside the project");
        TrialFarm farm = TrialFarm.readAll(folder.orElseThrow()).get(0);
        return new Linearised(new SiteYear(farm, 2010, PreviousCrop.CORN, measured), EFFECTS);
    }

    private static double likeliestGrowth(Linearised at, double error_kgHa) {
        NestedEffects one = new NestedEffects(List.of(at.evidence(error_kgHa)), true, Nested.alike(.2, .4));
        one.search(1);
        return one.totals().get(0).mean().getEntry(0);
    }
}
