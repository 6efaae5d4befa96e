// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The contract for scripts, on the shipped instance: optimum $3908.00, proved by enumeration and a constraint solver. */
class PlanCommandTest {
    private static final Path EXAMPLE = Path.of("../docs/plan-example");

    @TempDir
    private Path dir = Path.of("");

    private static Ran run(Path folder, String... more) {
        List<String> args = new ArrayList<>(List.of("plan", "--instance", folder.toString()));
        args.addAll(List.of(more));
        return Ran.of(Main.commandLine(), args.toArray(new String[0]));
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return JsonMapper.builder().build().readTree(ran.out());
    }

    private static String place(JsonNode job) {
        return job.get("job").asString() + " " + job.get("rig").asString() + " "
                + job.get("day").asInt() + " " + job.get("order").asInt() + " "
                + job.get("start_min").asInt() + " " + job.get("end_min").asInt();
    }

    private Path broken() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLE)) {
            for (Path file : files.toList()) {
                String text = Files.readString(file);
                String less = file.endsWith("shifts.csv") ? text.replaceAll("R1,(\\d),\\d+", "R1,$1,0") : text;
                Files.writeString(dir.resolve(file.getFileName().toString()), less);
            }
        }
        return dir;
    }

    @Test
    void prints_the_optimum_with_every_job_in_its_place() {
        JsonNode plan = json(run(EXAMPLE, "--json", "--seconds", "5"));
        assertThat(plan.get("total_usd").asDouble()).isEqualTo(3908.00);
        List<String> places = new ArrayList<>();
        plan.get("jobs").forEach(j -> places.add(place(j)));
        assertThat(places)
                .containsExactly(
                        "F2 R1 1 1 30 124",
                        "F4 R1 1 2 150 239",
                        "F7 R1 1 3 261 400",
                        "F5 R2 1 1 30 370",
                        "F3 R1 3 1 26 174",
                        "F6 R1 3 2 216 290",
                        "F1 R1 4 1 18 206");
        assertThat(plan.get("left_out").size()).isZero();
    }

    @Test
    void says_which_rule_keeps_a_job_out_and_by_how_much() throws IOException {
        JsonNode plan = json(run(broken(), "--json", "--seed", "3"));
        assertThat(plan.get("total_usd").asDouble()).isEqualTo(16977.00);
        List<String> reasons = new ArrayList<>();
        plan.get("left_out")
                .forEach(l -> reasons.add(
                        l.get("job").asString() + ": " + l.get("reason").asString()));
        assertThat(reasons).hasSize(4);
        assertThat(reasons.get(0))
                .startsWith("F3: Other jobs are worth more of the time")
                .contains("min short");
        assertThat(reasons.get(3)).startsWith("F7: ").contains("R2 needs").endsWith("Left out, it loses $4,950.");
    }

    @Test
    void the_same_seed_prints_the_same_bytes() {
        assertThat(run(EXAMPLE, "--json", "--seed", "5").out())
                .isEqualTo(run(EXAMPLE, "--json", "--seed", "5").out());
    }

    @Test
    void prints_a_plan_to_read() {
        String text = run(EXAMPLE).out();
        assertThat(text)
                .contains("The plan costs $3,908.00: rigs $3,428.00, days lost $480.00, left out $0.00.")
                .contains("day 1, R1: 400 of 420 min")
                .contains("The label is the law");
    }

    @Test
    void refuses_what_cannot_be_read_and_says_what_to_do() {
        Ran ran = run(dir);
        assertThat(ran.exit()).isEqualTo(Faults.WRONG_INPUT);
        assertThat(ran.err()).contains("jobs.csv: found no such file").contains("Add it to the folder.");
        assertThat(run(EXAMPLE, "--seconds", "-1").exit()).isEqualTo(Faults.WRONG_INPUT);
    }
}
