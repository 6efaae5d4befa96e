// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.Main;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LoadCommandTest {
    @TempDir
    private Path dir = Path.of("");

    private Path recipe = Path.of("");

    @BeforeEach
    void write() throws IOException {
        recipe = dir.resolve("tassel.csv");
        Files.writeString(recipe, """
                product,rate,rate_unit,form,class
                Demo I1,2.8,fl oz/ac,EC,
                Demo Spreader,0.25,% v/v,SL,NIS
                Demo F1,10,fl oz/ac,SC,
                AMS,8.5,lb/100 gal,SG,WC
                """);
    }

    private Ran run(String... more) {
        List<String> args = new ArrayList<>(List.of("load", "--recipe", recipe.toString()));
        args.addAll(List.of(more));
        return Ran.of(Main.commandLine(), args.toArray(new String[0]));
    }

    /** 40 ac of the demo's corn at a stage. */
    private Ran onCorn(String stage, String... more) {
        String folder = Path.of(System.getProperty("earleaf.root", ".."))
                .resolve("demo-farm")
                .toString();
        List<String> args = new ArrayList<>(List.of("--area", "40 ac", "--rate", "15 gal/ac", "--tank", "980 gal"));
        args.addAll(List.of("--folder", folder, "--crop", "corn", "--stage", stage));
        args.addAll(List.of(more));
        return run(args.toArray(new String[0]));
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return JsonMapper.builder().build().readTree(ran.out());
    }

    private static double sum(JsonNode load, String product) {
        double sum = 0;
        for (JsonNode item : load.get("items")) {
            if (item.get("product").asString().equals(product)) {
                sum += item.get("amount").asDouble();
            }
        }
        return sum;
    }

    // Source: arithmetic by hand: 147 ac x 15 gal/ac in three loads of 735 gal; 490 fl oz, 1.8375 gal, 62.475 lb.
    @Test
    void prints_loads_with_amounts_units_order_and_reasons() {
        JsonNode plan = json(run("--area", "147 ac", "--rate", "15 gal/ac", "--tank", "980 gal", "--json"));
        assertThat(plan.get("loads")).hasSize(3);
        JsonNode load = plan.get("loads").get(0);
        assertThat(load.propertyNames()).startsWith("volume_gal", "area_ac", "items");
        assertThat(load.get("volume_gal").asDouble()).isEqualTo(735);
        assertThat(load.get("area_ac").asDouble()).isEqualTo(49);
        List<String> products = new ArrayList<>();
        for (JsonNode item : load.get("items")) {
            products.add(item.get("product").asString());
            assertThat(item.get("order").asInt()).isEqualTo(products.size());
            assertThat(item.get("why").asString()).isNotBlank();
        }
        assertThat(products).containsExactly("water", "AMS", "Demo F1", "Demo I1", "Demo Spreader", "water");
        assertThat(sum(load, "Demo F1")).isEqualTo(490);
        assertThat(load.get("items").get(2).get("unit").asString()).isEqualTo("fl oz");
        assertThat(sum(load, "Demo Spreader")).isEqualTo(1.8375);
        assertThat(sum(load, "AMS")).isEqualTo(62.475);
        assertThat(sum(load, "water")).isCloseTo(724.0, within(0.3));
    }

    @Test
    void full_loads_leave_a_rest() {
        JsonNode plan =
                json(run("--area", "147 ac", "--rate", "15 gal/ac", "--tank", "1000 gal", "--split", "full", "--json"));
        assertThat(plan.get("loads").get(2).get("volume_gal").asDouble()).isEqualTo(205);
        assertThat(plan.get("loads").get(2).get("area_ac").asDouble()).isCloseTo(13.67, within(0.005));
    }

    @Test
    void metric_units_all_through() {
        JsonNode plan = json(
                run("--area", "59.49 ha", "--rate", "140 L/ha", "--tank", "3700 L", "--units", "metric", "--json"));
        JsonNode load = plan.get("loads").get(0);
        assertThat(load.propertyNames()).startsWith("volume_l", "area_ha", "items");
        for (JsonNode item : load.get("items")) {
            assertThat(item.get("unit").asString()).isIn("L", "kg");
        }
        assertThat(load.get("volume_l").asDouble()).isCloseTo(59.49 * 140 / 3, within(1e-4));
    }

    // Source: extension density tables: 40 lb N/ac of 32 % UAN is 11.30 gal/ac.
    @Test
    void nitrogen_solution_goes_on_alone() throws IOException {
        Files.writeString(recipe, "product,rate,rate_unit,form\nUAN 32,40,lb N/ac,SL\n");
        JsonNode plan = json(run("--area", "72 ac", "--tank", "1200 gal", "--json"));
        assertThat(plan.get("loads").get(0).get("items")).hasSize(1);
        assertThat(sum(plan.get("loads").get(0), "UAN 32")).isCloseTo(72 * 11.302, within(0.2));
    }

    @Test
    void the_sheet_reads_in_order_with_part_load_and_cautions() {
        Ran ran = run("--area", "147 ac", "--rate", "15 gal/ac", "--tank", "980 gal", "--field", "North 80");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("Load 1 of 3, North 80: 735 gal for 49 ac at 15 gal/ac")
                .contains("490 fl oz (3.83 gal)")
                .contains("For each 100 gal moved to another rig 6.67 ac and")
                .contains("The label is the law")
                .contains("Never enter a tank");
    }

    @Test
    void wrong_input_leaves_with_2_and_names_file_row_and_column() throws IOException {
        Files.writeString(recipe, "product,rate,rate_unit,form\nDemo G1,10,lb/ac,GR\nDemo F1,x,fl oz/ac,SC\n");
        Ran ran = run("--area", "72 ac", "--rate", "15 gal/ac", "--tank", "1200 gal", "--json");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("tassel.csv, row 2, column form").contains("tassel.csv, row 3, column rate");
    }

    @Test
    void missing_and_impossible_arguments_leave_with_2() {
        assertThat(run("--area", "72 ac", "--rate", "15 gal/ac").err()).contains("--tank");
        assertThat(run("--area", "72", "--rate", "15 gal/ac", "--tank", "1200 gal")
                        .err())
                .contains("--area");
        assertThat(run("--area", "72 ac", "--rate", "15 gal/ac", "--tank", "1200 gal", "--split", "odd")
                        .err())
                .contains("expected equal or full");
        assertThat(run("--area", "-1 ac", "--rate", "15 gal/ac", "--tank", "1200 gal")
                        .exit())
                .isEqualTo(2);
        assertThat(run("--area", "72 ac", "--tank", "1200 gal").err()).contains("Give the rate");
    }

    /** Source: dilution of a well-mixed volume; the AMS formula of state weed guides; all worked by hand. */
    @Test
    void water_tender_jar_and_cleanout_are_added_to_the_answer() {
        JsonNode json = json(run(
                "--area",
                "147 ac",
                "--rate",
                "15 gal/ac",
                "--tank",
                "980 gal",
                "--heel",
                "5 gal",
                "--json",
                "--water",
                "Ca 120, Mg 40, Na 30, K 5, Fe 0.5",
                "--tender",
                "4000 gal",
                "--rigs",
                "4"));
        assertThat(json.get("water").get("ammonium_sulfate_lb_100_gal").asDouble())
                .isCloseTo(1.821, within(.0005));
        assertThat(json.get("water").get("hard").asBoolean()).isTrue();
        assertThat(json.get("tender").get("trips").asInt()).isEqualTo(1);
        assertThat(json.get("jar_test").get("volume_ml").asDouble()).isEqualTo(500);
        for (JsonNode item : json.get("jar_test").get("items")) {
            if (item.get("product").asString().equals("Demo F1")) {
                assertThat(item.get("amount").asDouble()).isCloseTo(2.604, within(.0005));
            }
        }
        assertThat(json.get("cleanout").get("rinses").asInt()).isEqualTo(3);
        assertThat(json.get("cleanout").get("aim_is").asString()).isEqualTo("assumption");
        assertThat(json.get("mix").get("stop").asBoolean()).isFalse();
    }

    @Test
    void with_a_crop_the_labels_of_the_farm_order_bind_and_forbid() {
        Ran early = onCorn("V12");
        assertThat(early.exit()).as(early.err()).isZero();
        assertThat(early.out())
                .contains("Do not mix: Surfactant or oil")
                .contains("hours until re-entry (REI): 24 h (Demo I1)")
                .contains("days before harvest (PHI): 30 days (Demo F1)");
        JsonNode tassel = json(onCorn("R1", "--json"));
        assertThat(tassel.get("mix").get("stop").asBoolean()).isFalse();
        assertThat(tassel.get("mix").get("limits")).isNotEmpty();
        Ran wrong = onCorn("Z30");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("--stage", "VE, V1 to V24");
        Ran water = run("--area", "40 ac", "--rate", "15 gal/ac", "--tank", "980 gal", "--water", "soft");
        assertThat(water.exit()).isEqualTo(2);
        assertThat(water.err()).contains("--water", "soft");
    }
}
