// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.load.TankLoads.T;

import java.util.List;
import java.util.Set;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixRules;
import org.junit.jupiter.api.Test;

/**
 * Who may set which stop aside. That oil or surfactant between V8 and tassel arrests ears, and that only an agronomist
 * goes past it: university trials 2008 to 2011; every other stop stands.
 */
class OverriddenTest {
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
        assertThat(aside.sentence()).isEqualTo("Rule C02 set aside by C. Adviser, agronomist: 2 rows to try");
        assertThatThrownBy(() -> ears("C. Adviser", "grower", "why"))
                .hasMessage("override of rule C02: found grower; expected the agronomist, by name. Ask the agronomist,"
                        + " or change the load.");
        assertThatThrownBy(() -> ears("C. Adviser", " ", "why")).hasMessageContaining("nobody's role");
        assertThatThrownBy(() -> ears(" ", "agronomist", "why")).hasMessageContaining("nobody named");
        assertThatThrownBy(() -> ears("C. Adviser", "agronomist", " ")).hasMessageContaining("no reason");
    }

    @Test
    void every_other_stop_stands() {
        assertThatThrownBy(() -> Overridden.of(GRIT, "C. Adviser", "agronomist", "why", T))
                .hasMessageContaining("rule C11")
                .hasMessageContaining("a rule that nobody may set aside");
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
            assertThat(f.sentence()).endsWith("Rule C02 set aside by C. Adviser, agronomist: 2 rows to try.");
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
        assertThatThrownBy(() -> TankLoads.reserved().overriding(aside)).hasMessageContaining("a planned load");
    }

    @Test
    void a_rig_goes_out_on_a_lapsed_calibration_only_with_a_reason_that_stays() {
        TankLoad reserved = TankLoads.reserved();
        assertThatThrownBy(() -> reserved.mixing(
                        new MixStart(TankLoads.LOOKED.looked(), "no catch test of its outlets", " "), "A", T))
                .hasMessage("calibration of the Highboy: found no catch test of its outlets; expected a catch test that"
                        + " holds. Catch the outlets, or say why it goes out without: the reason stays in the record.");
        TankLoad mixing = reserved.mixing(
                new MixStart(TankLoads.LOOKED.looked(), "no catch test of its outlets", "new rig, caught tomorrow"),
                "A",
                T);
        assertThat(mixing.state()).isEqualTo(LoadState.MIXING);
        assertThat(mixing.overridden())
                .extracting(Overridden::sentence)
                .containsExactly("Without a calibration that holds, by A: new rig, caught tomorrow");
        assertThat(reserved.mixing(new MixStart(TankLoads.LOOKED.looked(), "", ""), "A", T)
                        .overridden())
                .isEmpty();
    }
}
