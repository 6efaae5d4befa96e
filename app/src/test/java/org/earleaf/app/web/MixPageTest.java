// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.store.LoadStore;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.TankLoad;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is to be known of a mix before it is poured, over plain form posts: rules, jar, tank, water, calibration. */
class MixPageTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Preview preview = new Preview();
    private final Served server = preview.serve();
    private final String own = "http://127.0.0.1:" + server.port();
    private LoadStore loads = preview.store().loads();

    /** Loads 1 to 6: planned, locked, mixing, mixed, empty, filed. */
    @BeforeEach
    void seed() {
        SeededLoads.in(preview);
        loads = preview.store().loads();
    }

    @AfterEach
    void stop() {
        server.close();
        preview.store().close();
    }

    private String get(String path) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(own + path)).build(), BodyHandlers.ofString())
                .body();
    }

    private HttpResponse<String> step(String id, String step, String... fields)
            throws IOException, InterruptedException {
        TreeMap<String, String> form = new TreeMap<>();
        form.put("version", String.valueOf(loads.get(id).version()));
        form.put("person", "Ana");
        for (int k = 0; k < fields.length; k += 2) {
            form.put(fields[k], fields[k + 1]);
        }
        StringBuilder body = new StringBuilder();
        form.forEach((name, value) -> body.append(body.isEmpty() ? "" : "&")
                .append(name)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(own + "/load/" + id + "/" + step))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Origin", own)
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                BodyHandlers.ofString());
    }

    private String sheet(String id) throws IOException, InterruptedException {
        byte[] pdf = CLIENT.send(
                        HttpRequest.newBuilder(URI.create(own + "/load/" + id + "/sheet.pdf"))
                                .build(),
                        BodyHandlers.ofByteArray())
                .body();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    /** A planned load whose product is a fungicide, with a surfactant in the tank, at V10. */
    private void fungicide(String id) {
        TankLoad like = loads.get("1").load();
        List<LoadLine> lines = like.lines().stream()
                .map(l -> l.product().equals("Demo F1")
                        ? RecordCopy.with(l, "goods.classes", Set.of("SC", "fungicide"))
                        : l)
                .toList();
        loads.add(RecordCopy.with(RecordCopy.with(like, "lines", lines), "ticket.id", id));
    }

    @Test
    void a_rule_that_stops_the_mix_is_set_aside_by_the_agronomist_alone_and_stays_on_the_sheet() throws Exception {
        fungicide("7");
        assertThat(get("/load/7"))
                .contains("do not mix", "has arrested ears", "Only the agronomist may set this aside");
        assertThat(step("7", "lock").statusCode()).isEqualTo(400);
        assertThat(sheet("7")).contains("DO NOT MIX.", "has arrested ears");
        HttpResponse<String> grower =
                step("7", "override", "rule", "C02", "role", "grower", "why", "I know", "person", "Ana");
        assertThat(grower.statusCode()).isEqualTo(400);
        assertThat(grower.body()).contains("Override of rule C02: found grower; expected the agronomist, by name.");
        assertThat(step("7", "override", "rule", "C02", "role", "agronomist", "why", "2 rows", "person", "Cleo")
                        .statusCode())
                .isEqualTo(302);
        String aside = "Rule C02 set aside by Cleo, agronomist: 2 rows.";
        assertThat(get("/load/7")).contains("set aside", aside).doesNotContain("may set this aside");
        assertThat(step("7", "lock").statusCode()).isEqualTo(302);
        assertThat(sheet("7")).contains("Set aside. " + aside);
        assertThat(step("1", "override", "rule", "C11", "role", "agronomist", "why", "2 rows")
                        .body())
                .contains("a rule that stops this load");
    }

    @Test
    void a_jar_test_is_entered_with_what_it_showed_and_one_that_failed_stops_the_mix() throws Exception {
        // No label of the shelf says what goes in first: the order is the usual one, and said to be no more.
        assertThat(get("/load/2")).doesNotContain("Its label wants");
        assertThat(get("/load/2")).contains("In 500 mL: ", " mL Demo F1", "Grains, gel", "Keep the jar test");
        assertThat(step("2", "note", "kind", "jar", "outcome", "failed", "water", "", "said", "grains")
                        .body())
                .contains("Jar test: found no water named");
        step("2", "note", "kind", "jar", "outcome", "failed", "water", "well", "said", "grains");
        assertThat(get("/load/2"))
                .contains("Jar test failed (Ana, well): grains.", "Nothing of this mix goes in the tank.");
        assertThat(begin("2", "caught soon").body()).contains("Do not pour it: change the mix");
        assertThat(sheet("2")).contains("JAR TEST FIRST.", "Jar test failed (Ana, well): grains");
        step("2", "note", "kind", "jar", "outcome", "remixes", "water", "tank", "said", "parts, turns back");
        assertThat(get("/load/2")).contains("Jar test separates, and remixes (Ana, tank): parts, turns back.");
        // Load 4 is in that tank.
        assertThat(begin("2", "caught soon").body())
                .doesNotContain("Do not pour it")
                .contains("load 4, mixed");
    }

    @Test
    void what_a_label_says_on_the_order_is_given_as_the_reason() throws Exception {
        var i1 = loads.labels().find("Demo I1", "corn").orElseThrow();
        loads.keep(RecordCopy.with(i1, "inTank.after", Set.of("sc")));
        assertThat(get("/load/2").split("Its label wants Demo F1 in before it\\.", -1))
                .hasSize(2);
    }

    private HttpResponse<String> begin(String id, String why) throws IOException, InterruptedException {
        return step(id, "mix", "read", "yes", "gear", "yes", "nobody", "yes", "air", "yes", "tank", "yes", "why", why);
    }

    @Test
    void a_rig_whose_calibration_does_not_hold_goes_out_only_with_a_reason() throws Exception {
        loads.applied("4", loads.get("4").version(), "Ana", preview.now());
        assertThat(get("/load/2"))
                .contains("The calibration of the tall sprayer does not hold: no catch test of its outlets.");
        assertThat(begin("2", "").body()).contains("Calibration of the tall sprayer: found no catch test");
        assertThat(loads.get("2").load().state()).isEqualTo(LoadState.RESERVED);
        assertThat(begin("2", "caught in spring").statusCode()).isEqualTo(302);
        assertThat(get("/load/2")).contains("Without a calibration that holds, by Ana: caught in spring");
        // The highboy was caught at the end of the seed.
        TankLoad high =
                RecordCopy.with(RecordCopy.with(loads.get("1").load(), "ticket.rig", "highboy"), "ticket.id", "8");
        loads.add(high);
        loads.reserve("8", 1, "Ana", preview.now());
        assertThat(get("/load/8")).doesNotContain("does not hold");
        preview.pass(Duration.ofDays(31));
        assertThat(get("/load/8")).contains("the catch test is 31 days old; it holds for 30 days (assumption)");
    }

    @Test
    void a_tank_that_held_something_else_is_cleaned_first_with_the_caution_on_bleach() throws Exception {
        TankLoad other = RecordCopy.with(loads.get("1").load(), "ticket.id", "9");
        LoadLine spreader = other.lines().get(2);
        other = RecordCopy.with(
                RecordCopy.with(other, "ticket.rig", "highboy"),
                "lines",
                List.of(RecordCopy.with(spreader, "order", 1)));
        loads.add(other);
        loads.reserve("9", 1, "Ana", preview.now());
        String page = get("/load/9");
        assertThat(page)
                .contains(
                        "Clean the tank first",
                        "The tank last held Demo F1 and Demo I1 (load 6).",
                        "Never bleach with ammonia",
                        "Note the cleanout");
        assertThat(sheet("9")).contains("Clean first. The tank last held", "Never bleach with ammonia");
        assertThat(begin("9", "x").body()).contains("Clean it out, and note who did it and how.");
        assertThat(step("9", "note", "kind", "clean", "said", "").statusCode()).isEqualTo(400);
        step("9", "note", "kind", "clean", "said", "cleaner of the label, 3 rinses", "person", "Ben");
        assertThat(get("/load/9")).doesNotContain("Clean the tank first");
        assertThat(begin("9", "x").statusCode()).isEqualTo(302);
    }

    // Worked by hand from the published coefficients: 0.009 Ca + 0.014 Mg lb/100 gal = 1.64; hardness 464 ppm.
    @Test
    void a_water_test_is_kept_and_says_the_conditioner_of_every_load() throws Exception {
        assertThat(get("/load/1")).contains("Water: not tested.");
        assertThat(step("1", "note", "kind", "water", "water", "yard well", "said", "Ca much")
                        .body())
                .contains("Water test: found Ca much");
        step("1", "note", "kind", "water", "water", "yard well", "said", "Ca 120, Mg 40");
        assertThat(get("/load/1")).contains("Yard well: hardness 464 ppm as CaCO3: hard", "In this load 3.69 lb ");
        assertThat(sheet("1")).contains("Water. Yard well: hardness 464 ppm");
    }
}
