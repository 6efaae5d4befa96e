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
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.earleaf.load.LoadState;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The life of loads over plain form posts, as a browser without script sends them. */
class LoadsTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private Preview preview = new Preview();
    private Served server = preview.serve();
    private String own = "";

    @BeforeEach
    void start() {
        own = "http://127.0.0.1:" + server.port();
    }

    @AfterEach
    void stop() {
        server.close();
        preview.store().close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(own + path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws IOException, InterruptedException {
        return post(path, form, "");
    }

    private HttpResponse<String> post(String path, Map<String, String> form, String ifMatch)
            throws IOException, InterruptedException {
        String body = form.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(own + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", own)
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return CLIENT.send(request.build(), BodyHandlers.ofString());
    }

    private Map<String, String> form(String area) {
        return new TreeMap<>(Map.ofEntries(
                Map.entry("recipe", FixtureShelf.RECIPE),
                Map.entry("place", "mill-eighty"),
                Map.entry("rig", "tall sprayer"),
                Map.entry("placement", "over the top"),
                Map.entry("date", "2026-06-30"),
                Map.entry("area", area),
                Map.entry("rate", "15 gal/ac"),
                Map.entry("stage", "V10"),
                Map.entry("height", "54 in"),
                Map.entry("harvest", "2026-09-20"),
                Map.entry("droplets", "M"),
                Map.entry("boom", "20 in"),
                Map.entry("speed", "9 mph"),
                Map.entry("water", "200 ft"),
                Map.entry("sensitive", "300 ft"),
                Map.entry("certified", "yes"),
                Map.entry("person", "Ana")));
    }

    private long version(String id) {
        return preview.store().loads().get(id).version();
    }

    private HttpResponse<String> step(String id, String step, String... more) throws IOException, InterruptedException {
        Map<String, String> form = new TreeMap<>(Map.of("person", "Ana", "version", String.valueOf(version(id))));
        for (int k = 0; k < more.length; k += 2) {
            form.put(more[k], more[k + 1]);
        }
        return post("/load/" + id + "/" + step, form);
    }

    /** Every box ticked, on a rig that nobody has caught. */
    private HttpResponse<String> begin(String id) throws IOException, InterruptedException {
        return step(
                id,
                "mix",
                "read",
                "yes",
                "gear",
                "yes",
                "nobody",
                "yes",
                "air",
                "yes",
                "tank",
                "yes",
                "why",
                "to be caught");
    }

    private void mix(String id) throws IOException, InterruptedException {
        assertThat(step(id, "lock").statusCode()).isEqualTo(302);
        assertThat(begin(id).statusCode()).isEqualTo(302);
        for (var line : preview.store().loads().get(id).load().lines()) {
            String code = line.codes().stream().sorted().findFirst().orElseThrow();
            String amount = String.valueOf(line.planned().inUnit());
            String order = String.valueOf(line.order());
            step(id, "key", "order", order, "code", code, "amount", amount);
            assertThat(step(id, "key", "order", order, "code", code, "amount", amount, "person", "Ben")
                            .statusCode())
                    .isEqualTo(302);
        }
        assertThat(step(id, "mixed").statusCode()).isEqualTo(302);
    }

    @Test
    void what_is_known_of_a_load_is_filled_in() throws Exception {
        String page = get("/loads/new?recipe=Leaf+pass&place=mill-eighty&rig=tall+sprayer")
                .body();
        assertThat(page)
                .contains(
                        "Leaf pass on Mill Eighty", "value=\"78.09 ac\"", "value=\"15 gal/ac\"", "value=\"2026-06-30\"")
                .containsPattern("name=\"stage\"[^>]*value=\"V\\d+\"");
    }

    @Test
    void a_load_goes_from_recipe_to_record_by_plain_forms() throws Exception {
        HttpResponse<String> made = post("/loads/new", form("60 ac"));
        assertThat(made.headers().firstValue("Location")).contains("/load/1");
        HttpResponse<String> planned = get("/load/1");
        assertThat(planned.headers().firstValue("ETag")).contains("\"1\"");
        assertThat(planned.body()).contains("600 fl oz (4.69 gal)", "12 fl oz/ac", "within", "Lock it");
        mix("1");
        assertThat(step("1", "empty").statusCode()).isEqualTo(302);
        assertThat(get("/load/1").body()).contains("File this load");
        HttpResponse<String> nothing = step("1", "file");
        assertThat(nothing.statusCode()).isEqualTo(400);
        assertThat(nothing.body()).contains("Give both.");
        HttpResponse<String> filed = step(
                "1",
                "file",
                "start",
                "07:10",
                "end",
                "08:20",
                "wind",
                "6 mph from SW",
                "temperature",
                "75 F",
                "licence",
                "PA-1234",
                "location",
                "section 12");
        assertThat(filed.headers().firstValue("Location")).contains("/records/1");
        assertThat(get("/records/1").body())
                .contains("INVENTED-1", "F1-0426", "PA-1234", "Ana, Ben", "60.0 ac", "labels read");
    }

    @Test
    void a_wrong_jug_is_refused_in_plain_words_and_nothing_is_kept() throws Exception {
        post("/loads/new", form("60 ac"));
        step("1", "lock");
        begin("1");
        HttpResponse<String> wrong = step("1", "key", "order", "1", "code", "INVENTED-2", "amount", "600");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body())
                .contains(">Wrong product at step 1, Demo F1: found the code INVENTED-2", "value=\"INVENTED-2\"");
        assertThat(preview.store().loads().get("1").load().lines().get(0).keys())
                .isEmpty();
        HttpResponse<String> much = step("1", "key", "order", "1", "code", "INVENTED-1", "amount", "650");
        assertThat(much.body()).contains("Measure again, or write why it differs.");
    }

    @Test
    void one_person_alone_turns_the_second_key_after_a_pause_and_is_kept_as_single() throws Exception {
        post("/loads/new", form("60 ac"));
        step("1", "lock");
        begin("1");
        step("1", "key", "order", "1", "code", "INVENTED-1", "amount", "600");
        assertThat(step("1", "key", "order", "1", "code", "F1-0426", "amount", "600")
                        .body())
                .contains("Look away, then read the container and the amount again");
        preview.pass(Duration.ofSeconds(31));
        assertThat(step("1", "key", "order", "1", "code", "F1-0426", "amount", "601")
                        .statusCode())
                .isEqualTo(302);
        assertThat(get("/load/1").body()).contains("one person confirmed both times");
    }

    @Test
    void what_another_load_told_of_a_field_is_a_proposal_that_somebody_looks_at_again() throws Exception {
        String address = "/loads/new?recipe=Leaf+pass&place=mill-eighty&rig=tall+sprayer";
        assertThat(get(address).body()).doesNotContain("name=\"looked\"");
        post("/loads/new", form("20 ac"));
        String proposed = get(address).body();
        assertThat(proposed)
                .contains("value=\"200 ft\"", "are copied from load 1", "name=\"looked\"")
                .doesNotContainPattern("name=\"certified\"[^>]*checked");
        Map<String, String> form = form("20 ac");
        form.put("from", "1");
        HttpResponse<String> refused = post("/loads/new", form);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("as load 1 told them", "then tick the box", "name=\"looked\"");
        form.put("looked", "yes");
        assertThat(post("/loads/new", form).statusCode()).isEqualTo(302);
        assertThat(preview.store().loads().all()).hasSize(2);
    }

    @Test
    void nothing_is_mixed_before_every_box_is_ticked() throws Exception {
        post("/loads/new", form("60 ac"));
        step("1", "lock");
        assertThat(step("1", "mix", "read", "yes", "gear", "yes").statusCode()).isEqualTo(400);
        assertThat(step("1", "mix", "read", "yes", "gear", "yes", "nobody", "yes", "tank", "yes", "why", "x")
                        .statusCode())
                .isEqualTo(400);
        assertThat(preview.store().loads().get("1").load().state()).isEqualTo(LoadState.RESERVED);
    }

    @Test
    void the_second_of_two_editors_gets_both_versions_and_nothing_is_overwritten() throws Exception {
        post("/loads/new", form("60 ac"));
        Map<String, String> first = form("50 ac");
        first.put("version", "1");
        Map<String, String> second = form("40 ac");
        second.put("version", "1");
        second.put("person", "Ben");
        assertThat(post("/load/1/edit", first).statusCode()).isEqualTo(302);
        HttpResponse<String> both = post("/load/1/edit", second);
        assertThat(both.statusCode()).isEqualTo(409);
        assertThat(both.headers().firstValue("ETag")).contains("\"2\"");
        assertThat(both.body())
                .contains(
                        "Nothing of yours was written.",
                        "<td>40.0 ac</td>",
                        "<td>50.0 ac</td>",
                        "Put mine in its place")
                .contains("Ana: changed");
        assertThat(preview.store().loads().get("1").load().grounds().get(0).area_ha())
                .isBetween(20.2, 20.3);
        // Having seen both, the second may put his own in its place.
        second.put("version", "2");
        assertThat(post("/load/1/edit", second).statusCode()).isEqualTo(302);
        assertThat(version("1")).isEqualTo(3);
    }

    @Test
    void a_change_carries_its_version_in_a_header_too_and_without_one_is_refused() throws Exception {
        post("/loads/new", form("60 ac"));
        assertThat(post("/load/1/lock", Map.of("person", "Ana"), "\"7\"").statusCode())
                .isEqualTo(412);
        assertThat(post("/load/1/lock", Map.of("person", "Ana")).statusCode()).isEqualTo(400);
        assertThat(post("/load/1/lock", Map.of("person", "Ana"), "\"1\"").statusCode())
                .isEqualTo(302);
    }

    @Test
    void a_part_goes_to_a_second_sprayer_with_its_share() throws Exception {
        post("/loads/new", form("60 ac"));
        mix("1");
        HttpResponse<String> handed = step("1", "hand", "volume", "300 gal", "rig", "pull sprayer");
        assertThat(handed.headers().firstValue("Location")).contains("/load/2");
        assertThat(get("/load/2").body()).contains("Taken over from load 1: 300 gal.", "20.0 ac", "Tank empty");
        assertThat(get("/load/1").body()).contains("40.0 ac");
    }

    @Test
    void two_loads_that_are_above_the_label_together_are_not_both_locked() throws Exception {
        // 10 fl oz/ac twice is within 24 a season; a third time it is not.
        for (int k = 1; k <= 3; k++) {
            post("/loads/new", form("20 ac"));
        }
        assertThat(step("1", "lock").statusCode()).isEqualTo(302);
        assertThat(step("2", "lock").statusCode()).isEqualTo(302);
        HttpResponse<String> third = step("3", "lock");
        assertThat(third.statusCode()).isEqualTo(400);
        assertThat(third.body()).contains("The label is the law: change the load or drop it.");
    }

    @Test
    void nitrogen_loads_are_kept_from_the_sheet_of_a_proposed_pass() throws Exception {
        HttpResponse<String> kept = post("/loads/mill-eighty/keep", Map.of("choice", ""));
        assertThat(kept.headers().firstValue("Location")).contains("/load/1");
        String page = get("/load/1").body();
        assertThat(page)
                .containsPattern("UAN 32, \\d+ lb N/ac, at the row base")
                .doesNotContain("What labels say");
        assertThat(get("/loads").body()).contains("Next</span>: lock it, load 1, Mill Eighty.");
    }

    @Test
    void a_dropped_load_gives_everything_back() throws Exception {
        post("/loads/new", form("60 ac"));
        step("1", "lock");
        assertThat(preview.store().loads().drawn("1")).isNotEmpty();
        assertThat(step("1", "drop", "why", "rain").statusCode()).isEqualTo(302);
        assertThat(preview.store().loads().drawn("1")).isEmpty();
    }
}
