// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule on what people enter, through every door that has it: a file, a command, a page. One rule, one code. */
class RefusalsTest {
    private static final int LEAST = 120;

    @TempDir
    private static Path work;

    private static RefusedAt at;

    @BeforeAll
    static void open() throws IOException {
        at = new RefusedAt(work);
    }

    @AfterAll
    static void close() {
        at.close();
    }

    static Stream<Refusal> refusals() {
        return Refusals.all();
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void every_door_refuses_it_by_the_same_code(Refusal refusal) throws Exception {
        for (var door : refusal.doors().entrySet()) {
            assertThat(door.getValue().refuses(at)).as(door.getKey()).contains(refusal.code());
        }
    }

    @Test
    void the_table_is_long_and_most_of_it_has_several_doors() {
        assertThat(refusals().count()).isGreaterThanOrEqualTo(LEAST);
        assertThat(refusals().filter(r -> r.doors().size() == 3).count()).isGreaterThanOrEqualTo(50);
        assertThat(refusals().filter(r -> r.doors().size() >= 2).count()).isGreaterThanOrEqualTo(LEAST);
        assertThat(refusals().allMatch(r -> !r.doors().isEmpty())).isTrue();
    }

    /** What is right is taken: else a door that refuses everything would pass. */
    @Test
    void the_same_drafts_without_the_fault_are_taken_at_every_door() throws Exception {
        for (Refusal good : new Refusal[] {
            Refusal.reading("", "top", "0 in", "bottom", "12 in"),
            Refusal.reading("", "value", "18,5"),
            Refusal.reading("", "kind", "lesions", "value", "", "unit", "", "positive", "58", "plants", "100"),
            Refusal.reading("", "value", "90", "sure", "yes"),
            PastRefusals.past("", "year", "2020"),
            PastRefusals.past("", "yield", "330", "sure", "yes"),
            PastRefusals.past("", "crop", "soybean", "yield", ""),
            Refusal.pass("", "rate", "41"),
            Refusal.record("", "area", "70 ac"),
            Refusal.load("", "area", "61 ac"),
            Refusal.rig("", "width_ft", "80", "boom", "80 ft")
        }) {
            for (var door : good.doors().entrySet()) {
                assertThat(door.getValue().refuses(at))
                        .as(good + " at " + door.getKey())
                        .isEqualTo(Set.of());
            }
        }
    }
}
