// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.web.Fixture;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.field.Reading;
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
        assertThatThrownBy(() -> Serving.of(TOY, file, Optional.empty())).hasMessageContaining("earleaf import");
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
                    new Wiring(TOY.folders(), (farm, on, hindsight) -> new Fixture(), Clock.systemUTC()),
                    Optional.of(Fixture.TODAY),
                    false);
            FarmDay first = days.day(days.today());
            assertThat(days.day(days.today())).isSameAs(first);
            LocalDate day = LocalDate.of(2026, 6, 20);
            store.enter(new Reading(
                    "",
                    "Oxbow",
                    "",
                    day,
                    Reading.Kind.HEIGHT,
                    80,
                    "80 cm",
                    Double.NaN,
                    Double.NaN,
                    Reading.Position.RANDOM,
                    ""));
            assertThat(days.day(days.today())).isNotSameAs(first);
        }
    }
}
