// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.load.TankLoads.T;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.Refused;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixRules;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/**
 * Who may set which stop aside. That oil or surfactant between V8 and tassel arrests ears, and that only an agronomist
 * goes past it: university trials 2008 to 2011; every other stop stands.
 */
class OverriddenTest {
    private static final Said ASIDE = Said.of(
            "override.rule-role",
            "rule",
            "C02",
            "person",
            "C. Adviser",
            "role",
            "agronomist",
            "reason",
            "2 rows to try");

    private static final MixRules.Found EARS = MixRules.of(
                    List.of(Set.of("NIS"), Set.of("fungicide")), Set.of(), "corn", 12)
            .get(0);
    private static final MixRules.Found GRIT = MixRules.of(
                    List.of(Set.of("calcium"), Set.of("sulfate")), Set.of(), "corn", 12)
            .get(0);

    private static Overridden ears(String person, String role, String reason) {
        return Overridden.of(EARS, person, role, reason, T);
    }

    @Test
    void only_the_agronomist_by_name_and_with_a_reason_sets_the_rule_on_adjuvants_aside() {
        Overridden aside = ears(" C. Adviser ", "Agronomist", " 2 rows to try ");
        assertThat(aside.said()).isEqualTo(ASIDE);
        assertThat(Refused.by(() -> ears("C. Adviser", "grower", "why")))
                .isEqualTo(Problem.of(
                        "override.other-role",
                        Said.of("where.override", "rule", "C02"),
                        Said.text("grower"),
                        "role",
                        "agronomist"));
        assertThatThrownBy(() -> ears("C. Adviser", " ", "why")).hasMessageContaining("found.no-role");
        assertThatThrownBy(() -> ears(" ", "agronomist", "why")).hasMessageContaining("found.no-person");
        assertThatThrownBy(() -> ears("C. Adviser", "agronomist", " ")).hasMessageContaining("found.no-reason");
    }

    @Test
    void every_other_stop_stands() {
        assertThatThrownBy(() -> Overridden.of(GRIT, "C. Adviser", "agronomist", "why", T))
                .hasMessageContaining("rule=C11")
                .hasMessageContaining("override.nobody");
        long stops = org.earleaf.units.BundledTable.rows("mix-rules.csv").stream()
                .filter(r -> !r.text("override").isEmpty())
                .count();
        assertThat(stops).isEqualTo(1);
    }

    @Test
    void a_stop_that_is_set_aside_is_still_told_with_who_did_so() {
        LabelWork early = Works.stage(
                Labels.work(
                        new LabelWork.Part("Demo X", 1, false, true, Set.of("fungicide")),
                        new LabelWork.Part("Oil", 1, false, false, Set.of("COC"))),
                12);
        Overridden aside = ears("C. Adviser", "agronomist", "2 rows to try");
        List<LabelFinding> told = MixCheck.of(LabelBook.EMPTY, early, List.of(), List.of(aside, aside));
        assertThat(told).singleElement().satisfies(f -> {
            assertThat(f.verdict()).isEqualTo(Verdict.MIND);
            assertThat(f.said()).isEqualTo(Said.of("mix.quarrel-aside", "rule", MixRules.Rule.C02, "aside", ASIDE));
        });
        LabelWork grit = Labels.work(
                new LabelWork.Part("Lime", 1, false, false, Set.of("calcium")),
                new LabelWork.Part("AMS", 1, false, false, Set.of("AMS")));
        Overridden forged = new Overridden("C11", "C. Adviser", "agronomist", "why", T);
        assertThat(MixCheck.of(LabelBook.EMPTY, grit, List.of(), List.of(aside, forged)))
                .extracting(LabelFinding::verdict)
                .containsExactly(Verdict.OUTSIDE);
    }

    @Test
    void it_stays_with_the_load_until_the_load_is_changed() {
        Overridden aside = ears("C. Adviser", "agronomist", "2 rows to try");
        TankLoad load = TankLoads.planned().overriding(aside);
        assertThat(load.overridden()).containsExactly(aside);
        assertThat(load.events()).last().extracting(TankLoad.Event::person).isEqualTo("C. Adviser");
        assertThat(load.reserved(List.of(), "A", T).overridden()).containsExactly(aside);
        assertThat(load.edited(TankLoads.planned(), "A", T).overridden()).isEmpty();
        assertThatThrownBy(() -> TankLoads.reserved().overriding(aside))
                .hasMessageContaining("load.not-planned-to-override");
    }

    @Test
    void a_rig_goes_out_on_a_lapsed_calibration_only_with_a_reason_that_stays() {
        TankLoad reserved = TankLoads.reserved();
        Problem problem = Refused.by(() -> reserved.mixing(
                new MixStart(TankLoads.LOOKED.looked(), Optional.of(Said.of("calibration.none")), " "), "A", T));
        assertThat(problem.code()).isEqualTo("load.calibration-lapsed");
        assertThat(problem.seen()).isEqualTo(Said.of("calibration.none"));
        TankLoad mixing = reserved.mixing(
                new MixStart(
                        TankLoads.LOOKED.looked(),
                        Optional.of(Said.of("calibration.none")),
                        "new rig, caught tomorrow"),
                "A",
                T);
        assertThat(mixing.state()).isEqualTo(LoadState.MIXING);
        assertThat(mixing.overridden())
                .extracting(Overridden::said)
                .containsExactly(Said.of("override.calibration", "person", "A", "reason", "new rig, caught tomorrow"));
        assertThat(reserved.mixing(new MixStart(TankLoads.LOOKED.looked(), Optional.empty(), ""), "A", T)
                        .overridden())
                .isEmpty();
    }
}
