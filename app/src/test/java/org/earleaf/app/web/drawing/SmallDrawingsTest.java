// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.earleaf.decide.Worth;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Spread;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.ToySeason;
import org.junit.jupiter.api.Test;

/** Whisker, tally, curve, rain and thumbnail. */
class SmallDrawingsTest {
    private static final SeasonTrace TRACE = ToySeason.run(Fixture.MILL, LocalDate.of(2026, 4, 29), 70, 55);

    private static Worth worth(double mean, double p10, double p90) {
        return new Worth(mean, p10, p90, .8, p10 - 10, 2.4, 90, 500, Double.NaN);
    }

    @Test
    void whiskers_of_a_table_share_a_scale_that_holds_them_all_and_nought() {
        Whisker scale = Whisker.scaleOf(List.of(worth(50, 10, 90), worth(-20, -60, 30)));
        assertThat(scale.low_usdHa()).isCloseTo(-60 - .06 * 150, within(1e-9));
        assertThat(scale.high_usdHa()).isCloseTo(90 + .06 * 150, within(1e-9));
        assertThat(scale.at(0)).isCloseTo(100 * 69 / 168.0, within(1e-9));
        assertThat(Whisker.scaleOf(List.of(worth(50, 10, 90))).low_usdHa()).isLessThan(0);
    }

    @Test
    void the_dot_stands_at_the_mean_and_the_ends_at_the_tenth_and_ninetieth_percentile() {
        String svg = new Whisker(-100, 100)
                .of(worth(20, -40, 60), "mean 20", "$0", false)
                .html();
        assertThat(svg).contains("cx=\"60%\"", "x1=\"30%\" x2=\"80%\"", "aria-label=\"mean 20\"", ">$0<");
        assertThat(new Whisker(-100, 100).of(worth(20, -40, 60), "", "", true).html())
                .contains("class=\"rf\"")
                .doesNotContain("<text");
    }

    @Test
    void a_tally_fills_from_the_left() {
        String svg = Tally.of(.7, "pays in 7 of 10").html();
        assertThat(svg.split("M", -1)).hasSize(11);
        assertThat(svg.substring(svg.indexOf("class=\"k\""), svg.indexOf("class=\"rl\""))
                        .split("M", -1))
                .hasSize(8);
        assertThat(Tally.of(0, "never").html()).doesNotContain("class=\"k\"");
        assertThat(Tally.of(1, "always").html()).doesNotContain("class=\"rl\"");
    }

    @Test
    void the_curve_stands_where_its_days_and_shares_say() {
        LocalDate first = LocalDate.of(2026, 6, 1);
        List<Spread> nni = new ArrayList<>();
        for (int k = 0; k < 61; k++) {
            nni.add(new Spread(1 - k * .004, 1.1 - k * .004, 1.15 - k * .002));
        }
        LocalDate today = first.plusDays(30);
        SeasonCurve curve = new SeasonCurve(first, nni, first, first.plusDays(60), today);
        assertThat(curve.at(today)).isEqualTo(50);
        assertThat(SeasonCurve.y(1.22)).isZero();
        assertThat(SeasonCurve.y(.62)).isEqualTo(230);
        assertThat(SeasonCurve.y(.3)).as("below the plot").isEqualTo(230);
        DateSpread shortOn =
                new DateSpread(Optional.of(first.plusDays(15)), Optional.of(first.plusDays(45)), Optional.empty(), .7);
        String svg = curve.draw("says", shortOn, Optional.of(List.of(1.0))).html();
        assertThat(svg)
                .contains("x1=\"25%\" x2=\"25%\"", "x1=\"75%\" x2=\"75%\"", "today", "short July 16")
                .doesNotContain("NaN", "style=");
    }

    @Test
    void a_drawing_refuses_a_number_that_is_none() {
        assertThatThrownBy(() -> new Ink().put(Double.NaN)).hasMessageContaining("NaN");
    }

    @Test
    void every_wet_day_has_its_bar_solid_to_today_and_thin_after() {
        int today = 121;
        long fallen = 0;
        long likely = 0;
        for (int day = 0; day < TRACE.days(); day++) {
            if (TRACE.at(day, SeasonTrace.Daily.RAIN) >= .5) {
                fallen += day <= today ? 1 : 0;
                likely += day > today ? 1 : 0;
            }
        }
        String svg = RainBars.of(TRACE, today, "rain").html();
        String solid = svg.substring(svg.indexOf("rain1"), svg.indexOf("rain2"));
        String thin = svg.substring(svg.indexOf("rain2"), svg.indexOf("<line"));
        assertThat(solid.split("M", -1)).hasSize((int) fallen + 1);
        assertThat(thin.split("M", -1)).hasSize((int) likely + 1);
    }

    @Test
    void a_thumbnail_is_clean_on_every_day() {
        for (int day = 0; day < TRACE.days(); day += 7) {
            assertThat(Thumbnail.of(Fixture.MILL, TRACE, day, Format.US, "soil").html())
                    .contains("aria-label=\"soil\"")
                    .doesNotContain("NaN", "style=", " id=");
        }
    }

    @Test
    void wetness_runs_from_the_wilting_point_to_field_capacity() {
        assertThat(new Wetness(0).shade()).isZero();
        assertThat(new Wetness(1).shade()).isEqualTo(4);
        assertThat(new Wetness(1.3).shade()).isEqualTo(5);
        assertThat(new Wetness(-.4).word()).isEqualTo("dry");
    }
}
