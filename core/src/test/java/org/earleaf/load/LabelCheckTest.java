// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Findings.counted;
import static org.earleaf.load.Findings.lbAc;
import static org.earleaf.load.Findings.told;
import static org.earleaf.load.Labels.BOOK;
import static org.earleaf.load.Labels.F1;
import static org.earleaf.load.Labels.F2;
import static org.earleaf.load.Labels.f1;
import static org.earleaf.load.Labels.f2;
import static org.earleaf.load.Labels.flozAc;
import static org.earleaf.load.Labels.made;
import static org.earleaf.load.Labels.reserved;
import static org.earleaf.load.Labels.work;
import static org.earleaf.load.Works.boom;
import static org.earleaf.load.Works.carried;
import static org.earleaf.load.Works.carrier;
import static org.earleaf.load.Works.crop;
import static org.earleaf.load.Works.droplets;
import static org.earleaf.load.Works.harvest;
import static org.earleaf.load.Works.stage;
import static org.earleaf.load.Works.uncertified;
import static org.earleaf.load.Works.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.DropletClass;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Figures of the invented labels are worked by hand: 128 fl oz a gallon, 16 oz a pound, rate times content. */
class LabelCheckTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 20);
    private static final LocalDate JULY = LocalDate.of(2026, 7, 3);

    private static List<LabelFinding> check(LabelWork work, GroundUse... ground) {
        return LabelCheck.of(BOOK, work, List.of(ground));
    }

    private static LabelFinding of(List<LabelFinding> findings, String product, Enum<?> limit) {
        return findings.stream()
                .filter(f -> f.product().equals(product) && f.what() == limit)
                .findFirst()
                .orElseThrow(() -> new AssertionError(product + ", " + limit + " not in " + findings));
    }

    private static LabelFinding of(List<LabelFinding> findings, LabelItem item) {
        return of(findings, "Demo F1", item);
    }

    @Test
    void plain_fertiliser_and_helpers_carry_no_label_block() {
        LabelWork.Part uan = new LabelWork.Part("UAN 32", 100, false, false, Set.of());
        assertThat(check(work(uan))).isEmpty();
        assertThat(LabelCheck.allows(List.of())).isTrue();
        List<LabelFinding> mixed = check(work(uan, f1(10)));
        assertThat(mixed).noneMatch(f -> f.product().equals("UAN 32"));
    }

    @Test
    void ten_ounces_of_a_mix_of_two_put_on_the_share_of_each() {
        // CV-4.1 and CV-4.4
        ActiveIngredient strobin = Labels.f1().get(0);
        ActiveIngredient conazole = Labels.f1().get(1);
        assertThat(Units.lbAc(strobin.of_kgHa(flozAc(10)))).isCloseTo(0.09375, within(1e-7));
        assertThat(Units.lbAc(conazole.of_kgHa(flozAc(10)))).isCloseTo(0.0703125, within(1e-7));
        ActiveIngredient pyrid = Labels.I2.actives().get(0);
        assertThat(Units.lbAc(pyrid.of_kgHa(2 * Units.KGHA_PER_LBAC / 16))).isCloseTo(0.0625, within(1e-9));
    }

    @Test
    void a_salt_counts_by_its_share_of_acid() {
        ActiveIngredient salt =
                new ActiveIngredient("demosate", .5, .75, List.of(), LabelLimit.noneStated(), LabelLimit.noneStated());
        assertThat(salt.of_kgHa(4)).isEqualTo(1.5);
    }

    @Test
    void another_product_with_the_same_active_counts_to_its_season() {
        // CV-4.2: 0.0703125 and 4 fl oz of 3.6 lb/gal, 0.1125, are 0.18281 of 0.20.
        List<LabelFinding> both = check(work(f2(4)), made("p1", JULY, "Demo F1", flozAc(10)));
        LabelFinding season = of(both, "democonazole", LabelFinding.Limit.ACTIVE_SEASON);
        assertThat(season.verdict()).isEqualTo(Verdict.WITHIN);
        assertThat(lbAc(season.planned())).isCloseTo(.1828, within(5e-5));
        assertThat(season.sentence().code()).isEqualTo("label.finding");
        assertThat(counted(season.said(), 1, 0).code()).isEqualTo("label.compared");
        assertThat(lbAc(season.allowed())).isCloseTo(.2, within(1e-9));
    }

    @Test
    void the_third_pass_is_refused_with_limit_figure_allowed_and_by_how_much() {
        // CV-4.3: 2 passes 0.1875 within 0.26; 3 passes 0.28125.
        LabelFinding second = of(
                check(work(f1(10)), made("p1", JUNE, "Demo F1", flozAc(10))),
                "demostrobin",
                LabelFinding.Limit.ACTIVE_SEASON);
        assertThat(second.verdict()).isEqualTo(Verdict.WITHIN);
        List<LabelFinding> third = check(
                work(f1(10)), made("p1", JUNE, "Demo F1", flozAc(10)), reserved("p2", JULY, "Demo F1", flozAc(10), 32));
        assertThat(LabelCheck.allows(third)).isFalse();
        // The other active, 0.2109 of 0.20, is too much as well.
        assertThat(third.get(0).product()).isEqualTo("democonazole");
        LabelFinding strobin = of(third, "demostrobin", LabelFinding.Limit.ACTIVE_SEASON);
        assertThat(counted(strobin.said(), 1, 1).code()).isEqualTo("label.too-much");
        assertThat(lbAc(strobin.planned())).isCloseTo(.28125, within(1e-6));
        assertThat(lbAc(strobin.allowed())).isCloseTo(.26, within(1e-9));
        assertThat(lbAc(strobin.by())).isCloseTo(.02125, within(1e-6));
        assertThat(of(third, LabelItem.SEASON).verdict()).isEqualTo(Verdict.WITHIN);
    }

    @Test
    void the_same_finding_of_two_labels_stands_once() {
        List<LabelFinding> both = check(work(f2(2)), made("p1", JULY, "Demo F1", flozAc(10)));
        assertThat(both.stream().filter(f -> f.product().equals("democonazole")))
                .hasSize(1);
    }

    @Test
    void a_season_of_product_over_made_and_reserved_is_refused_in_the_units_of_the_label() {
        List<LabelFinding> found = check(
                work(f1(12)), made("p1", JUNE, "Demo F1", flozAc(12)), reserved("p2", JULY, "Demo F1", flozAc(12), 32));
        LabelFinding season = of(found, LabelItem.SEASON);
        assertThat(season.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(counted(season.said(), 1, 1))
                .isEqualTo(Said.of(
                        "label.too-much",
                        "limit",
                        LabelItem.SEASON,
                        "planned",
                        Said.text("36 fl oz/ac"),
                        "allowed",
                        Said.text("32 fl oz/ac"),
                        "by",
                        Said.text("4 fl oz/ac")));
        assertThat(season.planned()).isEqualTo(Said.text("36 fl oz/ac"));
        assertThat(season.allowed()).isEqualTo(Said.text("32 fl oz/ac"));
        assertThat(of(found, LabelItem.SINGLE).said().code()).isEqualTo("label.compared");
        GroundUse another = made("p3", JULY, "Demo F2", flozAc(1));
        counted(of(check(work(f1(12)), another), LabelItem.SEASON).said(), 0, 0);
        assertThat(of(found, LabelItem.PASSES).planned()).isEqualTo(Said.text("3"));
        assertThat(of(found, LabelItem.PASSES).verdict()).isEqualTo(Verdict.WITHIN);
    }

    @Test
    void ten_is_not_more_than_ten() {
        assertThat(of(check(work(f1(12))), LabelItem.SINGLE).verdict()).isEqualTo(Verdict.WITHIN);
        assertThat(of(check(work(f1(12 * (1 + 1e-10)))), LabelItem.SINGLE).verdict())
                .isEqualTo(Verdict.WITHIN);
        LabelFinding over = of(check(work(f1(12.1))), LabelItem.SINGLE);
        assertThat(over.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(over.by()).isEqualTo(Said.text("0.1 fl oz/ac"));
        assertThat(of(check(work(f1(8 * (1 - 1e-10)))), LabelItem.LEAST).verdict())
                .isEqualTo(Verdict.WITHIN);
        LabelFinding under = of(check(work(f1(7))), LabelItem.LEAST);
        assertThat(under.said())
                .isEqualTo(Said.of(
                        "label.too-little",
                        "limit",
                        LabelItem.LEAST,
                        "planned",
                        Said.text("7 fl oz/ac"),
                        "allowed",
                        Said.text("8 fl oz/ac"),
                        "by",
                        Said.text("1 fl oz/ac")));
    }

    @Test
    void every_limit_of_place_time_and_machine_is_held() {
        record Case(LabelItem item, LabelWork work, String planned, String by) {}
        LabelWork good = Labels.work(f1(10));
        assertThat(LabelCheck.of(BOOK, good, List.of())).noneMatch(LabelFinding::isStop);
        List<Case> cases = List.of(
                new Case(LabelItem.INTERVAL, Labels.work(LocalDate.of(2026, 7, 13), f1(10)), "10 days", "4 days"),
                new Case(LabelItem.HARVEST, Labels.work(LocalDate.of(2026, 9, 5), f1(10)), "20 days", "10 days"),
                new Case(LabelItem.FIRST_STAGE, stage(good, 14), "V14", ""),
                new Case(LabelItem.LAST_STAGE, stage(good, 35), "R5", ""),
                new Case(LabelItem.CARRIER, carrier(good, 8), "8 gal/ac", "2 gal/ac"),
                new Case(LabelItem.FINEST, droplets(good, Optional.of(DropletClass.F)), "F", ""),
                new Case(LabelItem.BOOM, boom(good, 30 * .0254), "30 in", "6 in"),
                new Case(LabelItem.WATER, water(good, 30 * .3048), "30 ft", "20 ft"));
        for (Case c : cases) {
            List<LabelFinding> found = check(c.work(), made("p1", JULY, "Demo F1", flozAc(8)));
            LabelFinding bad = of(found, c.item());
            assertThat(bad.verdict()).as(c.item().name()).isEqualTo(Verdict.OUTSIDE);
            assertThat(told(bad.planned())).isEqualTo(c.planned());
            assertThat(told(bad.by())).isEqualTo(c.by());
            assertThat(bad.allowed()).isEqualTo(Said.text(F1.figure(c.item()).entered()));
            assertThat(found.stream().filter(LabelFinding::isStop)).hasSize(1);
            assertThat(found.get(0)).isEqualTo(bad);
        }
    }

    @Test
    void the_nearest_pass_before_or_after_counts_to_the_interval() {
        LabelFinding after = of(
                check(
                        work(f1(8)),
                        reserved("p9", LocalDate.of(2026, 7, 25), "Demo F1", flozAc(8), 32),
                        made("p1", JUNE, "Demo F1", flozAc(8))),
                LabelItem.INTERVAL);
        assertThat(after.planned()).isEqualTo(Said.of("label.days", "n", 5.0));
        assertThat(after.verdict()).isEqualTo(Verdict.OUTSIDE);
        // Without another pass there is no interval to keep.
        assertThat(check(work(f1(8)), made("p1", JULY, "Demo F2", flozAc(2))))
                .noneMatch(f -> f.what() == LabelItem.INTERVAL && f.product().equals("Demo F1"));
    }

    @Test
    void what_is_not_known_of_the_load_stops_it_and_says_what() {
        LabelWork good = Labels.work(f1(10));
        for (LabelWork unknown : List.of(
                stage(good, Double.NaN),
                droplets(good, Optional.empty()),
                water(good, Double.NaN),
                boom(good, Double.NaN),
                harvest(good, Optional.empty()))) {
            List<LabelFinding> found = LabelCheck.of(BOOK, unknown, List.of());
            assertThat(found.get(0).verdict()).isEqualTo(Verdict.NOT_KNOWN);
            assertThat(found.get(0).said().code()).isEqualTo("label.item-not-known");
            assertThat(found.get(0).planned()).isEqualTo(Said.of("amount.unknown"));
            assertThat(LabelCheck.allows(found)).isFalse();
        }
    }

    @Test
    void a_pass_of_unknown_amount_leaves_no_sum_to_judge_by() {
        List<LabelFinding> found = check(work(f1(10)), made("p1", JUNE, "Demo F1", Double.NaN));
        assertThat(of(found, LabelItem.SEASON).verdict()).isEqualTo(Verdict.NOT_KNOWN);
        LabelFinding active = of(found, "demostrobin", LabelFinding.Limit.ACTIVE_SEASON);
        assertThat(active.verdict()).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(counted(active.said(), 1, 0).code()).isEqualTo("label.active-not-known");
        assertThat(lbAc(active.allowed())).isCloseTo(.26, within(1e-9));
    }

    @Test
    void a_product_without_an_entry_for_the_crop_is_not_planned() {
        LabelWork soybean = crop(Labels.work(f1(10)), "soybean");
        List<LabelFinding> found = LabelCheck.of(BOOK, soybean, List.of());
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.NOT_ENTERED);
        assertThat(found.get(0).said()).isEqualTo(Said.of("label.none", "crop", "soybean"));
        LabelEntry waiting = new LabelEntry(
                new LabelEntry.Title(F1.product(), "soybean", false, "", ""),
                F1.clock(),
                F1.actives(),
                F1.figures(),
                LabelEntry.InTank.NOTHING,
                Map.of(),
                LabelEntry.Look.first("A. Grower", Labels.NOW));
        List<LabelFinding> waits = LabelCheck.of(new LabelBook(List.of(F1, waiting)), soybean, List.of());
        assertThat(waits.get(0).said()).isEqualTo(Said.of("label.waiting"));
        assertThat(waits.get(0).what()).isEqualTo(LabelFinding.Limit.LABEL);
    }

    @Test
    void every_needed_item_that_is_not_entered_stops_and_no_other() {
        for (LabelItem item : LabelItem.values()) {
            LabelBook book = new LabelBook(List.of(Labels.with(F1, item, "")));
            List<LabelFinding> found = LabelCheck.of(book, Labels.work(f1(10)), List.of());
            assertThat(LabelCheck.allows(found)).as(item.name()).isEqualTo(!item.isNeeded());
            if (item.isNeeded()) {
                assertThat(found.get(0).verdict()).isEqualTo(Verdict.NOT_ENTERED);
                assertThat(found.get(0).said()).isEqualTo(Said.of("label.item-not-entered", "item", item));
            }
        }
    }

    @Test
    void limits_that_labels_state_none_of_stop_nothing() {
        LabelEntry open = Labels.entry("Demo F1", "corn", false, List.of(), Map.of());
        List<LabelFinding> found = LabelCheck.of(
                new LabelBook(List.of(open)), stage(water(Labels.work(f1(500)), Double.NaN), Double.NaN), List.of());
        assertThat(LabelCheck.allows(found)).isTrue();
    }

    @Test
    void limits_of_the_air_are_said_for_the_start_and_judged_there() {
        List<LabelFinding> found = check(work(f1(10)));
        assertThat(of(found, LabelItem.WIND_MOST).verdict()).isEqualTo(Verdict.BEFORE_START);
        assertThat(of(found, LabelItem.WIND_MOST).said())
                .isEqualTo(Said.of("label.before-start", "item", LabelItem.WIND_MOST, "allowed", Said.text("10 mph")));
        assertThat(of(found, LabelItem.REENTRY).said())
                .isEqualTo(Said.of("label.keep-out", "allowed", Said.text("12 h")));
        assertThat(of(found, LabelItem.REENTRY).isStop()).isFalse();
    }

    @Test
    void nitrogen_as_carrier_and_the_air_need_a_yes_of_the_label() {
        LabelWork good = Labels.work(f1(10));
        LabelWork inUan = carried(good, true, false);
        LabelWork byAir = carried(good, false, true);
        assertThat(LabelCheck.allows(check(inUan))).isFalse();
        assertThat(LabelCheck.allows(check(byAir))).isFalse();
        LabelBook no = new LabelBook(
                List.of(Labels.with(Labels.with(F1, LabelItem.NITROGEN_CARRIER, "no"), LabelItem.BY_AIR, "no")));
        assertThat(LabelCheck.allows(LabelCheck.of(no, good, List.of()))).isTrue();
        assertThat(LabelCheck.of(no, inUan, List.of()).get(0).said()).isEqualTo(Said.of("label.no-nitrogen-carrier"));
        assertThat(LabelCheck.of(no, byAir, List.of()).get(0).said()).isEqualTo(Said.of("label.no-air"));
        LabelBook yes = new LabelBook(
                List.of(Labels.with(Labels.with(F1, LabelItem.NITROGEN_CARRIER, "yes"), LabelItem.BY_AIR, "yes")));
        assertThat(LabelCheck.allows(LabelCheck.of(yes, inUan, List.of()))).isTrue();
        // The least carrier is that of ground rigs.
        assertThat(LabelCheck.allows(LabelCheck.of(yes, carrier(byAir, 2), List.of())))
                .isTrue();
    }

    @Test
    void a_restricted_product_asks_for_a_certified_applicator() {
        LabelBook restricted = new LabelBook(List.of(Labels.with(F1, LabelItem.RESTRICTED, "yes")));
        assertThat(LabelCheck.allows(LabelCheck.of(restricted, Labels.work(f1(10)), List.of())))
                .isTrue();
        LabelFinding stop = LabelCheck.of(restricted, uncertified(Labels.work(f1(10))), List.of())
                .get(0);
        assertThat(stop.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(stop.said()).isEqualTo(Said.of("label.restricted-use"));
        assertThat(LabelCheck.allows(check(uncertified(Labels.work(f1(10)))))).isTrue();
    }

    @Test
    void the_remaining_items_compare_the_figure_they_name() {
        LabelWork good = Labels.work(f1(10));
        record Case(LabelItem item, String within, String outside) {}
        for (Case c : List.of(
                new Case(LabelItem.HEIGHT, "8 ft", "7 ft"),
                new Case(LabelItem.COARSEST, "C", "F"),
                new Case(LabelItem.SPEED, "15 mph", "5 mph"),
                new Case(LabelItem.SENSITIVE, "100 ft", "200 ft"),
                new Case(LabelItem.GRAZING, "60 days", "70 days"),
                new Case(LabelItem.GROUP_RUN, "1", "0"))) {
            LabelBook in = new LabelBook(List.of(Labels.with(F1, c.item(), c.within())));
            LabelBook out = new LabelBook(List.of(Labels.with(F1, c.item(), c.outside())));
            assertThat(LabelCheck.allows(LabelCheck.of(in, good, List.of())))
                    .as(c.item().name())
                    .isTrue();
            LabelFinding stop = LabelCheck.of(out, good, List.of()).get(0);
            assertThat(stop.what()).isEqualTo(c.item());
            assertThat(stop.verdict()).isEqualTo(Verdict.OUTSIDE);
        }
    }

    @Test
    void a_further_pass_never_makes_a_refused_load_allowed_and_a_limit_taken_away_never_refuses() {
        SplittableRandom random = new SplittableRandom(7);
        for (int k = 0; k < 400; k++) {
            List<GroundUse> ground = new ArrayList<>();
            for (int p = random.nextInt(4); p > 0; p--) {
                ground.add(use(random, p));
            }
            LabelWork work = random.nextBoolean()
                    ? Labels.work(f1(12 * random.nextDouble()))
                    : Labels.work(f2(5 * random.nextDouble()));
            boolean before = LabelCheck.allows(LabelCheck.of(BOOK, work, ground));
            ground.add(use(random, 9));
            boolean after = LabelCheck.allows(LabelCheck.of(BOOK, work, ground));
            assertThat(after && !before).isFalse();
            LabelBook looser = new LabelBook(List.of(Labels.with(F1, LabelItem.SEASON, "none"), F2, Labels.I2));
            if (before) {
                assertThat(LabelCheck.allows(LabelCheck.of(looser, work, ground.subList(0, ground.size() - 1))))
                        .isTrue();
            }
        }
    }

    private static GroundUse use(SplittableRandom random, int id) {
        String product = random.nextBoolean() ? "Demo F1" : "Demo F2";
        LocalDate date = LocalDate.of(2026, 5, 1).plusDays(random.nextInt(120));
        return reserved("p" + id, date, product, flozAc(random.nextDouble() * 10), 32);
    }
}
