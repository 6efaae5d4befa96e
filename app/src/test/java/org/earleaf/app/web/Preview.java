// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.FarmDay;
import org.earleaf.field.Reading;

/** The pages over the fixture, for tests and for looking at while they are written ({@code main}). */
public final class Preview implements Days, Notebook {
    private final List<Reading> readings = new ArrayList<>();
    private final List<FiledRecord> records = new ArrayList<>();

    @Override
    public LocalDate today() {
        return Fixture.TODAY;
    }

    @Override
    public FarmDay day(LocalDate on) {
        return new Fixture(readings);
    }

    @Override
    public Reading enter(Reading r) {
        Reading kept = new Reading(
                "r" + (readings.size() + 1),
                r.field(),
                r.zone(),
                r.date(),
                r.kind(),
                r.value(),
                r.entered(),
                r.top_mm(),
                r.bottom_mm(),
                r.position(),
                r.note());
        readings.add(kept);
        return kept;
    }

    @Override
    public FiledRecord file(MadePass made) {
        FiledRecord record = new FiledRecord(
                "record-" + (records.size() + 1),
                records.size() + 1,
                java.time.Instant.parse("2026-06-30T17:41:00Z"),
                made.pass().field(),
                made.pass().zone(),
                made.pass().date(),
                made.pass().product() + ", " + made.pass().rate() + " "
                        + made.pass().rateUnit(),
                List.of(new Item("Person", made.person(), "entered"), new Item("Rig", made.rig(), "load sheet")),
                List.of(),
                records.isEmpty() ? "" : records.get(0).fingerprint(),
                Integer.toHexString(made.hashCode()));
        records.add(0, record);
        return record;
    }

    @Override
    public List<FiledRecord> records() {
        return List.copyOf(records);
    }

    @Override
    public Optional<FiledRecord> findRecord(String id) {
        return records.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    @Override
    public Optional<String> findChainHead() {
        return records.stream().map(FiledRecord::fingerprint).findFirst();
    }

    @Override
    public String state() {
        return "All saved on this machine";
    }

    static WebServer start(int port) {
        Preview preview = new Preview();
        return WebServer.start(preview, preview, "127.0.0.1", port);
    }

    public static void main(String[] args) {
        System.out.println("http://127.0.0.1:" + start(8123).port());
    }
}
