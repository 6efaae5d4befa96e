// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.plan.Pin;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Window;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanInstanceTest {
    private static final Path EXAMPLE = Path.of("../docs/plan-example");

    @TempDir
    private Path dir = Path.of("");

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLE)) {
            for (Path file : files.toList()) {
                Files.copy(file, dir.resolve(file.getFileName().toString()));
            }
        }
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(dir.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(dir.resolve(file), text.replace(from, to));
    }

    private List<Problem> faults() {
        return catchThrowableOfType(EarleafException.class, () -> PlanInstance.read(dir))
                .problems();
    }

    private void refuses(String where, String expected) {
        assertThat(faults()).anySatisfy(p -> {
            assertThat(PlaceText.of(p.place())).isEqualTo(where);
            assertThat(p.expected()).contains(expected);
            assertThat(p.todo()).isNotBlank();
        });
    }

    @Test
    void reads_the_example_without_a_remark() {
        PlanInstance.Read read = PlanInstance.read(EXAMPLE);
        PlanProblem p = read.problem();
        assertThat(read.flags()).isEmpty();
        assertThat(p.jobs()).hasSize(7);
        assertThat(p.shifts()).hasSize(6);
        assertThat(p.jobs().get(1).loss().byDay().on(3)).isEqualTo(480);
        assertThat(p.jobs().get(1).undone_usd()).isEqualTo(4400);
        assertThat(p.jobs().get(2).lastDay()).containsExactly(4, 1);
        assertThat(p.travel_s(p.shifts().get(0), -1, 1))
                .isCloseTo(30 * 60, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void reads_what_may_be_added() throws IOException {
        Files.writeString(dir.resolve("cleanout.csv"), "from,to,minutes\nN,spray,40\n");
        Files.writeString(dir.resolve("tenders.csv"), "tender,holds_gal,round_trip_min,reload_min\nT1,3000,70,20\n");
        Files.writeString(dir.resolve("gaps.csv"), "first,second,days,either_order\nF1,F2,2,yes\n");
        Files.writeString(dir.resolve("windows.csv"), "rig,day,class,from_min,to_min\nR1,1,spray,60,300\n");
        StringBuilder jobs = new StringBuilder();
        for (String line : Files.readAllLines(dir.resolve("jobs.csv"))) {
            jobs.append(line)
                    .append(
                            line.startsWith("job")
                                    ? ",class,supply_gal,pin_rig,pin_day"
                                    : line.startsWith("F1") ? ",spray,2400,R2,3" : ",N,900,,")
                    .append('\n');
        }
        Files.writeString(dir.resolve("jobs.csv"), jobs);
        PlanProblem p = PlanInstance.read(dir).problem();
        assertThat(p.cleanout().between_s("N", "spray")).isEqualTo(2400);
        assertThat(p.cleanout().between_s("spray", "N")).isZero();
        assertThat(p.pins()).containsExactly(new Pin(0, 1, 3));
        assertThat(p.gaps().get(0).eitherOrder()).isTrue();
        assertThat(p.shifts().get(0).window(p.jobs().get(0))).isEqualTo(new Window(3600, 18000));
        // 420 min hold four absences of 90 min: five tankfuls of 3000 gal.
        assertThat(p.supply().get(0).most_m3())
                .isCloseTo(15000 * org.earleaf.units.Units.M3_PER_GAL, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void counts_the_way_home_and_waits_at_the_tender_when_asked() throws IOException {
        assertThat(PlanInstance.read(dir).problem().roads().countsWayHome()).isFalse();
        Files.writeString(dir.resolve("travel.csv"), "fixed_min,min_per_mile,count_way_home\n6,4,yes\n");
        PlanProblem p = PlanInstance.read(dir).problem();
        // F2 lies 5 mi and 1 mi from the yard: 6 + 4 x 6 min.
        assertThat(p.home_s(p.shifts().get(0), 1)).isCloseTo(30 * 60, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(p.hasTenders()).isFalse();
        StringBuilder rigs = new StringBuilder();
        for (String line : Files.readAllLines(dir.resolve("rigs.csv"))) {
            rigs.append(line)
                    .append(line.startsWith("rig") ? ",tank_gal,fill_min" : ",1200,15")
                    .append('\n');
        }
        Files.writeString(dir.resolve("rigs.csv"), rigs);
        assertThat(PlanInstance.read(dir).problem().rigs().get(0).fill_s()).isEqualTo(900);
        Files.writeString(dir.resolve("travel.csv"), "fixed_min,min_per_mile,count_way_home\n6,4,perhaps\n");
        assertThat(faults()).singleElement().satisfies(f -> assertThat(f.found())
                .contains("perhaps"));
    }

    @Test
    void refuses_a_folder_that_is_not_there_and_a_file_that_misses() throws IOException {
        Files.delete(dir.resolve("travel.csv"));
        refuses("travel.csv", "instance.no-file");
        assertThat(catchThrowableOfType(EarleafException.class, () -> PlanInstance.read(dir.resolve("no"))))
                .hasMessageContaining("instance.no-folder");
    }

    @Test
    void refuses_a_job_without_minutes_for_a_rig() throws IOException {
        change("jobs.csv", "minutes_R2", "minutes");
        refuses("jobs.csv, row 1, column minutes_r2", "minutes_r2");
    }

    @Test
    void refuses_an_unknown_rig_in_a_shift() throws IOException {
        change("shifts.csv", "R2,3,300", "R9,3,300");
        refuses("shifts.csv, row 7, column rig", "instance.rig-unknown");
    }

    @Test
    void refuses_two_shifts_of_a_rig_on_one_day() throws IOException {
        change("shifts.csv", "R2,4,480", "R2,3,480");
        refuses("shifts.csv, row 9, column day", "instance.second-shift");
    }

    @Test
    void refuses_a_job_twice_and_a_word_for_a_number() throws IOException {
        change("jobs.csv", "F2,80", "F1,eighty");
        refuses("jobs.csv, row 3, column job", "instance.job-twice");
        refuses("jobs.csv, row 3, column area_ac", "number.unreadable");
    }

    @Test
    void refuses_a_day_without_a_loss_and_a_loss_that_falls() throws IOException {
        change("jobs.csv", "0,6,9,55", "0,6,5,55");
        change("jobs.csv", ",0,2,35,3", ",,2,35,3");
        refuses("jobs.csv, row 3, column loss_day_4", "instance.loss-falls");
        refuses("jobs.csv, row 7, column loss_day_3", "instance.loss-missing.expected{day=3}");
    }

    @Test
    void refuses_half_a_pin_a_gap_to_nowhere_and_a_shift_of_two_days() throws IOException {
        change("jobs.csv", "last_day_R2\n", "last_day_R2,pin_rig\n");
        String text = Files.readString(dir.resolve("jobs.csv"));
        Files.writeString(
                dir.resolve("jobs.csv"),
                text.replace(",4\n", ",4,R1\n").replace(",3\n", ",3,\n").replace(",1\n", ",1,\n"));
        change("shifts.csv", "R1,1,420", "R1,1,3000");
        Files.writeString(dir.resolve("gaps.csv"), "first,second,days\nF1,F99,2\n");
        refuses("jobs.csv, row 2, column pin_rig", "instance.pin-half");
        refuses("shifts.csv, row 2, column minutes", "1440");
    }
}
