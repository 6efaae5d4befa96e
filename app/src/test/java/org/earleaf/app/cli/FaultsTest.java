// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

class FaultsTest {
    @Command(name = "try")
    static final class Try implements Runnable {
        @Mixin
        private final Common common = new Common();

        @Parameters(defaultValue = "")
        private String how = "";

        @Override
        public void run() {
            switch (how) {
                case "wrong" ->
                    throw new EarleafException(List.of(
                            Problem.of("date.unreadable", Said.text("a.csv row 2"), Said.text("x")),
                            Problem.of("date.unreadable", Said.text("a.csv row 3"), Said.text("x"))));
                case "fault" -> throw new IllegalStateException("a fault of ours");
                default -> common.on();
            }
        }
    }

    private static Ran run(String... args) {
        return Ran.of(Faults.guard(new CommandLine(new Try())), args);
    }

    @Test
    void a_command_that_did_its_work_leaves_with_0() {
        assertThat(run("--on", "2012-07-01", "--units", "METRIC").exit()).isZero();
    }

    @Test
    void wrong_input_prints_one_problem_a_line_and_leaves_with_2() {
        Ran ran = run("wrong");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().lines())
                .containsExactly(
                        "a.csv row 2: found x; expected a date like 2026-06-30. Write year, month and day.",
                        "a.csv row 3: found x; expected a date like 2026-06-30. Write year, month and day.");
    }

    @Test
    void a_day_that_does_not_exist_and_an_unknown_option_leave_with_2_and_say_what_was_expected() {
        assertThat(run("--on", "2012-02-30").err())
                .contains("--on")
                .contains("2012-02-30")
                .contains("2026-06-30");
        assertThat(run("--on", "2012-02-30").exit()).isEqualTo(2);
        assertThat(run("--on", "2012-02-30", "--json").err()).contains("\"code\" : \"date.unreadable\"");
        assertThat(run("--units", "stone").err()).contains("expected us or metric");
        assertThat(run("--colour", "red").exit()).isEqualTo(2);
    }

    @Test
    void a_fault_of_ours_leaves_with_1_and_names_its_report_file() throws Exception {
        Ran ran = run("fault");
        assertThat(ran.exit()).isEqualTo(1);
        Path report = Path.of(
                ran.err().substring(ran.err().indexOf("A report is in ") + 15).trim());
        assertThat(Files.readString(report)).contains("a fault of ours").contains("FaultsTest");
        Files.delete(report);
    }
}
