// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Dates;
import org.earleaf.outlook.Outlook;
import org.junit.jupiter.api.Test;

/** The calendar's drawing and its words must both follow from the outlooks and the brief. */
class CalendarViewTest {
    private static final Fixture DAY = new Fixture();
    private static final CalendarView WEEKS = CalendarView.of(DAY, false, Format.US);
    private static final LocalDate FROM = Fixture.TODAY.minusDays(4);

    @Test
    void fields_to_dress_stand_first_in_the_order_of_the_brief_then_who_runs_short_first() {
        assertThat(WEEKS.rows().stream().map(r -> r.title().name()).limit(3))
                .containsExactly("Mill Eighty", "Sand Ridge", "Long Quarter, east");
        assertThat(WEEKS.rows()).hasSize(5);
        assertThat(WEEKS.rows().get(0).act().says()).isEqualTo("Today 70 lb N");
        assertThat(WEEKS.rows().get(0).act().now()).isTrue();
        assertThat(WEEKS.headline().html()).contains("Mill Eighty first, today: it runs short about");
    }

    @Test
    void a_rigs_line_ends_in_the_evening_of_its_last_day() {
        Outlook mill = DAY.outlook(Fixture.MILL);
        LocalDate last = mill.reach().get(0).lastDay().orElseThrow();
        String drawn = WEEKS.rows().get(0).bars().wide().html();
        Matcher line = Pattern.compile("<line class=\"k2f\" x1=\"0%\" x2=\"([\\d.]+)%\"")
                .matcher(drawn);
        assertThat(line.find()).isTrue();
        assertThat(Double.parseDouble(line.group(1))).isCloseTo(share(last.plusDays(1)), within(.1));
        assertThat(WEEKS.rows().get(0).rigs())
                .containsExactly("Coulter bar: corn too tall", "Highboy to " + Dates.tight(last));
    }

    @Test
    void nitrogen_lasts_solid_to_its_tenth_and_hatched_to_its_ninetieth_percentile() {
        Outlook mill = DAY.outlook(Fixture.MILL);
        String drawn = WEEKS.rows().get(0).bars().wide().html();
        double sure = box(drawn, "k", 14)[1];
        double[] perhaps = box(drawn, "hxf", 14);
        assertThat(sure).isCloseTo(share(mill.nShort().p10().orElseThrow()), within(.11));
        assertThat(perhaps[0]).isCloseTo(sure, within(.11));
        assertThat(perhaps[1]).isCloseTo(share(mill.nShort().p90().orElseThrow()), within(.21));
    }

    /** Left and right end of a box [%]. */
    private static double[] box(String drawn, String cls, int height) {
        Matcher box = Pattern.compile("<rect class=\"" + cls
                        + "\" x=\"([\\d.]+)%\" width=\"([\\d.]+)%\" y=\"[\\d.]+\" height=\"" + height + "\"")
                .matcher(drawn);
        assertThat(box.find()).isTrue();
        double left = Double.parseDouble(box.group(1));
        return new double[] {left, left + Double.parseDouble(box.group(2))};
    }

    private static double share(LocalDate morning) {
        return 100.0 * ChronoUnit.DAYS.between(FROM, morning) / 28;
    }

    @Test
    void whatever_is_written_into_a_drawing_stands_in_the_tables_too() {
        for (boolean season : new boolean[] {false, true}) {
            CalendarView view = CalendarView.of(DAY, season, Format.US);
            for (CalendarRow row : view.rows()) {
                List<String> said = List.of(
                        row.act().says(),
                        row.dated().shortOn(),
                        row.dated().silk(),
                        row.dated().ripe(),
                        String.join("; ", row.rigs()));
                for (String drawing :
                        List.of(row.bars().wide().html(), row.bars().narrow().html())) {
                    Matcher label = Pattern.compile("<text[^>]*>([^<]+)</text>").matcher(drawing);
                    while (label.find()) {
                        String words = label.group(1).replaceFirst("^(silk|ripe) ?", "");
                        boolean inRow = said.stream()
                                .anyMatch(s -> s.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT)));
                        boolean inPasses =
                                view.passes().stream().anyMatch(p -> p.what().contains(words) || isTurn(p, words));
                        assertThat(inRow || inPasses).as(words).isTrue();
                    }
                }
            }
        }
    }

    /** "highboy Jul 4": the rig stands in the words of the pass, the day beside them. */
    private static boolean isTurn(CalendarView.PassRow pass, String words) {
        Matcher turn = Pattern.compile("(.+) ([A-Z][a-z]{2}) (\\d+)").matcher(words);
        return turn.matches()
                && pass.what().contains(turn.group(1))
                && pass.date().matches(".*\\b" + turn.group(2) + "[a-z]* " + turn.group(3));
    }

    @Test
    void a_phone_gets_fewer_days_and_a_drawing_of_its_own() {
        CalendarRow row = WEEKS.rows().get(0);
        assertThat(row.bars().narrow().html()).isNotEqualTo(row.bars().wide().html());
        assertThat(WEEKS.drawn().wide()).isEqualTo("June 26 to July 23");
        assertThat(WEEKS.drawn().narrow()).isEqualTo("June 29 to July 19");
        assertThat(WEEKS.work().says())
                .startsWith("Chances in ten that a day can be worked: Jun 30: 9, Jul 1: 9, Jul 2: 2,");
    }
}
