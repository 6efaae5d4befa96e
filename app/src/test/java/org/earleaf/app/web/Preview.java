// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.earleaf.app.FarmDay;
import org.earleaf.app.Photograph;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.EarleafException;

/** The pages over the fixture, for tests and for looking at while they are written ({@code main}). */
public final class Preview implements Days, Notebook {
    private final List<Reading> readings = new ArrayList<>();
    private final List<Photograph> photographs = new ArrayList<>();
    private final List<Photograph.Note> notes = new ArrayList<>();
    private final List<Chain.Entry> records = new ArrayList<>();

    @Override
    public LocalDate today() {
        return Fixture.TODAY;
    }

    @Override
    public FarmDay day(LocalDate on) {
        return new Fixture(readings);
    }

    @Override
    public Reading enter(Reading r, Optional<Photograph> photograph) {
        Reading kept = new Reading(
                "r" + UUID.randomUUID(),
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
        photograph.ifPresent(photographs::add);
        photograph.ifPresent(
                p -> notes.add(new Photograph.Note("p" + photographs.size(), kept.id(), p.type(), p.wide(), p.tall())));
        return kept;
    }

    @Override
    public Optional<Reading> withdraw(String id, LocalDate on) {
        Optional<Reading> gone =
                readings.stream().filter(r -> r.id().equals(id)).findFirst();
        gone.ifPresent(readings::remove);
        return gone;
    }

    @Override
    public List<Photograph.Note> photographs() {
        return List.copyOf(notes);
    }

    @Override
    public Optional<Photograph> findPhotograph(String id) {
        return IntStream.range(0, notes.size())
                .filter(k -> notes.get(k).id().equals(id))
                .mapToObj(photographs::get)
                .findFirst();
    }

    @Override
    public Chain.Entry fileMade(Pass made, Function<Pass, FiledRecord> account) {
        FiledRecord record = account.apply(made);
        if (!record.problems().isEmpty()) {
            throw new EarleafException(record.problems());
        }
        Optional<Chain.Entry> last =
                records.isEmpty() ? Optional.empty() : Optional.of(records.get(records.size() - 1));
        records.add(Chain.next(last, record));
        return records.get(records.size() - 1);
    }

    @Override
    public List<Chain.Entry> records() {
        return List.copyOf(records);
    }

    @Override
    public Optional<Chain.Entry> findRecord(String numberOrId) {
        return records.stream()
                .filter(e -> (e.number() + "").equals(numberOrId))
                .findFirst();
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
