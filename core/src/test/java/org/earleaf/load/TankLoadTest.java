// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.TankLoads.T;
import static org.earleaf.load.TankLoads.f1;
import static org.earleaf.load.TankLoads.i2;
import static org.earleaf.load.TankLoads.key;
import static org.earleaf.load.TankLoads.mixing;
import static org.earleaf.load.TankLoads.planned;
import static org.earleaf.load.TankLoads.reserved;

import java.util.List;
import java.util.Set;
import org.earleaf.Refused;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Problem;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class TankLoadTest {
    @Test
    void a_load_goes_from_plan_to_ground_and_every_step_says_who() {
        TankLoad applied = TankLoads.mixed().applied("A. Grower", T.plusSeconds(9000));
        assertThat(applied.state()).isEqualTo(LoadState.APPLIED);
        assertThat(applied.events()).hasSize(8).allMatch(e -> e.person().endsWith("r"));
        assertThat(applied.events().get(2).what())
                .isEqualTo(Said.of("load.event.key", "step", 1, "code", "INVENTED-3"));
        assertThat(applied.uses(applied.grounds().get(0)))
                .extracting(GroundUse::state)
                .containsOnly(GroundUse.State.MADE);
        assertThat(reserved().uses(TankLoads.mill()).get(1).perHa()).isCloseTo(Labels.flozAc(10), within(1e-9));
        assertThat(reserved().uses(TankLoads.mill()).get(1).state()).isEqualTo(GroundUse.State.RESERVED);
        assertThat(LoadState.values())
                .filteredOn(LoadState::holds)
                .containsExactly(LoadState.RESERVED, LoadState.MIXING, LoadState.MIXED, LoadState.APPLIED);
    }

    @Test
    void a_label_that_is_not_kept_reserves_nothing_and_says_why() {
        LabelWork second = planned().work(TankLoads.mill());
        List<LabelFinding> over = LabelCheck.of(
                Labels.BOOK,
                second,
                List.of(Labels.made("p1", TankLoads.DAY.minusDays(3), "Demo F1", Labels.flozAc(10))));
        assertThatThrownBy(() -> planned().reserved(over, "A. Grower", T))
                .hasMessageContaining("label.outside at where.label-of{product=Demo F1}")
                .hasMessageContaining(
                        "limit=INTERVAL, planned=label.days{n=3.0}, allowed=14 days, by=label.days{n=11.0}");
        List<LabelFinding> none = LabelCheck.of(new org.earleaf.label.LabelBook(List.of()), second, List.of());
        assertThatThrownBy(() -> planned().reserved(none, "A. Grower", T)).hasMessageContaining("label.forbids");
    }

    @Test
    void steps_out_of_turn_are_refused() {
        assertThatThrownBy(() -> reserved().reserved(List.of(), "A", T))
                .hasMessage("load.not-planned-to-reserve at where.load{id=load 1}: found"
                        + " found.load-state{state=RESERVED}");
        assertThatThrownBy(() -> planned().mixing(TankLoads.LOOKED, "A", T)).hasMessageContaining("load.not-reserved");
        assertThatThrownBy(() -> reserved().key(1, key(i2(), "A", 1))).hasMessageContaining("load.not-mixing");
        assertThatThrownBy(() -> reserved().mixed(new MixGate(true, true, true, true, true, true, true, true), "A", T))
                .hasMessageContaining("load.not-mixing");
        assertThatThrownBy(() -> mixing().applied("A", T)).hasMessageContaining("load.not-mixed");
        assertThatThrownBy(() -> mixing().handOver(1, "Old rig", "x", "A", T)).hasMessageContaining("load.not-mixed");
        assertThatThrownBy(() -> reserved().mixing(TankLoads.LOOKED, " ", T)).hasMessageContaining("load.unnamed");
        assertThatThrownBy(() -> mixing().edited(planned(), "A", T)).hasMessageContaining("load.not-open");
        TankLoad empty = TankLoad.planned(
                TankLoad.Ticket.of("e", "j", "r", TankLoads.DAY),
                new TankLoad.Fill(1, 0, 1, false),
                new LabelWork.Driving(java.util.Optional.empty(), 0, 0, false),
                List.of(),
                List.of());
        assertThatThrownBy(() -> empty.reserved(List.of(), "A", T)).hasMessageContaining("load.empty");
        TankLoad noField = TankLoad.planned(
                TankLoad.Ticket.of("e", "j", "r", TankLoads.DAY),
                new TankLoad.Fill(1, 0, 1, false),
                new LabelWork.Driving(java.util.Optional.empty(), 0, 0, false),
                List.of(),
                List.of(f1()));
        assertThatThrownBy(() -> noField.reserved(List.of(), "A", T)).hasMessageContaining("load.empty");
    }

    @Test
    void a_wrong_product_is_stopped_before_it_is_poured() {
        LoadLine.Key wrong = new LoadLine.Key("INVENTED-2", i2().planned().inside(), "A. Grower", T, "");
        assertThatThrownBy(() -> mixing().key(1, wrong))
                .hasMessage("load.wrong-product at where.wrong-product{step=1, product=Demo I2}: found"
                        + " found.code{code=INVENTED-2}");
        // By a lot on the shelf it is known as well.
        TankLoad first = mixing().key(1, key(i2(), "A", 0)).key(1, key(i2(), "B", 0));
        LoadLine.Key lot = new LoadLine.Key(" f1-0426", f1().planned().inside(), "A. Grower", T, "");
        assertThat(first.key(2, lot).lines().get(1).keys()).hasSize(1);
        assertThat(Refused.by(() -> first.key(2, new LoadLine.Key("x", 1, "A", T, "")))
                        .rule()
                        .values())
                .containsEntry("codes", List.of("F1-0426", "INVENTED-1"));
    }

    @Test
    void the_second_key_is_another_person_or_the_same_after_a_pause_kept_as_single() {
        TankLoad once = mixing().key(1, key(i2(), "A. Grower", 0));
        assertThat(once.lines().get(0).isIn()).isFalse();
        assertThat(once.lines().get(0).isSingle()).isFalse();
        Problem early = Refused.by(() -> once.key(1, key(i2(), " a. grower", 29)));
        assertThat(early.code()).isEqualTo("load.same-person-at-once");
        assertThat(early.rule().values()).containsEntry("pause", 30L).containsEntry("wait", 2L);
        assertThat(once.key(1, key(i2(), "a. grower", 30)).lines().get(0).isSingle())
                .isTrue();
        assertThat(once.key(1, key(i2(), "B. Helper", 1)).lines().get(0).isSingle())
                .isFalse();
        TankLoad twice = once.key(1, key(i2(), "B. Helper", 1));
        assertThatThrownBy(() -> twice.key(1, key(i2(), "C", 90))).hasMessageContaining("load.third-key");
        assertThatThrownBy(() -> mixing().key(1, key(i2(), " ", 0))).hasMessageContaining("load.key-unnamed");
    }

    @Test
    void products_go_in_in_their_order() {
        assertThatThrownBy(() -> mixing().key(2, key(f1(), "A", 0))).hasMessageContaining("load.step-before");
        TankLoad once = mixing().key(1, key(i2(), "A", 0));
        assertThatThrownBy(() -> once.key(2, key(f1(), "A", 0))).hasMessageContaining("load.step-before");
        assertThatThrownBy(() -> mixing().key(0, key(f1(), "A", 0))).hasMessageContaining("load.no-such-step");
    }

    private static LoadLine.Key measured(LoadLine line, double share, String reason) {
        return new LoadLine.Key("INVENTED-1", line.planned().inside() * share, "A", T, reason);
    }

    @Test
    void an_amount_off_by_more_than_its_measure_needs_a_reason_and_never_passes_the_label() {
        assertThat(f1().with(measured(f1(), 1.02, "")).keys()).hasSize(1);
        assertThat(f1().with(measured(f1(), .98, "")).keys()).hasSize(1);
        assertThatThrownBy(() -> f1().with(measured(f1(), 1.021, ""))).hasMessageContaining("load.unlike-plan");
        assertThatThrownBy(() -> f1().with(measured(f1(), .979, " "))).hasMessageContaining("load.unlike-plan");
        assertThat(f1().with(measured(f1(), 1.1, "jug was full")).measured().inside())
                .isCloseTo(f1().planned().inside() * 1.1, within(1e-12));
        assertThat(f1().with(measured(f1(), 1.2, "jug was full")).keys()).hasSize(1);
        assertThatThrownBy(() -> f1().with(measured(f1(), 1.201, "jug was full")))
                .hasMessageContaining("load.above-label");
        for (double none : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> f1().with(new LoadLine.Key("INVENTED-1", none, "A", T, "x")))
                    .hasMessageContaining("load.nothing-measured");
        }
        LoadLine.Key dry = new LoadLine.Key("INVENTED-3", i2().planned().inside() * 1.03, "A", T, "");
        assertThat(i2().with(dry).keys()).hasSize(1);
        LoadLine.Key more = new LoadLine.Key("INVENTED-3", i2().planned().inside() * 1.031, "A", T, "");
        assertThatThrownBy(() -> i2().with(more)).hasMessageContaining("load.unlike-plan");
    }

    @Test
    void two_amounts_that_differ_are_measured_again() {
        LoadLine once = f1().with(measured(f1(), 1, ""));
        LoadLine.Key other = new LoadLine.Key("INVENTED-1", f1().planned().inside() * 1.05, "B", T, "spilt");
        assertThatThrownBy(() -> once.with(other)).hasMessageContaining("load.keys-differ");
    }

    @Test
    void a_change_after_the_lock_opens_it_and_voids_keys_and_reservation() {
        TankLoad other = planned();
        TankLoad changed = reserved().edited(other, "B. Helper", T);
        assertThat(changed.state()).isEqualTo(LoadState.PLANNED);
        assertThat(changed.isLocked()).isFalse();
        assertThat(changed.events()).hasSize(2);
        assertThat(reserved().isLocked()).isTrue();
        assertThat(planned().isLocked()).isFalse();
        TankLoad r = reserved();
        TankLoad tampered = new TankLoad(
                TankLoad.Ticket.of(r.id(), r.job(), "Other rig", r.date()),
                new TankLoad.Fill(r.volume_m3(), 0, r.rate_m3m2(), false),
                r.driving(),
                r.grounds(),
                r.lines(),
                r.state(),
                r.lock(),
                List.of(),
                r.events());
        assertThat(tampered.isLocked()).isFalse();
        assertThatThrownBy(() -> tampered.mixing(TankLoads.LOOKED, "A", T)).hasMessageContaining("load.not-as-locked");
        assertThat(reserved().fingerprint()).isEqualTo(planned().fingerprint());
    }

    @Test
    void a_load_is_cancelled_with_a_reason_while_nothing_is_in_the_tank() {
        assertThat(mixing().cancelled("rain", "A", T).state()).isEqualTo(LoadState.CANCELLED);
        assertThat(planned().cancelled("rain", "A", T).events().get(0).what())
                .isEqualTo(Said.of("load.event.cancelled", "why", "rain"));
        assertThat(reserved().cancelled("rain", "A", T).state().holds()).isFalse();
        assertThatThrownBy(() -> planned().cancelled(" ", "A", T)).hasMessageContaining("load.no-reason");
        TankLoad poured = mixing().key(1, key(i2(), "A", 0));
        assertThatThrownBy(() -> poured.cancelled("rain", "A", T)).hasMessageContaining("load.holds-product");
        assertThatThrownBy(() -> TankLoads.mixed().cancelled("rain", "A", T))
                .hasMessageContaining("load.holds-product");
    }

    @Test
    void a_part_handed_over_takes_its_share_of_product_and_ground() {
        TankLoad mixed = TankLoads.mixed();
        double quarter = mixed.volume_m3() / 4;
        TankLoad.Parted two = mixed.handOver(quarter, "Hired rig", "load 2", "A. Grower", T.plusSeconds(99));
        assertThat(two.given().rig()).isEqualTo("Hired rig");
        assertThat(two.given().from()).isEqualTo("load 1");
        assertThat(two.given().id()).isEqualTo("load 2");
        assertThat(two.kept().id()).isEqualTo("load 1");
        assertThat(two.kept().isLocked() && two.given().isLocked()).isTrue();
        assertThat(two.given().volume_m3() + two.kept().volume_m3()).isCloseTo(mixed.volume_m3(), within(1e-12));
        assertThat(two.given().grounds().get(0).area_ha()).isCloseTo(8, within(1e-9));
        for (int k = 0; k < 2; k++) {
            double whole = mixed.lines().get(k).measured().inside();
            assertThat(two.given().lines().get(k).measured().inside()).isCloseTo(whole / 4, within(1e-12));
            assertThat(two.kept().lines().get(k).measured().inside()).isCloseTo(whole * .75, within(1e-12));
            assertThat(two.kept().lines().get(k).planned().inside())
                    .isCloseTo(mixed.lines().get(k).planned().inside() * .75, within(1e-12));
        }
        assertThat(two.kept().lines().get(1).most()).isCloseTo(f1().most() * .75, within(1e-12));
        assertThat(two.kept().events())
                .last()
                .satisfies(e -> assertThat(e.what().values()).containsEntry("rig", "Hired rig"))
                .extracting(e -> e.what().code())
                .isEqualTo("load.event.handed-over");
        assertThatThrownBy(() -> mixed.handOver(quarter, "highboy ", "x", "A", T))
                .hasMessageContaining("load.same-rig");
        for (double bad : new double[] {0, -1, mixed.volume_m3()}) {
            assertThatThrownBy(() -> mixed.handOver(bad, "Hired rig", "x", "A", T))
                    .hasMessageContaining("load.part-moved");
        }
    }

    // Worked by hand: 14 gal of 1000 stay in heel and lines; 300 moved leave 686 for 700/1000 of the product.
    @Test
    void heel_and_lines_stay_with_the_rig_when_a_part_is_handed_over() {
        double gal = org.earleaf.units.Units.M3_PER_GAL;
        TankLoad whole = RecordCopy.with(
                RecordCopy.with(TankLoads.mixed(), "fill.volume_m3", 1000 * gal), "fill.unapplied_m3", 14 * gal);
        assertThat(whole.appliedShare()).isCloseTo(.986, within(1e-12));
        TankLoad.Parted two = whole.handOver(300 * gal, "Hired rig", "load 2", "A", T);
        assertThat(two.kept().volume_m3()).isCloseTo(700 * gal, within(1e-12));
        assertThat(two.kept().unapplied_m3()).isCloseTo(14 * gal, within(1e-12));
        assertThat(two.given().unapplied_m3()).isZero();
        assertThat(two.given().grounds().get(0).area_ha()).isCloseTo(32 * 300 / 986.0, within(1e-9));
        assertThat(two.kept().grounds().get(0).area_ha()).isCloseTo(32 * 686 / 986.0, within(1e-9));
        assertThat(two.kept().lines().get(0).planned().inside())
                .isCloseTo(i2().planned().inside() * .7, within(1e-12));
        assertThatThrownBy(() -> whole.handOver(986 * gal, "Hired rig", "x", "A", T))
                .hasMessageContaining("load.part-moved");
    }

    @Test
    void a_load_mixed_too_strong_counts_for_what_it_holds() {
        TankLoad strong = mixing().key(1, key(i2(), "A", 0))
                .key(1, key(i2(), "B", 0))
                .key(2, new LoadLine.Key("INVENTED-1", f1().planned().inside() * 1.1, "A", T, "jug"));
        assertThat(strong.uses(TankLoads.mill()).get(1).perHa()).isCloseTo(Labels.flozAc(11), within(1e-9));
        assertThat(strong.events())
                .last()
                .extracting(TankLoad.Event::what)
                .isEqualTo(Said.of("load.event.key-differs", "step", 2, "code", "INVENTED-1", "reason", "jug"));
        assertThat(Set.copyOf(strong.lines())).hasSize(2);
    }
}
