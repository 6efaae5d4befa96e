// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.assertj.core.groups.Tuple;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class LabelEntryTest {
    private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
    private static final Instant LATER = Instant.parse("2026-06-01T13:00:00Z");

    private static LabelEntry entry(String person, Map<LabelItem, String> said) {
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        said.forEach((item, text) -> figures.put(item, item.parse(text, false, "corn", Said.text("Demo F1 on corn"))));
        return new LabelEntry(
                new LabelEntry.Title("Demo F1", "corn", false, "INVENTED-1", "2026"),
                LabelEntry.Clock.CROP,
                List.of(),
                figures,
                new LabelEntry.InTank(Set.of("b", "a"), Set.of()),
                Map.of(),
                LabelEntry.Look.first(person, "A. Grower".equals(person) ? NOON : LATER));
    }

    @Test
    void an_entry_counts_only_after_a_second_look() {
        LabelEntry first = entry("A. Grower", Map.of(LabelItem.SINGLE, "12 fl oz/ac"));
        LabelBook book = new LabelBook(List.of(first));
        assertThat(first.look().isDone()).isFalse();
        assertThat(book.find("demo f1 ", "Corn")).isEmpty();
        assertThat(book.findWaiting("Demo F1", "corn")).contains(first);
        LabelEntry seen = first.checkedBy("B. Helper", LATER);
        assertThat(seen.look()).isEqualTo(new LabelEntry.Look("A. Grower", NOON, "B. Helper", LATER));
        assertThat(seen.look().isSingle()).isFalse();
        LabelBook after = new LabelBook(List.of(first, seen));
        assertThat(after.find("Demo F1", "corn")).contains(seen);
        assertThat(after.findWaiting("Demo F1", "corn")).isEmpty();
        assertThat(after.find("Demo F1", "soybean")).isEmpty();
        assertThat(after.find("Demo F2", "corn")).isEmpty();
        assertThat(book.findWaiting("Demo F2", "corn")).isEmpty();
        assertThat(book.findWaiting("Demo F1", "soybean")).isEmpty();
    }

    @Test
    void the_older_entry_counts_until_the_newer_was_looked_at_again() {
        LabelEntry old =
                entry("A. Grower", Map.of(LabelItem.SINGLE, "12 fl oz/ac")).checkedBy("B. Helper", NOON);
        LabelEntry newer = entry("A. Grower", Map.of(LabelItem.SINGLE, "10 fl oz/ac"));
        LabelBook book = new LabelBook(List.of(old, newer));
        assertThat(book.find("Demo F1", "corn")).contains(old);
        assertThat(book.findWaiting("Demo F1", "corn")).contains(newer);
        LabelEntry seen = newer.checkedBy("B. Helper", LATER);
        assertThat(new LabelBook(List.of(old, newer, seen)).find("Demo F1", "corn"))
                .contains(seen);
    }

    @Test
    void what_is_in_a_product_is_known_from_any_crop_that_was_looked_at_twice() {
        LabelEntry first = entry("A. Grower", Map.of());
        LabelEntry with = new LabelEntry(
                new LabelEntry.Title("Demo F1", "wheat", false, "", ""),
                LabelEntry.Clock.CROP,
                List.of(new ActiveIngredient(
                        "x", 1, 1, List.of("FRAC 3"), LabelLimit.noneStated(), LabelLimit.noneStated())),
                Map.of(),
                LabelEntry.InTank.NOTHING,
                Map.of(),
                LabelEntry.Look.first("A. Grower", NOON));
        assertThat(new LabelBook(List.of(first, with)).activesOf("Demo F1")).isEmpty();
        assertThat(new LabelBook(List.of(with.checkedBy("B. Helper", LATER))).activesOf(" demo F1"))
                .hasSize(1);
        assertThat(LabelBook.EMPTY.activesOf("Demo F1")).isEmpty();
    }

    @Test
    void the_one_who_entered_it_cannot_be_the_other_person() {
        LabelEntry first = entry("A. Grower", Map.of());
        assertThatThrownBy(() -> first.checkedBy(" a. grower", LATER))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("label.second-look-same");
        assertThatThrownBy(() -> first.checkedBy(" ", LATER)).hasMessageContaining("label.second-look-unnamed");
    }

    @Test
    void a_sole_user_enters_it_again_and_it_is_kept_as_single() {
        LabelEntry first = entry("A. Grower", Map.of(LabelItem.SINGLE, "12 fl oz/ac", LabelItem.REENTRY, "12 h"));
        // 12 fl oz/ac is 0.75 pt/ac, and half a day 12 h: unit definitions.
        LabelEntry again = entry("a. grower ", Map.of(LabelItem.SINGLE, "0.75 pt/ac", LabelItem.REENTRY, "12"));
        LabelEntry seen = first.enteredAgain(again);
        assertThat(seen.look().isSingle()).isTrue();
        assertThat(seen.look().checked()).isEqualTo(LATER);
        assertThat(seen.figures()).isEqualTo(first.figures());
    }

    @Test
    void entries_that_differ_are_refused_with_every_difference() {
        LabelEntry first = entry("A. Grower", Map.of(LabelItem.SINGLE, "12 fl oz/ac", LabelItem.HARVEST, "none"));
        LabelEntry again = entry("A. Grower", Map.of(LabelItem.SINGLE, "10 fl oz/ac"));
        assertThatThrownBy(() -> first.enteredAgain(again)).satisfies(e -> {
            EarleafException wrong = (EarleafException) e;
            assertThat(wrong.problems()).hasSize(2);
            assertThat(wrong.problems().get(0).place()).isEqualTo(at(LabelItem.SINGLE));
            assertThat(wrong.problems().get(1))
                    .isEqualTo(Problem.of(
                            "label.differs",
                            at(LabelItem.HARVEST),
                            Said.of("found.nothing"),
                            "first",
                            Said.text("none")));
        });
        LabelEntry other = new LabelEntry(
                new LabelEntry.Title("Demo F1", "corn", true, "X", "Y"),
                LabelEntry.Clock.CALENDAR_YEAR,
                List.of(new ActiveIngredient("x", 1, 1, List.of(), LabelLimit.noneStated(), LabelLimit.noneStated())),
                first.figures(),
                new LabelEntry.InTank(Set.of(), Set.of("AMS")),
                Map.of(),
                first.look());
        assertThatThrownBy(() -> first.enteredAgain(other)).satisfies(e -> assertThat(((EarleafException) e)
                        .problems().stream().map(p -> p.place().values().get("item")))
                .containsExactly(
                        LabelEntry.Part.REGISTRATION,
                        LabelEntry.Part.VERSION,
                        LabelEntry.Part.SEASON_CLOCK,
                        LabelEntry.Part.ACTIVES,
                        LabelEntry.Part.NEVER_WITH,
                        LabelEntry.Part.AFTER,
                        LabelEntry.Part.FORM));
    }

    @Test
    void needed_items_that_were_not_looked_up_are_named() {
        assertThat(entry("A", Map.of()).missing()).hasSize(18).contains(LabelItem.SINGLE, LabelItem.WATER);
        assertThat(entry("A", Map.of(LabelItem.SINGLE, "none")).missing())
                .hasSize(17)
                .doesNotContain(LabelItem.SINGLE);
        assertThat(entry("A", Map.of()).figure(LabelItem.SINGLE)).isEqualTo(LabelFigure.NOT_ENTERED);
    }

    @Test
    void items_are_read_as_labels_print_them() {
        assertThat(read(LabelItem.SINGLE, "128 fl oz/ac").limit().value()).isCloseTo(Units.LHA_PER_GALAC, within(1e-9));
        assertThat(LabelItem.SINGLE
                        .parse("16 oz/ac", true, "corn", Said.text("x"))
                        .limit()
                        .value())
                .isCloseTo(Units.KGHA_PER_LBAC, within(1e-12));
        assertThat(read(LabelItem.CARRIER, "1 gal/ac").limit().value()).isCloseTo(Units.LHA_PER_GALAC, within(1e-9));
        assertThat(read(LabelItem.PASSES, "2").limit().value()).isEqualTo(2);
        for (String days : List.of("14", "14 d", "14 day", "14 days", " 14 DAYS ")) {
            assertThat(read(LabelItem.INTERVAL, days).limit().value()).isEqualTo(14);
        }
        for (String hours : List.of("12", "12 h", "12 hours", "12 hour")) {
            assertThat(read(LabelItem.REENTRY, hours).limit().value()).isEqualTo(12);
        }
        assertThat(read(LabelItem.FIRST_STAGE, "vt").limit().value()).isEqualTo(30);
        assertThat(read(LabelItem.FINEST, "medium").limit().value()).isEqualTo(DropletClass.M.ordinal());
        assertThat(read(LabelItem.WIND_MOST, "10 mph").limit().value()).isCloseTo(4.4704, within(1e-9));
        assertThat(read(LabelItem.AIR_MOST, "86 °F").limit().value()).isCloseTo(30, within(1e-9));
        assertThat(read(LabelItem.WATER, "50 ft").limit().value()).isCloseTo(15.24, within(1e-9));
        assertThat(read(LabelItem.WATER, "0 ft").limit().value()).isZero();
        assertThat(read(LabelItem.RESTRICTED, "Yes").limit().value()).isEqualTo(1);
        assertThat(read(LabelItem.RESTRICTED, "no").limit().value()).isZero();
        assertThat(read(LabelItem.HARVEST, "None").limit()).isEqualTo(LabelLimit.noneStated());
        assertThat(read(LabelItem.HARVEST, "None").isStated()).isFalse();
        assertThat(read(LabelItem.HARVEST, " ")).isEqualTo(LabelFigure.NOT_ENTERED);
        assertThat(LabelItem.findByWord(" Wind_Most")).contains(LabelItem.WIND_MOST);
        assertThat(LabelItem.findByWord("wind")).isEmpty();
    }

    private static LabelFigure read(LabelItem item, String text) {
        return item.parse(text, false, "corn", Said.text("Demo F1 on corn"));
    }

    @Test
    void what_no_label_says_is_refused_with_an_example() {
        record Case(LabelItem item, String text, String expected) {}
        for (Case c : List.of(
                new Case(LabelItem.SINGLE, "12", "quantity.unreadable"),
                new Case(LabelItem.SINGLE, "12 lb/ac", "unit.unknown"),
                new Case(LabelItem.WATER, "-5 ft", "label.below-zero"),
                new Case(LabelItem.PASSES, "two", "label.unreadable"),
                new Case(LabelItem.PASSES, "2 days", "label.unreadable"),
                new Case(LabelItem.INTERVAL, "14 h", "label.unreadable"),
                new Case(LabelItem.REENTRY, "x", "label.unreadable"),
                new Case(LabelItem.FIRST_STAGE, "R9", "label.unreadable"),
                new Case(LabelItem.FINEST, "big", "label.unreadable"),
                new Case(LabelItem.RESTRICTED, "none", "label.not-yes-or-no"),
                new Case(LabelItem.RESTRICTED, "maybe", "label.not-yes-or-no"))) {
            assertThatThrownBy(() -> read(c.item(), c.text()))
                    .isInstanceOf(EarleafException.class)
                    .hasMessageContaining("item=" + c.item().name())
                    .hasMessageContaining(c.expected());
        }
        assertThat(LabelItem.SINGLE.example(true, "corn").code()).isEqualTo("label.example.dry");
        assertThat(LabelItem.FIRST_STAGE.example(true, "corn").values())
                .containsEntry("stages", CropStages.said("corn"));
    }

    @Test
    void another_value_is_said_in_the_unit_of_the_label() {
        assertThat(read(LabelItem.SINGLE, "12 fl oz/ac").like(Units.LHA_PER_GALAC, LabelItem.SINGLE, false, "corn"))
                .isEqualTo(Said.text("128 fl oz/ac"));
        LabelFigure dry = LabelItem.SINGLE.parse("2 oz/ac", true, "corn", Said.text("x"));
        assertThat(dry.like(Units.KGHA_PER_LBAC, LabelItem.SINGLE, true, "corn"))
                .isEqualTo(Said.text("16 oz/ac"));
        assertThat(dry.apart(Units.KGHA_PER_LBAC, LabelItem.SINGLE, true, "corn"))
                .isEqualTo(Said.text("14 oz/ac"));
        assertThat(read(LabelItem.CARRIER, "100 L/ha").like(90, LabelItem.CARRIER, false, "corn"))
                .isEqualTo(Said.text("90 L/ha"));
        assertThat(read(LabelItem.WATER, "50 ft").like(3.048, LabelItem.WATER, false, "corn"))
                .isEqualTo(Said.text("10 ft"));
        assertThat(read(LabelItem.SPEED, "15 km/h").like(2.5, LabelItem.SPEED, false, "corn"))
                .isEqualTo(Said.text("9 km/h"));
        assertThat(read(LabelItem.AIR_MOST, "86 °F").like(20, LabelItem.AIR_MOST, false, "corn"))
                .isEqualTo(Said.text("68 °F"));
        assertThat(read(LabelItem.AIR_MOST, "86 °F").apart(35, LabelItem.AIR_MOST, false, "corn"))
                .isEqualTo(Said.of("label.degrees", "n", 9.0));
        assertThat(read(LabelItem.AIR_MOST, "30 C").apart(35, LabelItem.AIR_MOST, false, "corn"))
                .isEqualTo(Said.of("label.degrees", "n", 5.0));
        assertThat(read(LabelItem.REENTRY, "12").like(24, LabelItem.REENTRY, false, "corn"))
                .isEqualTo(Said.of("label.hours", "n", 24.0));
        assertThat(read(LabelItem.RESTRICTED, "yes").like(1, LabelItem.RESTRICTED, false, "corn"))
                .isEqualTo(Said.of("label.yes"));
        assertThat(read(LabelItem.RESTRICTED, "yes").like(0, LabelItem.RESTRICTED, false, "corn"))
                .isEqualTo(Said.of("label.no"));
        assertThat(read(LabelItem.FINEST, "M").like(4, LabelItem.FINEST, false, "corn"))
                .isEqualTo(Said.text("C"));
    }

    @Test
    void stages_of_five_crops_and_more_stand_in_order() {
        assertThat(CropStages.crops()).contains("corn", "soybean", "wheat", "sorghum", "alfalfa", "oats");
        assertThat(CropStages.find("corn", " v8")).contains(8.0);
        assertThat(CropStages.find("corn", "VE")).contains(0.0);
        assertThat(CropStages.find("corn", "R6")).contains(36.0);
        assertThat(CropStages.find("corn", "R7")).isEmpty();
        assertThat(CropStages.find("corn", "V0")).isEmpty();
        assertThat(CropStages.find("corn", "VT1")).isEmpty();
        assertThat(CropStages.find("corn", "V")).isEmpty();
        assertThat(CropStages.find("corn", "8")).isEmpty();
        assertThat(CropStages.find("Soybean", "R7")).contains(37.0);
        assertThat(CropStages.find("soybean", "VC")).contains(0.5);
        assertThat(CropStages.find("wheat", "Z39")).contains(39.0);
        assertThat(CropStages.find("rice", "V1")).isEmpty();
        assertThat(CropStages.word("corn", 8.4)).isEqualTo("V8");
        assertThat(CropStages.word("corn", 30)).isEqualTo("VT");
        assertThat(CropStages.word("corn", 1)).isEqualTo("V1");
        assertThat(CropStages.word("wheat", 0)).isEqualTo("Z0");
        assertThat(CropStages.word("corn", 31)).isEqualTo("R1");
        assertThat(CropStages.word("corn", 0)).isEqualTo("VE");
        assertThat(CropStages.word("rice", 3)).isEmpty();
        assertThat(CropStages.said("sorghum")).containsExactly(Said.of("stage.range", "first", "S0", "last", "S9"));
    }

    @Test
    void a_least_above_its_most_is_told_with_both() {
        LabelEntry good = entry("A. Grower", Map.of(LabelItem.LEAST, "12 fl oz/ac", LabelItem.SINGLE, "12 fl oz/ac"));
        assertThat(good.turned()).isEmpty();
        LabelEntry bad = entry(
                "A. Grower",
                Map.of(
                        LabelItem.LEAST, "12 fl oz/ac",
                        LabelItem.SINGLE, "10 fl oz/ac",
                        LabelItem.FIRST_STAGE, "R4",
                        LabelItem.LAST_STAGE, "VT",
                        LabelItem.FINEST, "VC",
                        LabelItem.COARSEST, "M",
                        LabelItem.WIND_LEAST, "12 mph",
                        LabelItem.WIND_MOST, "10 mph"));
        assertThat(bad.turned())
                .allMatch(p -> p.code().equals("label.turned"))
                .extracting(Problem::place, Problem::seen)
                .containsExactly(
                        below(LabelItem.SINGLE, "10 fl oz/ac", LabelItem.LEAST, "12 fl oz/ac"),
                        below(LabelItem.LAST_STAGE, "VT", LabelItem.FIRST_STAGE, "R4"),
                        below(LabelItem.COARSEST, "M", LabelItem.FINEST, "VC"),
                        below(LabelItem.WIND_MOST, "10 mph", LabelItem.WIND_LEAST, "12 mph"));
    }

    private static Tuple below(LabelItem most, String high, LabelItem least, String low) {
        return tuple(at(most), Said.of("found.below-least", "most", high, "item", least, "least", low));
    }

    private static Said at(Enum<?> item) {
        Said label = Said.of("where.label", "product", "Demo F1", "crop", "corn");
        return Said.of("where.label-item", "label", label, "item", item);
    }

    @Test
    void advice_sees_of_an_entry_what_was_looked_at_twice_and_nothing_else() {
        LabelEntry first = RecordCopy.with(
                entry(
                        "A. Grower",
                        Map.of(
                                LabelItem.WIND_MOST, "10 mph",
                                LabelItem.INVERSION, "yes",
                                LabelItem.BY_AIR, "no",
                                LabelItem.HARVEST, "none",
                                LabelItem.LAST_STAGE, "R4")),
                "actives",
                List.of(
                        new ActiveIngredient(
                                "x", .1, 1, List.of("FRAC 11"), LabelLimit.noneStated(), LabelLimit.noneStated()),
                        new ActiveIngredient(
                                "y", .1, 1, List.of("FRAC 3"), LabelLimit.noneStated(), LabelLimit.noneStated())));
        assertThat(LabelBook.EMPTY.advice("Demo F1", "corn")).isEqualTo(ProductLabel.NOT_ENTERED);
        LabelBook once = new LabelBook(List.of(first));
        assertThat(once.advice("Demo F1", "corn")).isEqualTo(ProductLabel.WAITING);
        assertThat(once.advice("Demo F1", "corn").waiting()).isTrue();
        ProductLabel seen = new LabelBook(List.of(first.checkedBy("B", LATER))).advice("demo f1", "Corn");
        assertThat(seen.groups()).containsExactly("11", "3");
        assertThat(seen.weather().windMax_ms().value()).isCloseTo(4.4704, within(1e-9));
        assertThat(seen.weather().windMin_ms()).isEqualTo(LabelLimit.notEntered());
        assertThat(seen.weather().inversionBan()).contains(true);
        assertThat(seen.byAir()).contains(false);
        assertThat(seen.preHarvest_d()).isEqualTo(LabelLimit.noneStated());
        assertThat(seen.lastStage()).isEqualTo(LabelLimit.of(34));
        assertThat(seen.missing())
                .extracting(LabelItem::word)
                .containsExactly("wind_least", "air_most", "rainfast", "finest", "first_stage");
    }

    @Test
    void a_second_entry_by_hand_tells_form_registration_and_nothing_where_nothing_was_said() {
        LabelEntry first = entry("A. Grower", Map.of(LabelItem.SINGLE, "12 fl oz/ac"));
        assertThat(first.look().isSingle()).isFalse();
        LabelEntry other = RecordCopy.with(RecordCopy.with(first, "title.dry", true), "title.registration", "");
        assertThatThrownBy(() -> first.enteredAgain(other))
                .hasMessageContaining("item=REGISTRATION}: found found.nothing")
                .hasMessageContaining("item=FORM}: found label.constant{constant=DRY}");
        assertThatThrownBy(() -> other.enteredAgain(first))
                .hasMessageContaining("item=FORM}: found label.constant{constant=LIQUID}");
        LabelEntry later = RecordCopy.with(first, "plantBack_d", Map.of("wheat", 30.0));
        assertThatThrownBy(() -> first.enteredAgain(later)).hasMessageContaining("item=PLANT_BACK");
        assertThat(later.checkedBy("B", LATER).plantBack_d()).isEqualTo(Map.of("wheat", 30.0));
    }

    @Test
    void five_items_are_judged_in_the_air_of_the_day() {
        assertThat(java.util.Arrays.stream(LabelItem.values()).filter(LabelItem::isOfAir))
                .containsExactly(
                        LabelItem.WIND_LEAST,
                        LabelItem.WIND_MOST,
                        LabelItem.AIR_MOST,
                        LabelItem.INVERSION,
                        LabelItem.RAINFAST);
    }

    @Test
    void a_yes_or_no_that_nobody_entered_is_neither() {
        LabelEntry bare = entry("A. Grower", Map.of()).checkedBy("B", LATER);
        ProductLabel seen = new LabelBook(List.of(bare)).advice("Demo F1", "corn");
        assertThat(seen.weather().inversionBan()).isEmpty();
        assertThat(seen.byAir()).isEmpty();
        assertThat(seen.missing()).hasSize(9);
        LabelEntry full = entry(
                        "A. Grower",
                        Map.of(
                                LabelItem.FINEST, "M",
                                LabelItem.HARVEST, "none",
                                LabelItem.FIRST_STAGE, "VT",
                                LabelItem.LAST_STAGE, "R4"))
                .checkedBy("B", LATER);
        assertThat(new LabelBook(List.of(full)).advice("Demo F1", "corn").missing())
                .hasSize(5);
    }
}
