// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/**
 * What a nitrate test of the top foot does to the advice for a bare field in June, from 5 to 45 ppm. Iowa State's
 * late-spring test says 8 lb/ac for each ppm below 25 and nothing from there on.
 */
class SoilTestSweepTest {
    /** Corn of six to twelve inches. */
    private static final LocalDate JUNE = LocalDate.of(2024, 6, 8);

    private static final double CRITICAL = 25;
    private static final Map<Double, NitrogenOptions.Answer> ANSWERS = new TreeMap<>();

    static {
        for (double ppm : new double[] {5, 9, 13, 17, 20, 24, 25, 32, 45}) {
            TestFarm farm = new TestFarm().starter(0).nitrate(JUNE, ppm);
            ANSWERS.put(ppm, NitrogenOptions.of(farm.farm(), farm.zone(), JUNE, false, SideBySide.IN_TURN));
        }
    }

    private static double proposed_lbAc(NitrogenOptions.Answer answer) {
        return answer.proposed().map(o -> Units.lbAc(o.nitrogen_kgHa())).orElse(0.0);
    }

    private static List<String> codes(Option option) {
        return option.why().stream().map(r -> r.said().code()).toList();
    }

    @Test
    void advice_never_rises_as_the_test_rises() {
        List<Double> rates = new ArrayList<>();
        ANSWERS.values().forEach(a -> rates.add(-proposed_lbAc(a)));
        assertThat(rates).isSorted();
        assertThat(proposed_lbAc(ANSWERS.get(5.0))).isGreaterThanOrEqualTo(100);
        assertThat(proposed_lbAc(ANSWERS.get(20.0))).isLessThan(proposed_lbAc(ANSWERS.get(5.0)));
    }

    /** What the best pass is worth falls too, and by more than it strays. */
    @Test
    void a_pass_is_worth_less_as_the_test_rises() {
        List<Double> worth = new ArrayList<>();
        ANSWERS.values().forEach(a -> worth.add(-a.options().get(0).worth().mean_usdHa()));
        assertThat(worth).isSorted();
    }

    @Test
    void from_25_ppm_on_nothing_is_asked_for_and_the_advice_says_why() {
        ANSWERS.forEach((ppm, a) -> {
            assertThat(a.tested().enough().isPresent()).isEqualTo(ppm >= CRITICAL);
            assertThat(a.options()).isNotEmpty().allSatisfy(o -> assertThat(codes(o).contains("test.enough"))
                    .isEqualTo(ppm >= CRITICAL));
            if (ppm >= CRITICAL) {
                assertThat(a.proposed()).isEmpty();
            }
        });
    }

    @Test
    void the_top_foot_shown_the_same_day_lies_near_the_test() {
        ANSWERS.forEach((ppm, a) -> assertThat(shown_ppm(a.outlook())).isCloseTo(ppm, withinPercentage(30)));
    }

    private static double shown_ppm(Outlook o) {
        SeasonTrace trace = o.trace();
        double held = 0;
        double perPpm = 0;
        for (int i = 0; i < 3; i++) {
            held += trace.field(o.today(), Cell.NITRATE, SeasonTrace.ROW, i)
                    + trace.field(o.today(), Cell.NITRATE, SeasonTrace.MIDDLE, i);
            perPpm += o.zone().soil().bulkDensity_gcm3().get(i) * SoilProfile.thickness_mm(i) / 100;
        }
        return held / perPpm;
    }

    @Test
    void a_test_beyond_what_the_model_held_is_told_on_the_advice_itself() {
        NitrogenOptions.Answer far = ANSWERS.get(45.0);
        assertThat(far.tested().unforeseen()).hasSize(1);
        assertThat(far.outlook().flags())
                .anySatisfy(f -> assertThat(f.what().code()).isEqualTo("flag.test-unforeseen"));
        assertThat(codes(far.options().get(0))).contains("test.unforeseen");
        double held = far.tested().unforeseen().get(0).held_mgKg().p50();
        TestFarm near = new TestFarm().starter(0).nitrate(JUNE, 1.1 * held);
        NitrogenOptions.Answer believed = NitrogenOptions.of(near.farm(), near.zone(), JUNE, false, SideBySide.IN_TURN);
        assertThat(believed.tested().unforeseen()).isEmpty();
        assertThat(codes(believed.options().get(0))).doesNotContain("test.unforeseen");
    }
}
