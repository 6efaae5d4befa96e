// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.app.Main;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Speeds of size 05 at 15 gal/ac and 20 in with water, by the extension form GPM = GPA mph in / 5940 and the square-root
 * law, worked by hand: 7.83 mph at 25 psi, 9.90 at 40, 12.12 at 60.
 */
class RigFindTest {
    private static final String SHEETS =
            "Invented, 05: VC 20 psi, C 30 psi, M 50 psi, F 80 psi; Invented, 04: C 20 psi, M 60 psi, F 80 psi";

    private static Ran find(String... more) {
        String[] base = {
            "rig",
            "--find",
            "--boom",
            "90 ft",
            "--pressures",
            "25 to 60 psi",
            "--speeds",
            "4 to 20 mph",
            "--rate",
            "15 gal/ac",
            "--speed",
            "10 mph",
            "--width",
            "20 in"
        };
        String[] all = new String[base.length + more.length];
        System.arraycopy(base, 0, all, 0, base.length);
        System.arraycopy(more, 0, all, base.length, more.length);
        return Ran.of(Main.commandLine(), all);
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return JsonMapper.builder().build().readTree(ran.out());
    }

    private static JsonNode five(JsonNode answer) {
        for (JsonNode setup : answer.get("setups")) {
            if (setup.get("outlet").asString().contains("size 05")) {
                return setup;
            }
        }
        throw new AssertionError(answer.toString());
    }

    @Test
    void outlets_come_with_the_speeds_that_hold_the_rate_and_what_ends_them() {
        JsonNode setup = five(json(find("--json")));
        assertThat(setup.get("pressure_psi").asDouble()).isCloseTo(40.81, within(.01));
        assertThat(setup.get("slowest_mph").asDouble()).isCloseTo(7.83, within(.005));
        assertThat(setup.get("fastest_mph").asDouble()).isCloseTo(12.12, within(.005));
        assertThat(setup.get("slowest_binds").asString()).isEqualTo("lowest pressure");
        assertThat(setup.get("fastest_binds").asString()).isEqualTo("highest pressure");
        assertThat(setup.get("outlets").asInt()).isEqualTo(54);
        assertThat(find().out())
                .contains(
                        "size 05",
                        "holds the rate from 7.827 mph (lowest pressure) to 12.12 mph",
                        "The label is the law");
    }

    @Test
    void droplets_wanted_narrow_the_pressures_and_an_empty_answer_says_why() {
        JsonNode setup = five(json(find("--droplets", "M to VC", "--nozzle", SHEETS, "--json")));
        assertThat(setup.get("fastest_binds").asString()).startsWith("droplets");
        JsonNode none = json(find("--droplets", "XC", "--nozzle", SHEETS, "--json"));
        assertThat(none.get("setups").isEmpty()).isTrue();
        assertThat(none.get("reasons").toString()).contains("Invented, size 05", "droplets M; wanted XC");
        assertThat(find("--droplets", "XC", "--nozzle", SHEETS).out()).contains("No outlet serves.");
    }

    @Test
    void what_cannot_be_read_is_refused_with_an_example() {
        assertThat(find("--droplets", "M").err()).contains("A class never follows from a size");
        assertThat(find("--droplets", "M", "--nozzle", "05 M 40 psi").err()).contains("Copy it from the sheet.");
        assertThat(find("--droplets", "damp", "--nozzle", SHEETS).exit()).isEqualTo(2);
        assertThat(find("--pressures", "60 psi").exit()).isEqualTo(2);
        assertThat(find("--placement", "nowhere").err()).contains("over the top");
        Ran norig = Ran.of(Main.commandLine(), "rig", "--find", "--rate", "15 gal/ac");
        assertThat(norig.exit()).isEqualTo(2);
        assertThat(norig.err()).contains("--rig with a farm, or --boom");
    }

    @Test
    void a_rig_of_the_farm_is_known_by_its_name() {
        Ran high = Ran.of(
                Main.commandLine(),
                "rig",
                "--find",
                "--rig",
                "highboy",
                "--folder",
                "../demo-farm",
                "--rate",
                "15 gal/ac",
                "--json");
        assertThat(json(high).get("setups").isEmpty()).isFalse();
        Ran none = Ran.of(
                Main.commandLine(),
                "rig",
                "--find",
                "--rig",
                "plough",
                "--folder",
                "../demo-farm",
                "--rate",
                "15 gal/ac");
        assertThat(none.err()).contains("plough", "Highboy");
    }
}
