// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.Disease;
import org.earleaf.field.Placement;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** What core tells reads as people here write it, in the units asked for. */
class ReasonTextsTest {
    private static final LocalDate JULY_2 = LocalDate.of(2026, 7, 2);

    @Test
    void nitrogen_that_runs_short_is_told_with_its_dates() {
        assertThat(Words.US.say(Said.of(
                        "short.about-between",
                        "about",
                        JULY_2.plusDays(3),
                        "early",
                        JULY_2,
                        "late",
                        JULY_2.plusDays(7))))
                .isEqualTo("Short of nitrogen about July 5 (July 2 to July 9).");
        assertThat(Words.US.say(Said.of("short.some", "chance", Measure.CHANCE.of(.32))))
                .isEqualTo("Short of nitrogen in 3 of 10 years like this.");
    }

    @Test
    void what_may_follow_is_told_step_by_step_and_follows_the_units() {
        Said more = Said.of("then.more", "rate", Measure.NITROGEN_RATE.of(Units.kgHa(40)));
        Said upTo = Said.of("then.up-to-rain", "what", more, "rain", Measure.RAIN.of(25.4));
        Said after = Said.of("then.after-more", "what", Said.of("then.nothing"));
        Said again = Said.of(
                "then.look-again",
                "day",
                JULY_2,
                "steps",
                List.of(upTo, after),
                "placement",
                Placement.ROW_BASE,
                "chance",
                Measure.CHANCE.of(.6),
                "adds",
                Measure.MONEY_RATE.of(10));
        assertThat(Words.US.say(again))
                .isEqualTo(
                        "Look again about July 2: 40 lb N/ac more after up to 1.0 in of rain, nothing more after more"
                                + " (row-base dribble). That is done in 6 of 10 years like this and adds $4/ac on average.");
        assertThat(Words.METRIC.say(again)).contains("45 kg N/ha more after up to 25 mm of rain", "$10/ha");
    }

    @Test
    void a_finding_of_scouting_is_one_sentence() {
        Said seen = Said.of("seen.on-plants", "disease", Disease.GRAY_LEAF_SPOT, "shows", 58, "plants", 100);
        Said below =
                Said.of("threshold.below", "seen", seen, "because", Said.of("threshold.count-plants", "rule", "R"));
        assertThat(Words.US.say(Said.of("protect.below-threshold", "finding", below)))
                .isEqualTo("Below the threshold: gray leaf spot on 58 of 100 plants; count the plants that show it; the"
                        + " rule is R. No pass below the threshold; scout again in 5 to 7 days.");
    }

    @Test
    void hours_to_spray_and_rigs_too_low_follow_the_units() {
        Said wind = Said.of(
                "hour.wind-above",
                "wind",
                Measure.WIND.of(12 * Units.MS_PER_MPH),
                "most",
                Measure.WIND.of(10 * Units.MS_PER_MPH));
        assertThat(Words.US.say(wind)).isEqualTo("Wind to 12 mph, more than 10 mph.");
        assertThat(Words.METRIC.say(wind)).isEqualTo("Wind to 5.4 m/s, more than 4.5 m/s.");
        Said air = Said.of("hour.too-hot", "air", Measure.TEMPERATURE.of(35));
        assertThat(Words.US.say(air)).isEqualTo("95 °F is too hot.");
        assertThat(Words.METRIC.say(air)).isEqualTo("35 °C is too hot.");
    }

    @Test
    void a_job_left_out_is_told_with_dates_where_there_are_dates() {
        Said day = Said.of("plan.date", "date", JULY_2);
        Said why = Said.of(
                "plan.left-no-day",
                "first",
                day,
                "rigs",
                List.of(
                        Said.of("plan.rig-through", "rig", "Highboy", "last", day),
                        Said.of("plan.rig-never", "rig", "Low bar")),
                "nearest",
                Said.of("plan.no-shift"),
                "lost",
                Measure.MONEY.of(5400));
        assertThat(Words.US.say(why))
                .isEqualTo("No rig has a shift on a day when it may do it (from Thursday, July 2 on; Highboy through"
                        + " Thursday, July 2, Low bar not at all). Nearest: There is no shift at all. Left out, it loses"
                        + " $5,400.");
    }

    @Test
    void filled_weather_is_told_by_year_and_day() {
        Flag flag = new Flag(
                Said.of("flag.year", "where", "weather.csv", "year", "2026"),
                Said.of(
                        "fill.no-rain",
                        "on",
                        Said.of("fill.days", "n", 2, "days", List.of(JULY_2, JULY_2.plusDays(1)))));
        assertThat(Words.US.say(flag.where()) + ": " + Words.US.say(flag.what()))
                .isEqualTo("weather.csv, 2026: rain missing on 2 days (July 2, July 3), taken as 0");
    }

    @Test
    void remarks_on_files_are_told_in_the_units_asked_for() {
        Said area = Said.of(
                "flag.outline-area",
                "field",
                "Home",
                "drawn",
                Measure.AREA.of(92.7),
                "listed",
                Measure.AREA.of(32.375),
                "most",
                Measure.SHARE.of(.05));
        assertThat(Words.US.say(area))
                .isEqualTo("the outline of Home holds 229.1 ac, fields.csv says 80.0 ac, more than 5% apart; that of"
                        + " fields.csv is taken");
        assertThat(Words.METRIC.say(area)).contains("holds 92.70 ha, fields.csv says 32.38 ha");
        assertThat(Words.METRIC.say("reading.depth-assumed")).isEqualTo("no depth; 0 to 30 cm is taken");
        Said rest = Said.of("found.more-alike", "n", 995, "first", "7", "last", "1001");
        assertThat(Words.US.say("flag.and-more", "what", Said.of("flag.empty", "taken", "well"), "rest", rest))
                .isEqualTo("empty; well is taken: 995 more like this (rows 7 to 1001)");
    }

    @Test
    void every_assumption_has_its_words() {
        for (Parameter p : Parameter.values()) {
            assertThat(Words.US.say(p)).isNotBlank().doesNotStartWith("Parameter.");
        }
        for (ProtectionAssumption a : ProtectionAssumption.values()) {
            assertThat(Words.US.say(a)).isNotBlank().doesNotStartWith("ProtectionAssumption.");
        }
    }
}
