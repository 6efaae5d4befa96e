// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.app.store.Tanks.DAY;
import static org.earleaf.app.store.Tanks.T;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.MixStart;
import org.earleaf.record.Applicator;
import org.earleaf.record.Chain;
import org.earleaf.record.Deadlines;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.Hours;
import org.earleaf.record.RecordRule;
import org.earleaf.record.Told;
import org.earleaf.units.Said;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LoadFilingTest extends WithLoads {
    @BeforeEach
    void plan() {
        loads.add(Tanks.load("a", "1", "highboy", 10, 1, 500));
    }

    /** @param second person who turns the second key */
    private Kept applied(String second) {
        Kept k = loads.reserve("a", loads.get("a").version(), "A. Grower", T);
        k = loads.mixing("a", k.version(), Tanks.LOOKED, "A. Grower", T);
        k = loads.key("a", k.version(), 1, Tanks.key(k.load(), "A. Grower"));
        var first = Tanks.key(k.load(), second);
        k = loads.key(
                "a",
                k.version(),
                1,
                new org.earleaf.load.LoadLine.Key(first.code(), first.measured(), second, T.plusSeconds(40), ""));
        k = loads.mixed("a", k.version(), DAY, true, "A. Grower", T);
        return loads.applied("a", k.version(), "A. Grower", T);
    }

    static Told told(String wind, String certificate, Instant filed) {
        TreeMap<String, String> air = new TreeMap<>();
        if (!wind.isEmpty()) {
            air.put("wind", wind);
        }
        return new Told(
                Applicator.onOwnGround("A. Grower", certificate),
                "S 12, T 80 N, R 21 W",
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                new Hours(Optional.of(LocalTime.of(9, 0)), Optional.of(LocalTime.of(11, 30))),
                air,
                filed);
    }

    private List<Chain.Entry> file(String wind, String certificate) {
        return loads.file("a", store.farm(), Placement.OVER_THE_TOP, told(wind, certificate, T));
    }

    @Test
    void a_record_is_made_from_the_load_with_only_the_unknowable_added() {
        applied("B. Helper");
        FiledRecord r = file("6 mph from SW", "none").get(0).record();
        assertThat(r.problems()).isEmpty();
        assertThat(r.field()).isEqualTo("Home Eighty");
        assertThat(r.crop()).isEqualTo("corn");
        assertThat(r.area().text()).isEqualTo("79.1 ac");
        assertThat(r.products()).hasSize(1);
        // 10 fl oz/ac on 79.07 ac, 6.18 gal, out of the 8 gal of the first lot.
        assertThat(r.products().get(0).amount().text()).isEqualTo("790.74 fl oz");
        assertThat(r.products().get(0).rate()).isEqualTo("10 fl oz/ac");
        assertThat(r.products().get(0).registration()).isEqualTo("INVENTED-7");
        assertThat(r.products().get(0).lot()).isEqualTo("A");
        assertThat(r.reentry_h()).hasValue(12);
        assertThat(r.extras()).containsEntry("mixed by", "A. Grower, B. Helper").doesNotContainKey("deviation");
        assertThat(Chain.verify(store.records())).isEmpty();
        assertThat(loads.get("a").filed()).hasValue(1);
    }

    // Worked by hand: 100 of 500 gal stay in heel and lines: 4/5 of 790.74 fl oz go on, 158.15 do not.
    @Test
    void what_stays_in_heel_and_lines_is_used_and_not_applied() {
        loads.edit(
                "a",
                1,
                org.earleaf.app.RecordCopy.with(
                        Tanks.load("a", "1", "highboy", 10, 1, 500),
                        "fill.unapplied_m3",
                        100 * org.earleaf.units.Units.M3_PER_GAL),
                "A. Grower",
                T);
        applied("B. Helper");
        FiledRecord r = file("6 mph from SW", "none").get(0).record();
        assertThat(r.products().get(0).amount().text()).isEqualTo("632.59 fl oz");
        assertThat(r.extras()).containsEntry("not applied", "100.0 gal in heel and lines: 158.15 fl oz Demo P");
        assertThat(loads.drawn("a").get(0).amount())
                .as("the lot gave all of it")
                .isCloseTo(
                        790.74 / 128 * org.earleaf.units.Units.M3_PER_GAL,
                        org.assertj.core.api.Assertions.within(1e-6));
    }

    @Test
    void what_was_set_aside_stands_in_the_record() {
        Kept k = loads.reserve("a", 1, "A. Grower", T);
        loads.mixing(
                "a",
                k.version(),
                new MixStart(Tanks.LOOKED.looked(), Optional.of(Said.of("calibration.none")), "new rig"),
                "A. Grower",
                T);
        k = loads.get("a");
        k = loads.key("a", k.version(), 1, Tanks.key(k.load(), "A. Grower"));
        k = loads.key("a", k.version(), 1, Tanks.key(k.load(), "B. Helper"));
        k = loads.mixed("a", k.version(), DAY, true, "A. Grower", T);
        loads.applied("a", k.version(), "A. Grower", T);
        assertThat(file("6 mph", "none").get(0).record().extras())
                .containsEntry("set aside", "Without a calibration that holds, by A. Grower: new rig");
    }

    @Test
    void one_person_alone_is_kept_as_single() {
        applied("A. Grower");
        assertThat(file("6 mph", "none").get(0).record().extras())
                .containsEntry("mixed by", "A. Grower; single: both keys of one person");
    }

    @Test
    void what_the_law_or_a_label_asks_for_is_not_left_out() {
        applied("B. Helper");
        assertThatThrownBy(() -> file("6 mph", "")).hasMessageContaining("record.no-certification");
        assertThatThrownBy(() -> file("", "none")).hasMessageContaining("record.no-wind");
        assertThat(store.records()).isEmpty();
        assertThat(store.farm().passes()).hasSize(2);
        assertThat(loads.get("a").filed()).isEmpty();
    }

    @Test
    void wind_outside_the_label_is_written_down_as_a_deviation() {
        applied("B. Helper");
        assertThat(file("12 mph from W", "none").get(0).record().extras().get("deviation"))
                .isEqualTo("wind 12 mph from W, the label of Demo P says 10 mph (most wind)");
    }

    @Test
    void a_load_is_filed_once_and_only_when_applied() {
        assertThatThrownBy(() -> file("6 mph", "none")).hasMessageContaining("found.load-state{state=PLANNED}");
        applied("B. Helper");
        file("6 mph", "none");
        assertThatThrownBy(() -> file("6 mph", "none")).hasMessageContaining("load.filed-already");
    }

    @Test
    void its_pass_counts_once_on_the_ground_and_stands_among_the_passes_made() {
        applied("B. Helper");
        file("6 mph", "none");
        Pass pass = store.farm().passes().stream()
                .filter(p -> p.product().equals("Demo P"))
                .findFirst()
                .orElseThrow();
        assertThat(pass.state()).isEqualTo(Pass.State.MADE);
        assertThat(pass.rate().unit()).isEqualTo("fl oz/ac");
        assertThat(pass.rate().entered()).isCloseTo(10, org.assertj.core.api.Assertions.within(1e-9));
        // 10 lie there, 10 more are the 20 of a season; 11 are not.
        assertThat(stops(10)).isFalse();
        assertThat(stops(11)).isTrue();
    }

    private boolean stops(double flozAc) {
        return loads.findings(Tanks.load("b", "2", "highboy", flozAc, 1, 500)).stream()
                .anyMatch(LabelFinding::isStop);
    }

    @Test
    void a_late_entry_is_filed_and_flagged() {
        applied("B. Helper");
        Told late = told("6 mph", "none", Instant.parse("2026-06-23T12:00:00Z"));
        FiledRecord r = loads.file("a", store.farm(), Placement.OVER_THE_TOP, late)
                .get(0)
                .record();
        assertThat(Deadlines.isLate(r, ZoneId.of("America/Chicago"), RecordRule.federal()))
                .isTrue();
    }
}
