// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.stream.Stream;
import org.earleaf.field.PastYear;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class PastPageTest {
    private static final String PAGE = "/field/mill-eighty/past";
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Preview preview = new Preview();
    private final Served server = preview.serve();
    private final String own = "http://127.0.0.1:" + server.port();

    @AfterEach
    void stop() {
        server.close();
        preview.store().close();
    }

    private String get(String path) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(own + path)).build(), BodyHandlers.ofString())
                .body();
    }

    private HttpResponse<String> keep(String year, String crop, String yield, String... more)
            throws IOException, InterruptedException {
        String[] usual = {
            "year",
            year,
            "crop",
            crop,
            "yield",
            yield,
            "yield_unit",
            "bu/ac",
            "nitrogen",
            "160",
            "nitrogen_unit",
            "lb N/ac"
        };
        return server.post(
                PAGE, Stream.concat(Stream.of(usual), Stream.of(more)).toArray(String[]::new));
    }

    @Test
    void a_year_is_entered_on_the_page_of_its_field_and_taken_out_again() throws Exception {
        assertThat(get("/field/mill-eighty")).contains("None is entered yet.", "action=\"" + PAGE + "\"");
        HttpResponse<String> kept = keep("2021", "corn", "200");
        assertThat(kept.statusCode()).isEqualTo(302);
        assertThat(kept.headers().firstValue("Location")).contains(PAGE);
        for (String page : new String[] {PAGE, "/field/mill-eighty"}) {
            assertThat(get(page)).contains(">2021<", ">200 bu/ac<", ">160 lb N/ac<");
        }
        assertThat(server.post(PAGE + "/out", "zone", "", "year", "2021").statusCode())
                .isEqualTo(302);
        assertThat(preview.store().farm().work().past()).isEmpty();
        HttpResponse<String> none = server.post(PAGE + "/out", "zone", "", "year", "2021");
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.body()).contains("past.unknown");
    }

    @Test
    void what_was_typed_stands_there_again_with_what_is_wrong() throws Exception {
        HttpResponse<String> wrong = keep("2026", "soybean", "");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body())
                .contains("data-code=\"past.year\"", "<details open", "value=\"2026\"", "value=\"160\"")
                .containsPattern("value=\"soybean\"[^>]*selected")
                .doesNotContain("name=\"sure\"");
        assertThat(preview.store().farm().work().past()).isEmpty();
    }

    @Test
    void what_may_be_a_slip_is_asked_about_and_kept_when_it_is_so() throws Exception {
        assertThat(keep("2021", "corn", "330").body()).contains("entry.look-again", "name=\"sure\"");
        assertThat(keep("2021", "corn", "330", "sure", "yes").statusCode()).isEqualTo(302);
        assertThat(preview.store().farm().work().past())
                .extracting(PastYear::hasYield)
                .containsExactly(true);
    }
}
