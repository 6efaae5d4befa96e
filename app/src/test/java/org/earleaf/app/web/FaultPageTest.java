// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.time.LocalDate;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.StoredNotebook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A page that says what went wrong stands on nothing that may itself have gone wrong. */
class FaultPageTest {
    private final WebServer server = WebServer.start(new Gone(), notebook(), "127.0.0.1", 0);

    private static StoredNotebook notebook() {
        Preview preview = new Preview();
        preview.store().close();
        return new StoredNotebook(preview.store(), true);
    }

    /** A farm whose file cannot be read. */
    private static final class Gone implements Days {
        @Override
        public LocalDate today() {
            throw new IllegalStateException("the disk is gone");
        }

        @Override
        public FarmDay day(LocalDate on) {
            throw new IllegalStateException("the disk is gone");
        }

        @Override
        public Instant now() {
            throw new IllegalStateException("the disk is gone");
        }
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private HttpResponse<String> get(String path) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Cookie", "light=night")
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    }

    @Test
    void a_page_of_a_farm_that_cannot_be_read_says_so_and_links_on() throws Exception {
        HttpResponse<String> page = get("/");
        assertThat(page.statusCode()).isEqualTo(500);
        assertThat(page.body())
                .contains("<h1>Earleaf made a mistake.</h1>", "The log has the details under fault")
                .contains("data-theme=\"night\"", "href=\"/records\"", "/static/earleaf.css?v=");
    }

    @Test
    void an_address_without_a_page_is_told_from_a_farm_that_cannot_be_read() throws Exception {
        assertThat(get("/nowhere").body()).contains("<h1>There is no such page.</h1>", "href=\"/walk\"");
        assertThat(get("/nowhere").statusCode()).isEqualTo(404);
        assertThat(get("/static/earleaf.css").statusCode()).isEqualTo(200);
    }
}
