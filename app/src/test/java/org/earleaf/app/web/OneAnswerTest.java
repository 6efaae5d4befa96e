// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.Main;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Dates;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The plan is the answer: no two pages or commands name another day, rate or rig for one pass. */
class OneAnswerTest {
    /** What is said of a field's nitrogen pass. */
    private record Told(LocalDate day, int rate_lbAc, String rig) {}

    private static JsonNode command(Wiring wiring, String... args) {
        StringWriter out = new StringWriter();
        int exit = Main.commandLine(wiring).setOut(new PrintWriter(out, true)).execute(args);
        assertThat(exit).isZero();
        return JsonMapper.shared().readTree(out.toString());
    }

    /** By field, from a list of passes; only those with hours of the week. */
    private static Map<String, Told> told(JsonNode passes) {
        Map<String, Told> all = new TreeMap<>();
        for (JsonNode p : passes) {
            if (p.get("kind").asString().equals("nitrogen") && !p.get("start").isNull()) {
                all.put(
                        p.get("field").asString(),
                        new Told(
                                LocalDate.parse(p.get("date").asString()),
                                (int) Math.round(p.get("rate").asDouble()),
                                p.get("rig").asString()));
            }
        }
        return all;
    }

    private static String page(String at) throws Exception {
        String body = "being worked out";
        while (body.contains("being worked out")) {
            body = HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(at)).build(), BodyHandlers.ofString())
                    .body();
            Thread.sleep(50);
        }
        return body;
    }

    /** The pieces of a page, by an element's name, that speak of a field. */
    private static List<String> pieces(String page, String element, String field) {
        Matcher each =
                Pattern.compile("(?s)<" + element + "[ >].*?</" + element + ">").matcher(page);
        List<String> all = new ArrayList<>();
        while (each.find()) {
            String text = each.group().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
            if (text.contains(field)) {
                all.add(text);
            }
        }
        return all;
    }

    @Test
    void pages_and_commands_name_the_same_day_rate_and_rig() throws Exception {
        SmallDemo demo = new SmallDemo();
        String folder = demo.folder().toString();
        String on = SmallDemo.DAY.toString();
        Map<String, Told> plan = told(command(demo.wiring(), "plan", "--folder", folder, "--on", on, "--json")
                .get("jobs"));
        assertThat(plan).isNotEmpty();
        assertThat(told(command(demo.wiring(), "morning", "--folder", folder, "--on", on, "--json")
                        .get("passes")))
                .isEqualTo(plan);
        try (Serving serving = Serving.onTrial(demo.wiring(), demo.folder(), Optional.of(SmallDemo.DAY))) {
            String said = serving.start("127.0.0.1", 0);
            String home = said.substring(said.indexOf("http")).strip().replaceAll("/$", "");
            Map<String, String> where = Map.of("/", "article", "/rigs", "tr", "/loads", "tr", "/plan", "tr");
            for (Map.Entry<String, String> each : where.entrySet()) {
                String page = page(home + each.getKey());
                plan.forEach((field, told) -> says(each.getKey(), pieces(page, each.getValue(), field), told));
            }
            String calendar = page(home + "/calendar");
            plan.forEach((field, told) -> assertThat(pieces(calendar, "tr", field))
                    .as("/calendar, " + field)
                    .anySatisfy(row ->
                            assertThat(row).contains(Dates.brief(told.day())).contains(told.rate_lbAc() + " lb")));
        }
    }

    private static void says(String path, List<String> pieces, Told told) {
        assertThat(pieces).as(path).anySatisfy(row -> assertThat(row).contains(told.rate_lbAc() + " lb"));
        assertThat(pieces).as(path).allSatisfy(row -> {
            Matcher rate = Pattern.compile("(\\d+) lb N/ac").matcher(row);
            if (rate.find()) {
                assertThat(Integer.parseInt(rate.group(1)))
                        .as(path + ": " + row)
                        .isEqualTo(told.rate_lbAc());
            }
        });
    }
}
