// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.junit.jupiter.api.Test;

/** Curves hold what was worked out and nothing between; what they say is what they draw. */
class WorthCurvesTest {
    private static final OptionsView VIEW = OptionsView.of(new Fixture(), Fixture.MILL, Format.US);

    private static String drawn(String id) {
        return VIEW.curves().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow()
                .drawing()
                .html();
    }

    private static List<double[]> points(String path) {
        List<double[]> all = new ArrayList<>();
        Matcher m = Pattern.compile("[ML](-?[\\d.]+) (-?[\\d.]+)").matcher(path);
        while (m.find()) {
            all.add(new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))});
        }
        return all;
    }

    private static String path(String drawing, String cls) {
        Matcher m =
                Pattern.compile("<path class=\"" + cls + "\" d=\"([^\"]+)\"").matcher(drawing);
        assertThat(m.find()).as(cls).isTrue();
        return m.group(1);
    }

    @Test
    void the_mean_by_rate_has_one_corner_a_rate_and_starts_at_doing_nothing() {
        String drawing = drawn("by-rate");
        List<double[]> mean = points(path(drawing, "k3 ns"));
        assertThat(mean).as("nothing and three rates").hasSize(4);
        assertThat(mean.get(0)[0]).isZero();
        assertThat(mean.get(1)[0] / mean.get(3)[0]).isCloseTo(30 / 70.0, within(.01));
        List<double[]> bad = points(path(drawing, "kn da ns"));
        for (int k = 1; k < mean.size(); k++) {
            assertThat(bad.get(k)[1]).as("the worst fifth lies below the mean").isGreaterThan(mean.get(k)[1]);
        }
    }

    @Test
    void every_day_that_was_worked_out_has_its_line_and_no_other() {
        Matcher dots = Pattern.compile("<circle class=\"k\"").matcher(drawn("by-date"));
        assertThat(dots.results().count()).isEqualTo(5);
        assertThat(drawn("by-date")).contains("highboy no longer fits");
    }

    @Test
    void no_day_that_was_worked_out_is_hatched_as_if_nothing_could_be_done() {
        String drawing = drawn("by-date");
        Matcher hatch = Pattern.compile("class=\"sh\"[^>]* x=\"([\\d.]+)%").matcher(drawing);
        assertThat(hatch.find()).isTrue();
        double from = Double.parseDouble(hatch.group(1));
        Matcher dots = Pattern.compile("<circle class=\"(?:k|rf)\"[^>]* cx=\"([\\d.]+)%")
                .matcher(drawing);
        assertThat(dots.results().map(d -> Double.parseDouble(d.group(1))).toList())
                .isNotEmpty()
                .allMatch(x -> x < from);
    }

    @Test
    void what_the_zero_means_is_said_above_and_no_figure_of_money_is_left_out_for_it() {
        for (String id : new String[] {"by-rate", "by-date", "by-price"}) {
            assertThat(drawn(id)).contains("at 0: do nothing", ">0</text>").doesNotContain("0, do nothing");
        }
    }

    @Test
    void the_price_of_corn_crosses_nothing_at_the_break_even_of_the_table() {
        String says = VIEW.curves().get(2).says();
        String picked = VIEW.tables().get(0).rows().stream()
                .filter(OptionsView.Row::picked)
                .findFirst()
                .orElseThrow()
                .worth()
                .breakEven();
        assertThat(says).endsWith("It breaks even at " + picked + ".");
        assertThat(VIEW.advice().changes().get(0)).contains(picked);
    }

    @Test
    void a_placement_without_a_rig_or_under_too_tall_corn_keeps_its_row_and_its_reason() {
        assertThat(VIEW.barred().stream().map(Barred::name))
                .containsExactly("Mid-row coulter", "Row-side coulter", "Broadcast", "By air");
        assertThat(VIEW.barred().get(0).reason()).contains("the coulter bar clears 36 in");
        assertThat(VIEW.barred().get(1).reason()).isEqualTo("No rig of this farm does it.");
    }
}
