// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.Main;
import org.earleaf.app.desk.Wiring;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A farm whose weather ended some days ago, by command and by page, with the real answers. */
class StaleWeatherTest {
    private static final LocalDate LAST = LocalDate.of(2026, 6, 25);

    @TempDir
    private static Path work;

    private static Wiring wiring;
    private static Path farm;

    private record Ran(int exit, String out, String err) {}

    @BeforeAll
    static void make_a_farm() throws Exception {
        SmallDemo small = new SmallDemo();
        Path weather = small.folder().resolve("weather.csv");
        List<String> rows = Files.readAllLines(weather).stream()
                .filter(row -> row.compareTo(LAST.plusDays(1).toString()) < 0 || row.startsWith("date"))
                .toList();
        Files.write(weather, rows);
        wiring = small.wiring();
        farm = work.resolve("earleaf.db");
        Ran made = run("import", "--folder", small.folder().toString(), "--farm", farm.toString());
        assertThat(made.exit()).as(made.err()).isZero();
    }

    private static Ran run(String... args) {
        CommandLine line = Main.commandLine(wiring);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = line.setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
        return new Ran(exit, out.toString(), err.toString());
    }

    private static Ran morning(LocalDate on, String... more) {
        List<String> args = new ArrayList<>(List.of("morning", "--farm", farm.toString(), "--on", on.toString()));
        args.addAll(List.of(more));
        return run(args.toArray(String[]::new));
    }

    private static HttpResponse<String> page(LocalDate on, String path) throws Exception {
        try (Serving serving = Serving.of(wiring, farm, Optional.of(on))) {
            String said = serving.start("127.0.0.1", 0);
            URI there = URI.create(said.substring(said.indexOf("http")) + path);
            return HttpClient.newHttpClient().send(HttpRequest.newBuilder(there).build(), BodyHandlers.ofString());
        }
    }

    @Test
    void a_gap_up_to_today_is_told_with_both_dates_by_command_and_page() throws Exception {
        LocalDate on = LAST.plusDays(5);
        Ran text = morning(on);
        assertThat(text.exit()).as(text.err()).isZero();
        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("the last observed day is Thursday, June 25, today is Tuesday, June 30.")
                .contains("The 4 days between are filled from earlier years.");
        JsonNode json = JsonMapper.shared().readTree(morning(on, "--json").out());
        assertThat(json.get("weather_last_observed").asString()).isEqualTo("2026-06-25");
        assertThat(json.get("alarms").get(0).asString()).startsWith("Weather is old");
        assertThat(text.out().indexOf("Weather is old")).isLessThan(text.out().indexOf("Passes, in order"));
        assertThat(page(on, "").body())
                .contains("the last observed day is Thursday, June 25, today is Tuesday, June 30.");
    }

    @Test
    void over_ten_days_old_is_refused_with_what_to_do_and_the_records_stay_open() throws Exception {
        LocalDate on = LAST.plusDays(11);
        Ran refused = morning(on, "--json");
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("\"weather.too-old\"", "July 5, 2026", "weather.csv");
        HttpResponse<String> page = page(on, "");
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.body()).contains("data-code=\"weather.too-old\"", "June 25, 2026", "July 5, 2026");
        assertThat(page(on, "field/cemetery-eighty").body()).contains("data-code=\"weather.too-old\"");
        for (String open : List.of("records", "walk", "shelf")) {
            HttpResponse<String> there = page(on, open);
            assertThat(there.statusCode()).as(there.body()).isEqualTo(200);
        }
    }

    @Test
    void a_day_of_another_season_is_refused() throws Exception {
        LocalDate on = LocalDate.of(2024, 6, 20);
        Ran refused = morning(on, "--json");
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("\"weather.another-season\"");
        assertThat(page(on, "").body()).contains("data-code=\"weather.another-season\"");
    }
}
