// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.record.Chain;
import org.earleaf.record.Deadlines;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.earleaf.record.RecordRule;

/**
 * The book of records, newest first.
 *
 * @param state whether every entry still holds
 * @param head fingerprint of the newest entry, empty while nothing is filed
 * @param heads of the last days on which something was filed, newest first
 */
public record RecordsView(Markup headline, Markup state, String head, List<Head> heads, List<Row> rows) {
    private static final int HEADS_SHOWN = 7;

    public record Row(long number, String date, String field, String what, String who, Markup state, boolean late) {}

    /** Fingerprint of the last entry that was filed on a day. */
    public record Head(String day, long number, String hash) {}

    /** A line of a record. */
    public record Item(String name, String entry) {}

    /** A further entry about the same pass. */
    public record Correction(long number, String filed, String why, String hash) {}

    /** One record in full. */
    public record One(
            long number,
            String title,
            String filed,
            Markup state,
            boolean late,
            List<Item> items,
            List<Correction> corrections,
            Proof proof) {}

    /**
     * What shows that a record stands as it was filed.
     *
     * @param previous fingerprint of the entry that it follows
     * @param text what is fingerprinted
     */
    public record Proof(String previous, String hash, String text) {}

    /** @param home time zone of the farm */
    public static RecordsView of(List<Chain.Entry> entries, ZoneId home) {
        Optional<Chain.Break> broken = Chain.verify(entries);
        List<Row> rows = new ArrayList<>();
        for (Chain.Entry e : entries) {
            FiledRecord r = e.record();
            rows.add(
                    0,
                    new Row(
                            e.number(),
                            Dates.brief(r.date()),
                            MorningView.label(r.field(), r.zone()),
                            what(r),
                            r.applicator().name(),
                            state(r, entries),
                            isLate(r, home)));
        }
        return new RecordsView(
                headline(entries.size(), broken),
                chainState(broken),
                entries.isEmpty() ? "" : Chain.head(entries),
                heads(entries, home),
                rows);
    }

    private static List<Head> heads(List<Chain.Entry> entries, ZoneId home) {
        TreeMap<LocalDate, Head> byDay = new TreeMap<>(Comparator.reverseOrder());
        for (Chain.Entry e : entries) {
            LocalDate day = e.record().filed().atZone(home).toLocalDate();
            byDay.put(day, new Head(Dates.brief(day), e.number(), e.hash()));
        }
        return byDay.values().stream().limit(HEADS_SHOWN).toList();
    }

    /** Filed after its day; flagged and never refused. */
    private static boolean isLate(FiledRecord r, ZoneId home) {
        return r.isRegistered() && Deadlines.isLate(r, home, RecordRule.federal());
    }

    private static Markup headline(int count, Optional<Chain.Break> broken) {
        if (broken.isPresent()) {
            return new Say()
                    .sentence(tell(
                            "page.records.entry-does-not-hold",
                            "number",
                            String.valueOf(broken.get().number())))
                    .sentence(Phrases.capital(org.earleaf.app.words.Words.here()
                                    .say(broken.get().why())) + ".")
                    .done();
        }
        if (count == 0) {
            return new Say()
                    .sentence(tell("page.records.nothing-is-filed-yet"))
                    .sentence(tell("page.records.a-pass-is-filed-from"))
                    .done();
        }
        return new Say()
                .sentence(tell("page.records.on-record", "n", count))
                .sentence(tell("page.records.none-has-been-changed-since"))
                .done();
    }

    private static Markup chainState(Optional<Chain.Break> broken) {
        return broken.isPresent()
                ? Marks.out(tell(
                        "page.records.the-chain-is-broken-at",
                        "number",
                        String.valueOf(broken.get().number())))
                : Marks.done(tell("page.records.the-chain-holds"));
    }

    private static Markup state(FiledRecord r, List<Chain.Entry> entries) {
        if (r.isCorrection()) {
            return Marks.reading(tell("page.records.a-correction"));
        }
        boolean corrected = entries.stream().anyMatch(e -> e.record().corrects().equals(r.id()));
        return corrected ? Marks.reading(tell("page.records.filed-corrected")) : Marks.done(tell("page.tank.filed"));
    }

    private static String what(FiledRecord r) {
        String products = String.join(
                ", ", r.products().stream().map(RecordsView::product).toList());
        return products + ", " + r.placement();
    }

    private static String product(ProductUse p) {
        return p.rate().isEmpty() ? p.name() : p.name() + " " + p.rate();
    }

    /** @param home time zone of the farm */
    public static One one(Chain.Entry entry, List<Chain.Entry> entries, ZoneId home) {
        FiledRecord r = entry.record();
        List<Correction> corrections = entries.stream()
                .filter(e -> e.record().corrects().equals(r.id()))
                .map(e -> new Correction(
                        e.number(), filed(e.record(), home), e.record().why(), shortHash(e.hash())))
                .toList();
        return new One(
                entry.number(),
                MorningView.label(r.field(), r.zone()) + ": " + what(r) + ", " + Dates.brief(r.date()),
                filed(r, home),
                state(r, entries),
                isLate(r, home),
                items(r, home),
                corrections,
                new Proof(shortHash(entry.previous()), entry.hash(), entry.text()));
    }

    private static String filed(FiledRecord r, ZoneId home) {
        return filed(r.filed(), home);
    }

    /** Day and time of an instant at home. */
    static String filed(Instant at, ZoneId home) {
        return Dates.stamp(at, home);
    }

    private static List<Item> items(FiledRecord r, ZoneId home) {
        List<Item> items = new ArrayList<>();
        add(items, tell("page.records.person"), r.applicator().name());
        add(items, tell("page.records.certificate"), r.applicator().certification());
        add(items, tell("page.records.customer"), r.applicator().customer());
        add(items, tell("page.records.place"), MorningView.label(r.field(), r.zone()));
        add(items, tell("page.records.location"), r.location());
        add(items, tell("page.records.ground"), r.area().text());
        add(items, tell("page.records.crop"), r.crop());
        for (ProductUse p : r.products()) {
            add(items, p.name(), p.amount().text() + (p.rate().isEmpty() ? "" : ", " + p.rate()));
            add(items, tell("page.records.registration", "name", p.name()), p.registration());
            add(items, tell("page.records.lot", "name", p.name()), p.lot());
        }
        add(items, tell("page.records.placement"), r.placement());
        add(items, tell("page.records.rig"), r.rig());
        add(items, tell("page.records.day"), Dates.full(r.date()));
        add(items, tell("page.records.start"), clock(r.start(), home));
        add(items, tell("page.records.stop"), clock(r.end(), home));
        for (Map.Entry<String, String> extra : r.extras().entrySet()) {
            add(items, Phrases.capital(extra.getKey()), extra.getValue());
        }
        add(items, tell("page.records.filed-by"), r.filedBy());
        add(items, tell("page.records.why-corrected"), r.why());
        return items;
    }

    private static String clock(Optional<ZonedDateTime> time, ZoneId home) {
        return time.map(t -> Dates.clock(t.withZoneSameInstant(home).toLocalTime()))
                .orElse("");
    }

    private static void add(List<Item> items, String name, String entry) {
        if (!entry.isBlank()) {
            items.add(new Item(name, entry));
        }
    }

    /** The first twelve digits in fours, enough to tell two entries apart by eye. */
    static String shortHash(String hash) {
        return hash.substring(0, 4) + " " + hash.substring(4, 8) + " " + hash.substring(8, 12);
    }
}
