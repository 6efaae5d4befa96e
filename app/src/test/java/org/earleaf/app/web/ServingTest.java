// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.StoredDays;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.Place;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServingTest {
    private static final Path DEMO = Path.of(System.getProperty("earleaf.root", ".."), "demo-farm");
    private static final Wiring TOY =
            new Wiring(Wiring.live().folders(), (farm, on, hindsight) -> new Fixture(), Clock.systemUTC());

    @TempDir
    Path temp;

    private Path stored() {
        Path file = temp.resolve("earleaf.db");
        try (FarmStore store = FarmStore.create(file)) {
            store.importFarm(FarmFolder.read(DEMO), FarmFolder.readWeather(DEMO).observed());
        }
        return file;
    }

    @Test
    void pages_are_served_where_it_says_and_until_it_is_closed() throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        URI there;
        try (Serving serving = Serving.of(TOY, stored(), Optional.of(Fixture.TODAY))) {
            String said = serving.start("127.0.0.1", 0);
            there = URI.create(said.substring(said.indexOf("http")));
            HttpResponse<String> page =
                    client.send(HttpRequest.newBuilder(there).build(), HttpResponse.BodyHandlers.ofString());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("Mill Eighty");
        }
        assertThatThrownBy(
                        () -> client.send(HttpRequest.newBuilder(there).build(), HttpResponse.BodyHandlers.ofString()))
                .isInstanceOf(java.io.IOException.class);
    }

    @Test
    void pages_are_read_while_another_program_writes_and_what_cannot_be_saved_says_when_to_try_again()
            throws Exception {
        Path file = stored();
        HttpClient client = HttpClient.newHttpClient();
        try (Serving serving = Serving.of(TOY, file, Optional.of(Fixture.TODAY));
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            String said = serving.start("127.0.0.1", 0);
            String there = said.substring(said.indexOf("http"));
            other.createStatement().execute("begin immediate");
            for (String page : List.of("", "records", "loads", "walk")) {
                HttpRequest read =
                        HttpRequest.newBuilder(URI.create(there + page)).build();
                assertThat(client.send(read, HttpResponse.BodyHandlers.ofString())
                                .statusCode())
                        .as(page)
                        .isEqualTo(200);
            }
            HttpRequest write = HttpRequest.newBuilder(URI.create(there + "walk/withdraw"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Origin", there.substring(0, there.length() - 1))
                    .POST(HttpRequest.BodyPublishers.ofString("id=none"))
                    .build();
            HttpResponse<String> busy = client.send(write, HttpResponse.BodyHandlers.ofString());
            assertThat(busy.statusCode()).isEqualTo(503);
            assertThat(busy.headers().firstValue("Retry-After")).hasValue("5");
            assertThat(busy.body()).contains("The farm file is busy", "Try again");
        }
    }

    @Test
    void a_farm_that_may_only_be_read_is_served_and_says_so() throws Exception {
        Path file = stored();
        HttpClient client = HttpClient.newHttpClient();
        try (Place still = Place.readOnly(file);
                Serving serving = Serving.of(TOY, file, Optional.of(Fixture.TODAY))) {
            String said = serving.start("127.0.0.1", 0);
            HttpRequest read = HttpRequest.newBuilder(URI.create(said.substring(said.indexOf("http"))))
                    .build();
            HttpResponse<String> page = client.send(read, HttpResponse.BodyHandlers.ofString());
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("For reading only").doesNotContain("All saved");
        }
    }

    @Test
    void a_port_in_use_is_told_in_one_sentence() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                Serving serving = Serving.of(TOY, stored(), Optional.empty())) {
            assertThatThrownBy(() -> serving.start("127.0.0.1", taken.getLocalPort()))
                    .isInstanceOf(EarleafException.class)
                    .hasMessageContaining("--port");
        }
    }

    @Test
    void an_empty_store_is_not_served() {
        Path file = temp.resolve("empty.db");
        FarmStore.create(file).close();
        assertThatThrownBy(() -> Serving.of(TOY, file, Optional.empty())).hasMessageContaining("store.no-farm");
    }

    @Test
    void a_trial_leaves_no_file_behind() {
        Serving trial = Serving.onTrial(TOY, DEMO, Optional.empty());
        assertThat(trial.file()).exists();
        trial.close();
        assertThat(trial.file().getParent()).doesNotExist();
    }

    @Test
    void a_day_is_answered_once_until_something_is_written() {
        try (FarmStore store = FarmStore.open(stored())) {
            StoredDays days = new StoredDays(
                    store,
                    (farm, on, hindsight) -> new Fixture(),
                    Clock.systemUTC(),
                    Optional.of(Fixture.TODAY),
                    false);
            FarmDay first = days.day(days.today());
            assertThat(days.day(days.today())).isSameAs(first);
            LocalDate day = LocalDate.of(2026, 6, 20);
            store.enter(new Reading(
                    "",
                    new FieldPart("Oxbow", ""),
                    day,
                    Reading.Kind.HEIGHT,
                    80,
                    "80 cm",
                    Reading.Sampled.NO_SOIL,
                    "",
                    Scouted.NOTHING));
            assertThat(days.day(days.today())).isNotSameAs(first);
        }
    }
}
