// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.Main;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.web.Fixture;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.exchange.FolderWeather;
import org.earleaf.farm.Farm;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands over a real folder and store; the answers of the day are a fixture's. */
class CommandsTest {
    @TempDir
    Path temp;

    private Path folder;
    private String db = "";

    private static final Wiring.FolderReader FOLDERS = new Wiring.FolderReader() {
        @Override
        public Farm farm(Path folder) {
            return FarmFolder.read(folder);
        }

        @Override
        public FolderWeather weather(Path folder) {
            return FarmFolder.readWeather(folder);
        }
    };

    @BeforeEach
    void makeFolder() throws Exception {
        folder = Files.createDirectory(temp.resolve("farm"));
        db = temp.resolve("earleaf.db").toString();
        write(
                "farm.csv",
                "key,value\nname,Tern Hollow Farm\nlatitude,41.8\nlongitude,-93.4\nelevation_ft,1000\n"
                        + "time_zone,America/Chicago\ncorn_price_usd_bu,4.5\n");
        write(
                "fields.csv",
                "field,zone,area_ac,crop,planted,relative_maturity_d,population_ac,row_spacing_in,previous_crop\n"
                        + "Mill Eighty,,80,corn,2026-05-04,108,33000,30,corn\nBeans,,40,soybean,2026-05-20,100,140000,15,corn\n");
        write(
                "soil.csv",
                "field,zone,top_in,bottom_in,sand_pct,clay_pct,om_pct,ph\nMill Eighty,,0,60,22,24,3,6.5\nBeans,,0,60,22,24,3,6.5\n");
        weather(5, 30, "0.16");
        write(
                "passes.csv",
                "field,date,product,rate,rate_unit,placement,made,planned\n"
                        + "Mill Eighty,2026-05-04,UAN 32,60,lb N/ac,broadcast,yes,\nMill Eighty,2026-06-30,UAN 32,40,lb N/ac,row-base dribble,,yes\n");
    }

    private void write(String name, String text) throws Exception {
        Files.writeString(folder.resolve(name), text);
    }

    private void weather(int month, int days, String rain) throws Exception {
        StringBuilder text = new StringBuilder("date,tmax_f,tmin_f,rain_in\n");
        for (int day = 1; day <= days; day++) {
            text.append("2026-%02d-%02d,80,60,%s%n".formatted(month, day, rain));
        }
        write("weather.csv", text.toString());
    }

    private Ran run(String... args) {
        Wiring wiring = new Wiring(
                FOLDERS,
                (farm, on, hindsight) -> new Toy(farm, new Fixture()),
                Clock.fixed(Instant.parse("2026-07-01T03:00:00Z"), ZoneOffset.UTC));
        return Ran.of(Main.commandLine(wiring), args);
    }

    private Ran ok(String... args) {
        Ran ran = run(args);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        return ran;
    }

    private static JsonNode json(Ran ran) {
        return JsonMapper.shared().readTree(ran.out());
    }

    private static void keys(JsonNode object, String... names) {
        assertThat(object.propertyNames()).contains(names);
    }

    private String[] on(String... args) {
        return Stream.concat(Stream.of(args), Stream.of("--farm", db)).toArray(String[]::new);
    }

    private Ran imported() {
        return ok(on("import", "--folder", folder.toString()));
    }

    @Test
    void without_a_command_all_commands_are_listed() {
        assertThat(ok().out())
                .contains(
                        "demo", "init", "import", "serve", "morning", "field", "options", "rig", "load", "read",
                        "record");
        assertThat(ok("--version").out()).startsWith("earleaf ");
    }

    @Test
    void an_empty_database_is_made_once_and_asks_for_a_farm() {
        ok(on("init"));
        assertThat(run(on("init")).exit()).isEqualTo(2);
        Ran morning = run(on("morning"));
        assertThat(morning.exit()).isEqualTo(2);
        assertThat(morning.err()).contains("earleaf import --folder");
    }

