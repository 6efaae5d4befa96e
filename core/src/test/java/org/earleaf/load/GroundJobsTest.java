// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.label.LabelEntry.Clock;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class GroundJobsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 20);

    private static GroundUse use(String job, LocalDate date, double perHa, double area_ha, GroundUse.State state) {
        return new GroundUse(job, date, "Demo F1", perHa, area_ha, true, state);
    }

    private static GroundUse asked(LocalDate date, double perHa) {
        return use("asked", date, perHa, 30, GroundUse.State.ASKED);
    }

    @Test
    void loads_of_one_job_beside_each_other_count_once() {
        GroundJobs three = GroundJobs.of(
                List.of(
                        use("a", DAY, 1, 10, GroundUse.State.RESERVED),
                        use("a", DAY, 1, 10, GroundUse.State.RESERVED),
                        use("a", DAY.plusDays(1), 1.2, 10, GroundUse.State.ASKED)),
                30);
        assertThat(three.asked().of("demo F1")).isEqualTo(1.2);
        assertThat(three.asked().date()).isEqualTo(DAY.plusDays(1));
        assertThat(three.all()).hasSize(1);
    }

    @Test
    void loads_of_one_job_that_cover_more_ground_than_there_is_lie_on_each_other() {
        GroundJobs four = GroundJobs.of(
                List.of(use("a", DAY, 1, 30, GroundUse.State.MADE), use("a", DAY, 1, 15, GroundUse.State.ASKED)), 30);
        assertThat(four.asked().of("Demo F1")).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void jobs_stand_by_date_whatever_the_order_of_uses() {
        GroundJobs jobs =
                GroundJobs.of(List.of(asked(DAY, 1), use("b", DAY.minusDays(9), 1, 30, GroundUse.State.MADE)), 30);
        assertThat(jobs.all()).extracting(GroundJobs.Job::id).containsExactly("b", "asked");
    }

    @Test
    void a_season_is_what_the_label_says_it_is() {
        List<GroundUse> uses = List.of(
                use("last autumn", LocalDate.of(2025, 9, 1), 1, 30, GroundUse.State.MADE),
                use("after harvest", LocalDate.of(2025, 11, 1), 2, 30, GroundUse.State.MADE),
                use("new year", LocalDate.of(2026, 1, 1), 4, 30, GroundUse.State.MADE),
                use("new year's eve", LocalDate.of(2026, 12, 31), 8, 30, GroundUse.State.RESERVED),
                use("next year", LocalDate.of(2027, 1, 1), 16, 30, GroundUse.State.RESERVED),
                asked(DAY, 32));
        GroundJobs jobs = GroundJobs.of(uses, 30);
        LocalDate begins = LocalDate.of(2025, 11, 1);
        assertThat(jobs.inSeason(Clock.CROP, begins, j -> j.of("Demo F1"))).isEqualTo(62);
        assertThat(jobs.inSeason(Clock.CALENDAR_YEAR, begins, j -> j.of("Demo F1")))
                .isEqualTo(44);
        // From 1 September 2025 to 31 August 2026: 1 + 2 + 4 + 32; from 1 January 2026: 4 + 32 + 8; from the day: 32 +
        // 8 + 16, the most.
        assertThat(jobs.inSeason(Clock.DAYS_365, begins, j -> j.of("Demo F1"))).isEqualTo(56);
        assertThat(jobs.inSeason(Clock.DAYS_365, begins, j -> j.holds("demo f1") ? 1 : 0))
                .isEqualTo(4);
    }

    @Test
    void days_365_begin_and_end_to_the_day() {
        GroundJobs edge =
                GroundJobs.of(List.of(use("b", DAY.minusDays(364), 1, 30, GroundUse.State.MADE), asked(DAY, 1)), 30);
        assertThat(edge.inSeason(Clock.DAYS_365, DAY, j -> j.of("Demo F1"))).isEqualTo(2);
        GroundJobs past =
                GroundJobs.of(List.of(use("b", DAY.minusDays(365), 1, 30, GroundUse.State.MADE), asked(DAY, 1)), 30);
        assertThat(past.inSeason(Clock.DAYS_365, DAY, j -> j.of("Demo F1"))).isEqualTo(1);
        GroundJobs later =
                GroundJobs.of(List.of(use("b", DAY.plusDays(1), 5, 30, GroundUse.State.RESERVED), asked(DAY, 1)), 30);
        assertThat(later.inSeason(Clock.DAYS_365, DAY, j -> j.of("Demo F1"))).isEqualTo(6);
    }

    @Test
    void the_one_asked_about_counts_even_outside_the_season() {
        GroundJobs jobs = GroundJobs.of(List.of(asked(DAY, 3)), 30);
        assertThat(jobs.inSeason(Clock.CROP, DAY.plusDays(9), j -> j.of("Demo F1")))
                .isEqualTo(3);
    }

    @Test
    void a_pass_made_is_known_by_volume_or_weight_on_ground_and_else_not() {
        assertThat(of("fl oz/ac", 128).perHa()).isCloseTo(Units.LHA_PER_GALAC, within(1e-9));
        assertThat(of("lb/ac", 1).perHa()).isCloseTo(Units.KGHA_PER_LBAC, within(1e-12));
        assertThat(of("% v/v", 1).perHa()).isNaN();
        assertThat(of("lb N/ac", 1).perHa()).isNaN();
        assertThat(of("bags", 1).perHa()).isNaN();
        GroundUse made = of("lb/ac", 1);
        assertThat(made.job()).isEqualTo("p1");
        assertThat(made.state()).isEqualTo(GroundUse.State.MADE);
    }

    private static GroundUse of(String unit, double rate) {
        Pass pass = new Pass(
                "p1",
                new FieldPart("Mill Eighty", ""),
                DAY,
                "Demo F1",
                new Pass.Rate(rate, unit, 0),
                Placement.OVER_THE_TOP,
                Inhibitor.NONE,
                Pass.State.MADE);
        return GroundUse.made(pass, 30, true);
    }
}
