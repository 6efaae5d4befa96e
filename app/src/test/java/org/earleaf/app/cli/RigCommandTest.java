// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RigCommandTest {
    private static final String[] BASE = {"rig", "--rate", "15 gal/ac", "--speed", "10 mph", "--width", "20 in"};

    private static Ran run(String... args) {
        return Ran.of(Main.commandLine(), args);
    }

    private static Ran with(String... more) {
        String[] all = new String[BASE.length + more.length];
        System.arraycopy(BASE, 0, all, 0, BASE.length);
        System.arraycopy(more, 0, all, BASE.length, more.length);
        return run(all);
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return JsonMapper.builder().build().readTree(ran.out());
    }

    // Source: university extension form GPM = GPA mph in / 5940 and the square-root law, by hand.
    @Test
    void solves_the_flow_and_with_a_size_the_pressure() {
        JsonNode open = json(with("--json"));
        assertThat(open.propertyNames())
                .startsWith("rate_gal_ac", "speed_mph", "width_in", "flow_gpm", "pressure_psi", "density_factor");
        assertThat(open.get("flow_gpm").asDouble()).isCloseTo(0.50505, within(1e-5));
        assertThat(open.get("pressure_psi").isNull()).isTrue();
        assertThat(open.get("density_factor").asDouble()).isEqualTo(1);
        JsonNode sized = json(with("--size", "05", "--json"));
        assertThat(sized.get("pressure_psi").asDouble()).isCloseTo(40.81, within(0.005));
        assertThat(sized.get("rate_gal_ac").asDouble()).isEqualTo(15);
    }

    // Source: as above; each row leaves out another part of one setting.
    @ParameterizedTest
    @CsvSource({
        "speed_mph, 9.9, --rate, 15 gal/ac, --width, 20 in, --flow, 0.5 gal/min",
        "rate_gal_ac, 15, --speed, 9.9 mph, --width, 20 in, --flow, 0.5 gpm",
        "width_in, 20, --rate, 15 gal/ac, --speed, 9.9 mph, --flow, 0.5 gal/min"
    })
    void solves_each_part_from_the_others(
            String key, double expected, String a, String av, String b, String bv, String c, String cv) {
        JsonNode solved = json(run("rig", a, av, b, bv, c, cv, "--json"));
        assertThat(solved.get(key).asDouble()).isCloseTo(expected, within(0.005));
        JsonNode bySize = json(run("rig", a, av, b, bv, "--size", "05", "--pressure", "40 psi", "--json"));
        assertThat(bySize.get(key).asDouble()).isCloseTo(expected, within(0.005));
        assertThat(bySize.get("flow_gpm").asDouble()).isCloseTo(0.5, within(1e-6));
    }

    // Source: university extension density tables, 32 % UAN F 1.1516: the pressure rises with F squared.
    @Test
    void takes_the_density_into_the_pressure_and_not_into_the_flow() {
        JsonNode uan = json(with("--size", "05", "--liquid", "uan32", "--json"));
        assertThat(uan.get("density_factor").asDouble()).isCloseTo(1.1516, within(1e-4));
        assertThat(uan.get("flow_gpm").asDouble()).isCloseTo(0.50505, within(1e-5));
        assertThat(uan.get("water_flow_gpm").asDouble()).isCloseTo(0.5816, within(1e-4));
        assertThat(uan.get("pressure_psi").asDouble()).isCloseTo(40.81 * 1.1516 * 1.1516, within(0.02));
        JsonNode same = json(with("--size", "05", "--liquid", "11.06 lb/gal", "--json"));
        assertThat(same.get("pressure_psi")).isEqualTo(uan.get("pressure_psi"));
    }

    // Source: geometry, 20 (1 + 1) / (2 tan 55 degrees) = 14.0 in; least overlap 30 %: 9.1 in.
    @Test
    void fans_hang_where_they_overlap_and_no_higher_than_the_label() {
        JsonNode free = json(with("--fan", "110", "--json"));
        assertThat(free.get("height_in").asDouble()).isCloseTo(14.0, within(0.01));
        assertThat(free.get("height_least_in").asDouble()).isCloseTo(9.1, within(0.01));
        assertThat(free.get("height_most_in").asDouble()).isCloseTo(26.0, within(0.01));
        Ran held = with("--fan", "110", "--label-height", "16 in");
        assertThat(held.out()).contains("14 in above the target", "9.103 in to 16 in will do", "slow down");
        assertThat(with("--fan", "170").err()).contains("--fan", "170", "15 to 150");
    }

    // Source: square-root law and linear duty: 0.50505 of 0.8 gal/min; 3.96 and 15.84 mph at a quarter and all.
    @Test
    void pulses_hold_the_rate_at_one_pressure() {
        String[] pulsed = {"--size", "08", "--pressure", "40 psi", "--pulses", "10"};
        JsonNode json = json(with(join(pulsed, "--json")));
        assertThat(json.get("duty").asDouble()).isCloseTo(0.6313, within(0.0001));
        assertThat(json.get("slowest_mph").asDouble()).isCloseTo(3.96, within(0.005));
        assertThat(json.get("fastest_mph").asDouble()).isCloseTo(15.84, within(0.005));
        assertThat(with(pulsed).out()).contains("open 63.1 % of the time", "from 3.96 mph to 15.84 mph");
        Ran small = with("--size", "04", "--pressure", "40 psi", "--pulses", "10");
        assertThat(small.exit()).isEqualTo(2);
        assertThat(small.err()).contains("--size", "126 % of the time", "larger size");
        assertThat(with("--pulses", "10").err()).contains("--pulses", "--size and --pressure");
    }

    // Source: as in SplitSolverTest, worked by hand: 025 and 015 give 38.5 and 61.5 % at 34.8 psi.
    @Test
    void a_rate_is_split_over_groups_of_outlets_at_one_pressure() {
        String[] asked = {
            "rig", "--rate", "20 gal/ac", "--speed", "9 mph", "--width", "30 in", "--split", "top 40% 1.5, ear 60% 4"
        };
        JsonNode split = json(run(join(asked, "--json")));
        double shares = split.get("split").get(0).get("share").asDouble()
                + split.get("split").get(1).get("share").asDouble();
        assertThat(shares).isCloseTo(1, within(1e-9));
        assertThat(split.get("split").get(0).get("share").asDouble()).isCloseTo(.4, within(.05));
        assertThat(split.get("split_pressure_psi").asDouble()).isBetween(15.0, 60.0);
        assertThat(run(asked).out()).contains("split", "for all groups", "top: size", "ear: size", "60 % wanted");
        asked[8] = "top 40% 1.5, ear 50% 4";
        assertThat(run(asked).err()).contains("shares that add up to 90.0%");
        asked[8] = "top 40, ear 60";
        assertThat(run(asked).err()).contains("--split", "top 40", "outlets a row");
    }

    private static String[] join(String[] some, String... more) {
        return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
    }

    // Source: metric form L/min = L/ha km/h m / 600.
    @Test
    void reads_and_prints_metric_units() {
        JsonNode metric = json(run(
                "rig",
                "--rate",
                "140 L/ha",
                "--speed",
                "16 km/h",
                "--width",
                "50.8 cm",
                "--units",
                "metric",
                "--json"));
        assertThat(metric.propertyNames())
                .startsWith("rate_l_ha", "speed_km_h", "width_cm", "flow_l_min", "pressure_kpa", "density_factor");
        assertThat(metric.get("flow_l_min").asDouble()).isCloseTo(1.8965, within(1e-4));
    }

    @Test
    void tells_the_size_that_a_pressure_needs() {
        JsonNode solved = json(with("--pressure", "40.81 psi", "--json"));
        assertThat(solved.get("rated_flow_gpm").asDouble()).isCloseTo(0.5, within(1e-4));
    }

    @Test
    void prints_a_text_to_read() {
        Ran ran = with("--size", "05", "--liquid", "uan28");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("rate      15 gal/ac")
                .contains("pressure  52.21 psi")
                .contains("UAN 28, density factor 1.131")
                .contains("The label is the law");
        assertThat(with().out()).contains("give --size or --pressure").contains("05 at 40.81 psi");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--rate|15 gal/ac|--speed|10 mph|Add one of: width or flow",
                "--rate|15|--speed|10 mph|--rate",
                "--rate|15 gal/ac|--speed|10 gal|unit.unknown",
                "--rate|900 gal/ac|--speed|10 mph|150.0 gal/ac",
                "--size|0.5|--speed|10 mph|--size",
                "--liquid|milk|--speed|10 mph|uan28",
            })
    void wrong_input_leaves_with_2_and_says_what_to_do(String a, String av, String b, String bv, String message) {
        Ran ran = run("rig", a, av, b, bv, "--json");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(message);
    }

    @Test
    void a_contradiction_is_named() {
        Ran ran = with("--pressure", "40 psi", "--size", "04");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("rate, speed, width, size, pressure").contains("0.505 gal/min");
    }
}
