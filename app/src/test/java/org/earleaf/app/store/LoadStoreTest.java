// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.app.store.Tanks.DAY;
import static org.earleaf.app.store.Tanks.T;

import java.util.List;
import java.util.Map;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.farm.Farm;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadRules;
import org.earleaf.load.LoadState;
import org.earleaf.load.LotStock;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class LoadStoreTest extends WithLoads {
    private double free(String lot) {
        return loads.free().stream()
                        .filter(s -> s.lot().equals(lot))
                        .mapToDouble(LotStock::free)
                        .sum()
                / Units.M3_PER_GAL;
    }

    @Test
    void two_lines_of_one_product_draw_the_same_lot_after_one_another_as_planned_and_as_measured() {
        TankLoad one = Tanks.load("a", "job", "highboy", 5, 1, 500);
        LoadLine first = one.lines().get(0);
        LoadLine second = RecordCopy.with(first, "order", 2);
        // 5 fl oz/ac on 32 ha are 3.0888 gal a line: 6.1776 of the 8 gal of lot A, and nothing of lot B.
        loads.add(RecordCopy.with(one, "lines", List.of(first, second)));
        loads.reserve("a", 1, "A", T);
        double line_gal = first.planned().inside() / Units.M3_PER_GAL;
        assertThat(line_gal).isCloseTo(3.0888, within(.0005));
        assertThat(free("A")).isCloseTo(8 - 2 * line_gal, within(1e-9));
        assertThat(free("B")).isCloseTo(6, within(1e-9));
        Kept k = loads.mixing("a", 2, Tanks.LOOKED, "A", T);
        for (int order = 1; order <= 2; order++) {
            for (String person : List.of("A", "B")) {
                LoadLine.Key key =
                        new LoadLine.Key("INVENTED-7", first.planned().inside() * 1.01, person, T, "");
                k = loads.key("a", k.version(), order, key);
            }
        }
        loads.mixed("a", k.version(), DAY, true, "A", T);
        assertThat(free("A")).isCloseTo(8 - 2.02 * line_gal, within(1e-9));
        assertThat(free("B")).isCloseTo(6, within(1e-9));
    }

    @Test
    void lines_that_together_want_more_than_one_lot_holds_go_on_in_the_next() {
        FarmStoreTest.put(
                store, RecordCopy.with(Tanks.farm(), "shelf.stock", List.of(Tanks.lot("A", 4), Tanks.lot("B", 6))));
        TankLoad one = Tanks.load("a", "job", "highboy", 5, 1, 500);
        LoadLine first = one.lines().get(0);
        loads.add(RecordCopy.with(one, "lines", List.of(first, RecordCopy.with(first, "order", 2))));
        loads.reserve("a", 1, "A", T);
        double both_gal = 2 * first.planned().inside() / Units.M3_PER_GAL;
        assertThat(free("A")).isCloseTo(0, within(1e-9));
        assertThat(free("B")).isCloseTo(10 - both_gal, within(1e-9));
    }

    @Test
    void loads_and_labels_come_back_as_they_were_kept_with_every_version() {
        TankLoad load = Tanks.load("a", "job", "highboy", 10, 1, 500);
        assertThat(loads.add(load).tag()).isEqualTo("\"1\"");
        assertThat(loads.get("a").load()).isEqualTo(load);
        assertThat(loads.labels().entries()).containsExactly(Tanks.label());
        Kept two = loads.reserve("a", 1, "A", T);
        assertThat(loads.findVersion("a", 1)).contains(load);
        assertThat(loads.findVersion("a", 2)).contains(two.load());
        assertThat(loads.findVersion("a", 3)).isEmpty();
        assertThat(loads.all()).containsExactly(two);
        assertThat(loads.find("b")).isEmpty();
        assertThatThrownBy(() -> loads.get("b")).hasMessageContaining("load.unknown");
    }

    @Test
    void reserving_takes_the_oldest_lot_first_and_cancelling_gives_it_back() {
        reserved("a", "1", 12);
        // 12 fl oz on 79.07 ac are 7.413 gal: all but .587 gal of the first 8.
        assertThat(free("A")).isCloseTo(.587, within(.001));
        assertThat(free("B")).isCloseTo(6, within(1e-9));
        assertThat(loads.drawn("a")).hasSize(1);
        loads.cancel("a", 2, "rain", "A", T);
        assertThat(free("A")).isCloseTo(8, within(1e-9));
        assertThat(loads.drawn("a")).isEmpty();
    }

    @Test
    void the_second_of_two_loads_that_together_pass_the_season_is_refused() {
        reserved("a", "1", 12);
        planned("b", "2", 9);
        assertThatThrownBy(() -> loads.reserve("b", 1, "B", T))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("limit=SEASON, planned=21 fl oz/ac, allowed=20 fl oz/ac, by=1 fl oz/ac");
        assertThat(loads.get("b").load().state()).isEqualTo(LoadState.PLANNED);
        assertThat(loads.get("b").version()).isEqualTo(1);
        assertThat(loads.drawn("b")).isEmpty();
    }

    @Test
    void stock_that_is_reserved_is_not_there_for_another_load() {
        reserved("a", "1", 10);
        planned("b", "2", 10);
        loads.keep(relaxed());
        loads.reserve("b", 1, "B", T);
        planned("c", "3", 10);
        assertThatThrownBy(() -> loads.reserve("c", 1, "C", T))
                .hasMessageContaining("stock.short at where.stock{product=Demo P}")
                .hasMessageContaining("entered=210.5, unit=fl oz");
        assertThat(loads.drawn("c")).isEmpty();
    }

    /** The label of another year, without limits of a season. */
    private static org.earleaf.label.LabelEntry relaxed() {
        var l = Tanks.label();
        var figures = new java.util.HashMap<>(l.figures());
        figures.put(
                org.earleaf.label.LabelItem.SEASON,
                org.earleaf.label.LabelItem.SEASON.parse("none", false, "corn", org.earleaf.units.Said.text("")));
        return new LabelEntry(
                new LabelEntry.Title(l.product(), l.crop(), false, l.registration(), "2"),
                l.clock(),
                List.of(new org.earleaf.label.ActiveIngredient(
                        "x",
                        1,
                        1,
                        List.of(),
                        org.earleaf.label.LabelLimit.noneStated(),
                        org.earleaf.label.LabelLimit.noneStated())),
                figures,
                new LabelEntry.InTank(java.util.Set.of(), java.util.Set.of()),
                Map.of(),
                l.look());
    }

    @Test
    void a_load_that_the_tank_does_not_hold_is_refused() {
        loads.add(Tanks.load("big", "1", "Highboy", 5, 1, 1100));
        assertThatThrownBy(() -> loads.reserve("big", 1, "A", T)).hasMessageContaining("load.above-tank");
    }

    @Test
    void one_tank_holds_one_load_at_a_time() {
        reserved("a", "1", 5);
        reserved("b", "2", 5);
        loads.mixing("a", 2, Tanks.LOOKED, "A", T);
        assertThatThrownBy(() -> loads.mixing("b", 2, Tanks.LOOKED, "B", T))
                .hasMessageContaining("found.load-in-tank{id=a, state=MIXING}");
    }

    @Test
    void two_people_who_change_one_load_both_see_both_versions() {
        planned("a", "1", 5);
        Kept theirs = loads.edit("a", 1, Tanks.load("a", "1", "highboy", 6, 1, 500), "B. Helper", T);
        TankLoad mine = Tanks.load("a", "1", "highboy", 7, 1, 500);
        StaleLoad stale = catchThrowableOfType(StaleLoad.class, () -> loads.edit("a", 1, mine, "A. Grower", T));
        assertThat(stale.now()).isEqualTo(theirs);
        assertThat(stale.seen().lines().get(0).perHa()).isCloseTo(5 / 128.0 * Units.LHA_PER_GALAC, within(1e-9));
        assertThat(loads.get("a")).isEqualTo(theirs);
        assertThat(loads.edit("a", 2, mine, "A. Grower", T).version()).isEqualTo(3);
    }

    @Test
    void changing_a_reserved_load_gives_its_product_back() {
        reserved("a", "1", 12);
        loads.edit("a", 2, Tanks.load("a", "1", "highboy", 6, 1, 500), "B", T);
        assertThat(free("A")).isCloseTo(8, within(1e-9));
        assertThat(loads.get("a").load().state()).isEqualTo(LoadState.PLANNED);
    }

    @Test
    void what_was_measured_is_drawn_when_the_load_is_mixed() {
        reserved("a", "1", 10);
        Kept k = loads.mixing("a", 2, Tanks.LOOKED, "A", T);
        double more = k.load().lines().get(0).planned().inside() * 1.01;
        k = loads.key("a", k.version(), 1, new org.earleaf.load.LoadLine.Key("INVENTED-7", more, "A", T, ""));
        k = loads.key("a", k.version(), 1, new org.earleaf.load.LoadLine.Key("INVENTED-7", more, "B", T, ""));
        loads.mixed("a", k.version(), DAY, true, "A", T);
        assertThat(loads.drawn("a").get(0).amount()).isCloseTo(more, within(1e-12));
    }

    @Test
    void a_part_handed_over_shares_stock_and_counts_once_on_the_ground() {
        reserved("a", "1", 10);
        Kept m = mixed("a");
        double before = free("A") + free("B");
        List<Kept> two = loads.handOver(
                "a", m.version(), m.load().volume_m3() / 4, new LoadRules.Other("a2", "hired rig"), "A", T);
        assertThat(two.get(1).load().from()).isEqualTo("a");
        assertThat(free("A") + free("B")).isCloseTo(before, within(1e-9));
        assertThat(loads.drawn("a2").get(0).amount() * 3)
                .isCloseTo(loads.drawn("a").get(0).amount(), within(1e-9));
        // 10 fl oz/ac lie on the field, not 20: 10 more are within the season of 20.
        reserved("b", "2", 10);
        assertThat(loads.findings(loads.get("b").load())).noneMatch(org.earleaf.load.LabelFinding::isStop);
    }

    @Test
    void another_recipe_waits_until_the_tank_was_cleaned_out() {
        reserved("a", "1", 5);
        Kept m = mixed("a");
        loads.applied("a", m.version(), "A", T);
        TankLoad uan = Tanks.load("u", "9", "highboy", 5, 1, 500);
        var l = uan.lines().get(0);
        TankLoad other = TankLoad.planned(
                TankLoad.Ticket.of("u", "9", "highboy", DAY),
                new TankLoad.Fill(uan.volume_m3(), 0, uan.rate_m3m2(), false),
                new LabelWork.Driving(uan.driving().droplets(), .5, 4, true),
                uan.grounds(),
                List.of(new LoadLine(
                        1,
                        new LoadLine.Goods("UAN 32", false, false, l.codes(), l.classes()),
                        l.perHa(),
                        l.planned(),
                        Double.NaN,
                        List.of())));
        assertThat(loads.gate(other, DAY, true).rigReady()).isFalse();
        assertThat(loads.gate(Tanks.load("x", "1", "highboy", 5, 1, 5), DAY, true)
                        .rigReady())
                .isTrue();
        assertThatThrownBy(() -> loads.cleaned("highboy", " ", "A", T)).hasMessageContaining("account.missing");
        loads.cleaned("Highboy", "three rinses and the cleaner on the label", "A", T.plusSeconds(60));
        assertThat(loads.gate(other, DAY, true).rigReady()).isTrue();
        assertThat(loads.gate(other, DAY, false).tankKnown()).isFalse();
    }

    @Test
    void a_jar_test_is_asked_for_where_nitrogen_solution_carries_a_labelled_product() {
        TankLoad p = Tanks.load("a", "1", "highboy", 5, 1, 500);
        TankLoad inUan = TankLoad.planned(
                TankLoad.Ticket.of("a", "1", "highboy", DAY),
                new TankLoad.Fill(p.volume_m3(), 0, p.rate_m3m2(), true),
                new LabelWork.Driving(p.driving().droplets(), .5, 4, true),
                p.grounds(),
                p.lines());
        assertThat(loads.gate(p, DAY, true).jarTest()).isTrue();
        assertThat(loads.gate(inUan, DAY, true).jarTest()).isFalse();
        loads.jarTested(inUan, jar(JarResult.Outcome.REMIXES));
        assertThat(loads.gate(inUan, DAY, true).jarTest()).isTrue();
        loads.jarTested(inUan, jar(JarResult.Outcome.FAILED));
        assertThat(loads.gate(inUan, DAY, true).jarTest()).isFalse();
        assertThat(loads.findJar(inUan)).contains(jar(JarResult.Outcome.FAILED));
        assertThat(loads.findJar(Tanks.load("b", "1", "highboy", 6, 1, 500)))
                .as("another strength is another mix")
                .isEmpty();
    }

    private static JarResult jar(JarResult.Outcome outcome) {
        return new JarResult(outcome, T, "A", "well", "seen after 30 minutes");
    }

    @Test
    void a_mix_that_failed_in_the_jar_is_neither_begun_nor_gone_on_with() {
        reserved("a", "1", 5);
        loads.jarTested(loads.get("a").load(), jar(JarResult.Outcome.FAILED));
        assertThatThrownBy(() -> loads.mixing("a", 2, Tanks.LOOKED, "A", T))
                .hasMessageContaining("jar.failed")
                .hasMessageContaining("jar.result{outcome=FAILED, person=A, water=well, note=seen after 30 minutes}");
        loads.jarTested(loads.get("a").load(), jar(JarResult.Outcome.PASSED));
        Kept mixing = loads.mixing("a", 2, Tanks.LOOKED, "A", T);
        loads.jarTested(mixing.load(), jar(JarResult.Outcome.FAILED));
        assertThatThrownBy(() -> loads.key("a", 3, 1, Tanks.key(mixing.load(), "A")))
                .hasMessageContaining("jar.failed");
    }

    @Test
    void a_lot_counted_anew_has_what_was_poured_out_of_it_already() {
        reserved("a", "1", 10);
        mixed("a");
        double poured = 8 - free("A");
        Farm f = Tanks.farm();
        FarmStoreTest.put(store, f);
        assertThat(free("A")).isCloseTo(8 - poured, within(1e-9));
        Farm counted = RecordCopy.with(f, "shelf.stock", List.of(Tanks.lot("A", 5), Tanks.lot("B", 6)));
        FarmStoreTest.put(store, counted);
        assertThat(free("A")).isCloseTo(5, within(1e-9));
    }
}
