// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.StoredNotebook;
import org.earleaf.app.store.FarmStore;
import org.earleaf.farm.Farm;
import org.earleaf.field.Reading;
import org.earleaf.weather.WeatherDay;

/** The pages over the fixture and a real store, for tests and for looking at while they are written ({@code main}). */
public final class Preview implements Days {
    private final FarmStore store;
    private Instant now = FixtureShelf.MORNING;

    Preview() {
        try {
            store = FarmStore.create(
                    Files.createTempDirectory("earleaf-preview-").resolve("preview.db"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        store.importFarm(stocked(new Fixture().farm()), List.of(WeatherDay.of(Fixture.TODAY.minusDays(1), 28, 15, 0)));
        FixtureShelf.labels().forEach(store.loads()::keep);
    }

    private static Farm stocked(Farm farm) {
        return FixtureShelf.stocked(farm);
    }

    FarmStore store() {
        return store;
    }

    /** Lets time go by. */
    synchronized void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public synchronized Instant now() {
        return now;
    }

    @Override
    public LocalDate today() {
        return Fixture.TODAY;
    }

    @Override
    public FarmDay day(LocalDate on) {
        Farm kept = store.farm();
        return new Stocked(kept.readings(), kept);
    }

    /** The fixture's day with what was written since. */
    private static final class Stocked extends Fixture {
        private final Farm farm;

        Stocked(List<Reading> readings, Farm kept) {
            super(readings);
            this.farm = RecordCopy.with(
                    RecordCopy.with(stocked(super.farm()), "work.passes", kept.passes()),
                    "work.past",
                    kept.work().past());
        }

        @Override
        public Farm farm() {
            return farm;
        }
    }

    Served serve() {
        return Served.over(this, new StoredNotebook(store, true));
    }

    static Served start() {
        return new Preview().serve();
    }

    public static void main(String[] args) {
        Preview preview = new Preview();
        SeededLoads.in(preview);
        WebServer server = WebServer.start(preview, new StoredNotebook(preview.store, true), "127.0.0.1", 8125);
        System.out.println("http://127.0.0.1:" + server.port());
    }
}