    @Test
    void a_folder_comes_in_and_again_and_tells_what_is_different() throws Exception {
        assertThat(imported().out())
                .contains("Imported Tern Hollow Farm")
                .contains("2 passes")
                .contains("30 weather days");
        assertThat(imported().out()).contains("Nothing new").doesNotContain("Different");
        weather(5, 31, "0.25");
        Ran again = ok(on("import", "--folder", folder.toString(), "--json"));
        JsonNode report = json(again);
        keys(report, "farm", "first", "added", "weather_from", "weather_to", "differences", "flags");
        assertThat(report.get("added").get("weather days").asInt()).isEqualTo(1);
        assertThat(report.get("differences").get(0).asString())
                .isEqualTo("weather 2026-05-01: rain 0.16 in -> 0.25 in");
    }

    @Test
    void the_folder_of_another_farm_is_refused() throws Exception {
        imported();
        for (String name : List.of("farm.csv", "fields.csv", "soil.csv", "passes.csv")) {
            String text = Files.readString(folder.resolve(name));
            write(
                    name,
                    text.replace("Tern Hollow", "Elder Bend")
                            .replace("Mill Eighty", "Long Forty")
                            .replace("Beans", "Peas"));
        }
        Ran ran = run(on("import", "--folder", folder.toString()));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("Elder Bend Farm").contains("another database");
        assertThat(farm().name()).isEqualTo("Tern Hollow Farm");
    }

