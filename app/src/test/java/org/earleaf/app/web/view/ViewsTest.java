// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.junit.jupiter.api.Test;

/** What pages say must follow from the records they are made from. */
class ViewsTest {
    private static final Fixture DAY = new Fixture();
    private static final Zone ZONE = Fixture.MILL;

    private static int number(String text) {
        return Integer.parseInt(text.replace("\u2212", "-").replace(",", ""));
    }

    @Test
    void the_account_of_nitrogen_adds_up_to_what_lies_in_the_soil() {
        Outlook o = DAY.outlook(ZONE);
        for (int day : new int[] {30, 70, 121, 180}) {
            LedgerView ledger = LedgerView.of(o.trace(), day, Format.US);
            int sum = ledger.rows().stream().mapToInt(r -> number(r.amount())).sum();
            // Half a pound of rounding on each of its lines.
            assertThat((double) sum)
                    .isCloseTo(
                            number(ledger.sum().amount()),
                            within(.5 * ledger.rows().size()));
        }
    }

    @Test
    void the_days_table_adds_up_to_its_sentence() {
        FieldLeaf view = FieldLeaf.of(DAY, ZONE, Fixture.TODAY, false, Format.US);
        int nitrate = view.day().rows().stream()
                .skip(1)
                .mapToInt(r -> number(r.row()) + number(r.middle()))
                .sum();
        assertThat((double) nitrate).isCloseTo(number(view.day().total()), within(4.0));
        assertThat(view.day().sentence().html()).startsWith("<b>" + view.day().total() + " lb</b> of nitrate N");
    }

    @Test
    void days_outside_the_run_are_drawn_as_its_first_and_last() {
        FieldLeaf before = FieldLeaf.of(DAY, ZONE, LocalDate.of(2020, 1, 1), false, Format.US);
        FieldLeaf after = FieldLeaf.of(DAY, ZONE, LocalDate.of(2040, 1, 1), true, Format.METRIC);
        assertThat(before.day().inRun().before()).isEmpty();
        assertThat(before.day().inRun().iso()).isEqualTo("2026-03-01");
        assertThat(after.day().inRun().after()).isEmpty();
        assertThat(after.shown().with()).isTrue();
    }

    @Test
    void an_address_of_a_choice_leads_to_the_same_choice_only() {
        List<Option> options = DAY.options(ZONE);
        assertThat(options.stream().map(Choice::key).distinct()).hasSameSizeAs(options);
        for (Option o : options) {
            assertThat(Choice.find(options, Choice.key(o))).contains(o);
        }
        assertThat(Choice.find(options, "2026-07-01-something-else")).isEmpty();
    }

    @Test
    void every_zone_has_an_address_of_its_own() {
        Places places = Places.of(DAY.farm());
        assertThat(places.all().keySet())
                .containsExactly("mill-eighty", "creek-bottom", "sand-ridge", "long-quarter-east", "long-quarter-west");
        assertThat(places.of("Long Quarter", "")).isEqualTo("long-quarter-east");
    }

    @Test
    void what_happens_in_few_years_is_never_told_as_never() {
        DateSpread rare = new DateSpread(Optional.empty(), Optional.empty(), Optional.empty(), .03);
        assertThat(Phrases.shortDate(rare).html()).isEqualTo("in fewer than 1 of 10 years like this");
        assertThat(CalendarRow.shortOn(rare)).isEqualTo("short in fewer than 1 of 10 years like this");
        DateSpread never = new DateSpread(Optional.empty(), Optional.empty(), Optional.empty(), 0);
        assertThat(Phrases.shortDate(never).html()).isEqualTo("never");
        assertThat(CalendarRow.shortOn(never)).isEqualTo("not short in any year like this");
    }

    @Test
    void the_best_choice_is_marked_once_in_each_table() {
        OptionsView view = OptionsView.of(DAY, ZONE, Format.US);
        assertThat(view.tables()).hasSize(3).allSatisfy(t -> assertThat(
                        t.rows().stream().filter(OptionsView.Row::picked))
                .hasSize(1));
        assertThat(view.every().of()).isEqualTo(DAY.options(ZONE).size());
    }

    @Test
    void loads_cover_the_field_and_no_more() {
        Option option = DAY.options(ZONE).get(0);
        LoadView.Job job = LoadView.job(DAY, ZONE, option, Format.US);
        double area_m2 =
                job.sheets().stream().mapToDouble(s -> s.load().area_m2()).sum();
        assertThat(area_m2).isCloseTo(ZONE.area_ha() * 10_000, within(1.0));
        LoadView view = LoadView.of(DAY, job, 2, Format.US);
        assertThat(view.title()).isEqualTo("Load 2 of " + job.sheets().size());
        assertThat(view.headline().html())
                .containsPattern(Pattern.compile("Fill [0-9,.]+ gal of UAN 32 for [0-9.]+ ac"));
    }

    @Test
    void rigs_are_set_for_every_pass_proposed_or_say_why_not() {
        RigsView view = RigsView.of(DAY, Format.US);
        assertThat(view.sets())
                .hasSameSizeAs(
                        DAY.brief().passes().stream().filter(Option::isNitrogen).toList());
        assertThat(view.sets()).allSatisfy(s -> assertThat(s.setTo().pressure().isEmpty())
                .isEqualTo(!s.why().isEmpty()));
        assertThat(view.headline().html()).contains("set the highboy to");
    }
}
