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
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.earleaf.app.web.view.AgainView;
import org.earleaf.exchange.TypedLabel;
import org.earleaf.label.LabelEntry;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The second look of one who works alone, over plain form posts. */
class AgainPageTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String PAGE = "/shelf/again?product=Demo+F1&crop=soybean";

    private final Preview preview = new Preview();
    private final Served server = preview.serve();
    private final String own = "http://127.0.0.1:" + server.port();

    private static Map<String, String> label() {
        return new TreeMap<>(Map.ofEntries(
                Map.entry("version", "2026-1"),
                Map.entry("season_is", "crop"),
                Map.entry("active1", "demostrobin"),
                Map.entry("content1", "1.2 lb/gal"),
                Map.entry("group1", "FRAC 11"),
                Map.entry("active_season1", "0.26 lb/ac"),
                Map.entry("single", "11.5 fl oz/ac"),
                Map.entry("reentry", "12 h"),
                Map.entry("harvest", "21 days"),
                Map.entry("inversion", "yes"),
                Map.entry("never_with", "AMS, calcium"),
                Map.entry("plant_back", "alfalfa 30 days")));
    }

    @BeforeEach
    void waiting() {
        preview.store()
                .loads()
                .keep(TypedLabel.read(
                        "Demo F1",
                        "soybean",
                        preview.store().farm().products(),
                        AgainView.Typed.of(label()).lines(),
                        "A. Grower",
                        preview.now()));
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

    private HttpResponse<String> type(Map<String, String> form) throws IOException, InterruptedException {
        form.putAll(
                Map.of("product", "Demo F1", "crop", "soybean", "person", form.getOrDefault("person", "A. Grower")));
        String body = form.entrySet().stream()
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return CLIENT.send(
                HttpRequest.newBuilder(URI.create(own + "/shelf/again"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Origin", own)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private boolean counts() {
        return preview.store().loads().labels().find("Demo F1", "soybean").isPresent();
    }

    @Test
    void nothing_of_the_first_entry_is_shown() throws Exception {
        assertThat(get("/shelf")).contains("Type the label once more");
        assertThat(get(PAGE))
                .contains("Read the label of Demo F1 once more", "name=\"single\"", "name=\"reentry\"")
                .doesNotContain("11.5 fl oz/ac", "demostrobin", "2026-1", "21 days", "calcium");
    }

    @Test
    void the_same_once_more_counts_and_is_kept_as_single_whatever_the_units() throws Exception {
        Map<String, String> again = label();
        again.put("reentry", "12");
        again.put("person", "a. grower");
        assertThat(type(again).statusCode()).isEqualTo(302);
        LabelEntry kept =
                preview.store().loads().labels().find("Demo F1", "soybean").orElseThrow();
        assertThat(kept.look().isSingle()).isTrue();
        assertThat(get("/shelf")).contains("checked again by a. grower (single)");
        assertThat(CLIENT.send(HttpRequest.newBuilder(URI.create(own + PAGE)).build(), BodyHandlers.discarding())
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void every_difference_is_listed_without_the_first_entry_and_nothing_counts() throws Exception {
        Map<String, String> again = label();
        again.put("single", "12 fl oz/ac");
        again.remove("harvest");
        again.put("content1", "1.3 lb/gal");
        HttpResponse<String> refused = type(again);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body())
                .contains(
                        "3 things are not as they should be.",
                        "most in one pass: found 12 fl oz/ac; expected what was entered the first time",
                        "days before harvest (PHI): found nothing",
                        "active ingredients: found demostrobin 1.300 lb/gal",
                        "value=\"12 fl oz/ac\"")
                .doesNotContain("11.5 fl oz/ac", "21 days");
        assertThat(counts()).isFalse();
    }

    @Test
    void what_cannot_be_read_is_named_by_its_item() throws Exception {
        Map<String, String> again = label();
        again.put("single", "12 bottles");
        again.put("group1", "11");
        again.put("wind_most", "100 mph");
        HttpResponse<String> refused = type(again);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("Single: found", "Group of demostrobin: found", "Wind most: found");
        assertThat(counts()).isFalse();
        again = label();
        again.put("person", " ");
        assertThat(type(again).body()).contains("data-code=\"person.missing\"");
    }
}