    @Test
    void a_folder_of_weather_alone_brings_yesterday() throws Exception {
        imported();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path f : files.toList()) {
                Files.delete(f);
            }
        }
        write("weather.csv", "date,tmax_f,tmin_f,rain_in\n2026-05-31,80,60,1.1\n");
        assertThat(ok(on("import", "--folder", folder.toString())).out())
                .contains("New: 1 weather day.")
                .contains("to May 31, 2026");
    }

    @Test
    void a_wrong_folder_leaves_with_2_says_where_and_stores_nothing() throws Exception {
        write(
                "soil.csv",
                "field,zone,top_in,bottom_in,sand_pct,clay_pct,om_pct,ph\nMill Eighty,,0,60,80,40,3,6.5\nBeans,,0,60,22,24,3,6.5\n");
        Ran ran = run(on("import", "--folder", folder.toString()));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("soil.csv").contains("row 2");
        assertThat(Path.of(db)).doesNotExist();
        makeGood();
        imported();
        Farm before = farm();
        write("weather.csv", "date,tmax_f,tmin_f,rain_in\n2026-06-01,50,60,1\n");
        assertThat(run(on("import", "--folder", folder.toString())).exit()).isEqualTo(2);
        assertThat(farm()).isEqualTo(before);
    }

    private void makeGood() throws Exception {
        write(
                "soil.csv",
                "field,zone,top_in,bottom_in,sand_pct,clay_pct,om_pct,ph\nMill Eighty,,0,60,22,24,3,6.5\nBeans,,0,60,22,24,3,6.5\n");
    }

    private Farm farm() {
        try (FarmStore store = FarmStore.open(Path.of(db))) {
            return store.farm();
        }
    }

    @Test
    void wrong_arguments_leave_with_2_and_say_what_to_do() {
        imported();
        assertThat(run(on("field")).err()).contains("--all");
        assertThat(run(on("field", "Mil Eighty")).err()).contains("one of Mill Eighty, Beans");
        assertThat(run(on("read", "--field", "Mill Eighty", "--kind", "nitrate", "--value", "12"))
                        .err())
                .contains("ppm");
        assertThat(run(on("read", "--field", "Mill Eighty")).err()).contains("--kind");
        assertThat(run(on("record", "show", "7")).err()).contains("record list");
        assertThat(run("read", "--folder", folder.toString(), "--field", "x", "--kind", "rain", "--value", "1 in")
                        .err())
                .contains("database");
        assertThat(run("record", "--farm", db, "list").err()).contains("earleaf record list --farm FILE");
        assertThat(run("morning", "--farm", temp.resolve("none.db").toString()).err())
                .contains("no such file");
        assertThat(run("import", "--farm", db).err()).contains("--folder DIR");
        for (String[] args :
                new String[][] {on("field"), on("field", "Mil"), on("record", "show", "7"), {"nonsense"}}) {
            assertThat(run(args).exit()).isEqualTo(2);
        }
        assertThat(farm().readings()).isEmpty();
    }

    @Test
    void a_reading_is_kept() {
        imported();
        JsonNode kept = json(ok(on(
                "read",
                "--field",
                "mill eighty",
                "--kind",
                "nitrate",
                "--value",
                "12 ppm",
                "--on",
                "2026-06-20",
                "--json")));
        assertThat(kept.get("entered").asString()).isEqualTo("12 ppm");
        assertThat(farm().readings()).hasSize(1);
        assertThat(ok(on("read", "--field", "Mill Eighty", "--kind", "rain", "--value", ".5 in", "--on", "2026-05-20"))
                        .out())
                .contains("Kept: Mill Eighty, Wednesday, May 20, 2026: rain .5 in");
    }

    @Test
    void a_pass_is_marked_made_shown_corrected_and_verified() {
        imported();
        assertThat(ok(on("record")).out()).contains("None yet").contains("--pass 'passes.csv row 3'");
        JsonNode filed = json(ok(
                on("record", "made", "--pass", "passes.csv row 3", "--by", "A. Grower", "--rig", "highboy", "--json")));
        keys(filed, "number", "pass", "field", "area", "products", "applicator", "filed", "hash", "late");
        assertThat(filed.get("date").asString())
                .as("the farm's day, not the machine's")
                .isEqualTo("2026-06-30");
        assertThat(filed.get("area").asDouble()).isEqualTo(80);
        assertThat(filed.get("products").get(0).get("amount_unit").asString()).isEqualTo("gal");
        // 40 lb/ac x 80 ac / (.32 x 11.06 lb/gal) by hand
        assertThat(filed.get("products").get(0).get("amount").asDouble()).isCloseTo(904.2, within(.05));
        Ran twice = run(on("record", "made", "--pass", "passes.csv row 3", "--by", "A. Grower"));
        assertThat(twice.exit()).isEqualTo(2);
        assertThat(twice.err()).contains("filed already");
        ok(on("record", "correct", "1", "--why", "the gauge said less", "--amount", "880 gal", "--by", "A. Grower"));
        assertThat(ok(on("record", "show", "2")).out())
                .contains("Corrects record 1: the gauge said less")
                .contains("880 gal");
        assertThat(ok(on("record", "verify")).out()).contains("2 records, all as filed");
        Path sheets = folder.resolve("sheets");
        assertThat(ok(on("record", "export", "--pdf", sheets.toString(), "--paper", "a4"))
                        .out())
                .contains("2 sheets written");
        assertThat(sheets.resolve("record 2.pdf")).isNotEmptyFile();
        assertThat(run(on("record", "export", "--pdf", sheets.toString())).err())
                .contains("nothing was written");
        assertThat(run(on("record", "verify", "--head", "ab")).exit()).isEqualTo(2);
        assertThat(json(ok(on("record", "list", "--json"))).get("records")).hasSize(2);
    }

    /** Before, the name on the record was looked up among today's and refused. */
    @Test
    void a_record_is_corrected_by_the_names_on_it_whatever_they_are_by_now() {
        imported();
        ok(on("record", "made", "--pass", "passes.csv row 3", "--by", "A. Grower"));
        String product = farm().passes().stream()
                .filter(p -> p.id().equals("passes.csv row 3"))
                .findFirst()
                .orElseThrow()
                .product();
        try (FarmStore store = FarmStore.open(Path.of(db))) {
            store.renameField("Mill Eighty", "Long Eighty");
        }
        String[] right = {
            "record", "correct", "1", "--why", "less", "--field", "Mill Eighty", "--product", product, "--rate"
        };
        Ran more =
                run(on(Stream.concat(Stream.of(right), Stream.of("35 lb N/ac", "--area", "900 ac", "--by", "A. Grower"))
                        .toArray(String[]::new)));
        assertThat(more.err()).contains("80 ac");
        ok(on(Stream.concat(Stream.of(right), Stream.of("35 lb N/ac", "--by", "A. Grower"))
                .toArray(String[]::new)));
        assertThat(farm().passes())
                .filteredOn(p -> p.id().equals("passes.csv row 3"))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.field()).isEqualTo("Long Eighty");
                    assertThat(p.rate().entered()).isEqualTo(35);
                });
        assertThat(run(on("record", "correct", "1", "--why", "less", "--field", "Away", "--by", "A. Grower"))
                        .err())
                .contains("Away");
    }

    @Test
    void an_incomplete_record_is_refused_and_the_pass_stays_planned() {
        imported();
        Ran ran = run(
                on("record", "made", "--pass", "passes.csv row 3", "--by", "A. Grower", "--registration", "DEMO-0001"));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("location").contains("certification");
        assertThat(json(ok(on("record", "list", "--json"))).get("planned")).hasSize(1);
    }

    @Test
    void the_week_is_planned_and_planned_anew_when_it_rains_a_rig_breaks_or_a_pass_is_pinned() {
        imported();
        assertThat(ok(on("plan")).out())
                .contains("The week from Tuesday, June 30, 2026", "highboy, out at 6:00 am", "Done in", "What it costs")
                .contains("The label is the law");
        JsonNode week = json(ok(on("plan", "--json")));
        assertThat(week.get("days")).hasSize(7);
        JsonNode first = week.get("jobs").get(0);
        String day = first.get("date").asString();
        assertThat(first.get("start").asString()).startsWith(day + "T");
        assertThat(first.get("chance_it_is_done").asDouble()).isBetween(0.0, 1.0);
        JsonNode rain = json(ok(on("plan", "--json", "--rain", day)));
        rain.get("jobs").forEach(j -> assertThat(j.get("date").asString()).isNotEqualTo(day));
        assertThat(rain.get("changed").get("forced").get(0).get("was").asString())
                .startsWith("highboy on ");
        assertThat(ok(on("plan", "--down", "highboy@" + day)).out()).contains("Has to move: ");
        assertThat(ok(on("plan", "--done", "Mill Eighty")).out()).contains("less than before");
        JsonNode pinned = json(ok(on("plan", "--json", "--pin", "Mill Eighty, nitrogen=highboy@2026-07-04")));
        assertThat(pinned.get("jobs").toString()).contains("Mill Eighty");
        assertThat(run(on("plan", "--down", "highboy")).err()).contains("RIG@DAY");
        assertThat(run(on("plan", "--pin", "Mill Eighty")).err()).contains("PASS=RIG@DAY");
        assertThat(run("plan", "--instance", "../docs/plan-example", "--rain", day)
                        .err())
                .contains("only for a farm's own week");
    }

    @Test
    void the_forms_of_the_answer_follow_what_was_asked() {
        imported();
        assertThat(json(ok(on("field", "Mill Eighty", "--json"))).isObject()).isTrue();
        JsonNode all = json(ok(on("field", "--all", "--json")));
        assertThat(all).hasSize(2);
        assertThat(all.get(1).get("not_modelled").asString()).contains("soybean");
        assertThat(ok(on("field", "Beans")).out()).contains("modelled for corn only");
        assertThat(json(ok("field", "Mill Eighty", "--folder", folder.toString(), "--json"))
                        .isObject())
                .isTrue();
        assertThat(ok(on("morning")).out()).contains("Passes, in order").contains("Caution");
        assertThat(ok(on("options", "Mill Eighty")).out()).contains("what a pass is worth");
        assertThat(ok(on("field", "Mill Eighty", "--units", "metric")).out()).contains("kg/ha");
    }

    @Test
    void a_reader_that_fails_is_told_as_any_wrong_input() {
        Wiring broken = new Wiring(
                FOLDERS,
                (farm, on, hindsight) -> {
                    throw EarleafException.coded("plan.empty", "weather", "");
                },
                Clock.systemUTC());
        imported();
        assertThat(Ran.of(Main.commandLine(broken), on("morning")).exit()).isEqualTo(2);
    }
}
