// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    private static Words words(String message, boolean metric) {
        return new Words(
                Catalogue.of(java.util.Locale.US).changed(text -> text.equals("{text}") ? message : text), metric);
    }

    /** A message of a test, under the key "as-entered". */
    private static String made(String message, boolean metric, String name, Object value) {
        return words(message, metric).say(new Said("as-entered", Map.of(name, value)));
    }

    @Test
    void a_quantity_is_there_whole_and_in_parts_in_either_units() {
        Measured rate = Measure.NITROGEN_RATE.of(44.834);
        String message = "{rate}|{rate_number}|{rate_unit}|{rate_fine}";
        assertThat(made(message, false, "rate", rate)).isEqualTo("40 lb N/ac|40|lb N/ac|40.0 lb N/ac");
        assertThat(made(message, true, "rate", rate)).isEqualTo("45 kg N/ha|45|kg N/ha|44.8 kg N/ha");
    }

    @Test
    void a_date_is_there_in_every_american_form() {
        assertThat(made(
                        "{d}|{d_weekday}|{d_short}|{d_tight}|{d_year}|{d_full}|{d_name}|{d_month}|{d_iso}",
                        false,
                        "d",
                        DAY))
                .isEqualTo(
                        "July 1|Wednesday, July 1|Wed, July 1|Jul 1|July 1, 2026|Wednesday, July 1, 2026|Wednesday|July"
                                + "|2026-07-01");
        assertThat(Words.US.clock(LocalTime.of(6, 30))).isEqualTo("6:30 am");
    }

    @Test
    void lists_are_joined_as_the_language_does() {
        assertThat(made("{f}|{f_or}|{f_comma}|{f_count}", false, "f", List.of("A", "B", "C")))
                .isEqualTo("A, B, and C|A, B, or C|A, B, C|3");
    }

    @Test
    void money_wears_its_sign_first_and_is_never_minus_nought() {
        assertThat(Words.US.say(Measure.MONEY_RATE.of(-25))).isEqualTo("\u2212$10/ac");
        assertThat(Words.METRIC.say(Measure.MONEY_RATE.of(1234))).isEqualTo("$1,234/ha");
        assertThat(Words.US.say(Measure.MONEY.of(-.2))).isEqualTo("$0");
        assertThat(Words.US.say(Measure.MONEY.of(Double.NaN))).isEqualTo("not known");
    }

    @Test
    void a_chance_reads_as_nought_or_all_only_when_it_is() {
        assertThat(Words.US.say(Measure.CHANCE.of(.8))).isEqualTo("8 of 10");
        assertThat(Words.US.say(Measure.CHANCE.of(.88))).isEqualTo("9 of 10");
        assertThat(Words.US.say(Measure.CHANCE.of(.04))).isEqualTo("fewer than 1 of 10");
        assertThat(Words.US.say(Measure.CHANCE.of(.01))).isEqualTo("fewer than 1 of 10");
        assertThat(Words.US.say(Measure.CHANCE.of(.99))).isEqualTo("more than 9 of 10");
        assertThat(Words.US.say(Measure.CHANCE.of(1))).isEqualTo("10 of 10");
    }

    @ParameterizedTest
    @EnumSource
    void every_measure_has_a_unit_and_words_in_both_systems(Measure measure) {
        assertThat(Words.US.say(measure.of(2)) + Words.US.form(measure.of(2), "unit"))
                .isNotBlank();
        assertThat(Words.METRIC.say(measure.of(2)) + Words.METRIC.form(measure.of(2), "unit"))
                .isNotBlank();
    }

    @Test
    void what_a_person_entered_cannot_bring_tags_or_marks() {
        Words words = words("<b>{text}</b> & more", false);
        assertThat(words.html(Said.text("<i>\uE000Home"))).isEqualTo("<b>&lt;i&gt;Home</b> &amp; more");
        assertThat(words.say(Said.text("Home"))).isEqualTo("Home & more");
    }

    @Test
    void a_unit_is_small_on_a_page() {

        assertThat(words("{t}", false).html(new Said("as-entered", Map.of("t", Measure.RAIN.of(25.4)))))
                .isEqualTo("1.0 <span class=\"u\">in</span>");
    }

    @Test
    void what_is_missing_is_loud() {
        assertThatThrownBy(() -> Words.US.say("no.such-key")).hasMessageContaining("no.such-key");
        assertThatThrownBy(() -> Words.US.say("amount.share")).hasMessageContaining("{number}");
        assertThatThrownBy(() -> made("{d_half}", false, "d", DAY)).hasMessageContaining("{d_half}");
    }

    @Test
    void a_problem_is_told_with_its_place_and_never_formats_what_was_entered() {
        ToldProblem told = Words.US.told(Problem.of("date.unreadable", Said.text("line 3"), Problem.seen("{x}")));
        assertThat(told.sentence())
                .isEqualTo("line 3: found \"{x}\"; expected a date like 2026-06-30. Write year, month and day.");
    }
}
