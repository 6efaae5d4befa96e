// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Dates;
import org.earleaf.farm.Farm;
import org.earleaf.record.Chain;
import org.earleaf.record.Deadlines;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.earleaf.record.RecordRule;

/**
 * A filed record on paper, with the products first that 7 CFR 110.3(a) asks for, and what proves it.
 *
 * @param state "filed", "a correction of entry 3", "corrected by entry 5"
 */
public record RecordSheet(
        String farm,
        long number,
        String title,
        String filed,
        String state,
        boolean late,
        List<Use> products,
        List<Item> items,
        Proof proof) {
    /** One product. */
    public record Use(String name, String registration, String amount, String rate, String lot, String reentry) {}

    /** One line. */
    public record Item(String name, String entry) {}

    /**
     * What shows that the record stands as it was filed.
     *
     * @param previous fingerprint of the entry that it follows
     * @param dayHead fingerprint of the last entry of the day of filing
     * @param head newest fingerprint when printed
     */
    public record Proof(String previous, String hash, String code, String filedDay, String dayHead, String head) {}

    public static RecordSheet of(Chain.Entry entry, List<Chain.Entry> book, Farm farm) {
        FiledRecord r = entry.record();
        ZoneId home = farm.timeZone();
        return new RecordSheet(
                farm.name(),
                entry.number(),
                Sheets.place(r.field(), r.zone()) + ", " + r.area().text() + ", " + Dates.full(r.date()),
                Sheets.time(r.filed().atZone(home), home),
                state(entry, book),
                Deadlines.isLate(r, home, RecordRule.federal()),
                r.products().stream().map(RecordSheet::use).toList(),
                items(r, farm),
                proof(entry, book, home));
    }

    private static Proof proof(Chain.Entry entry, List<Chain.Entry> book, ZoneId home) {
        LocalDate filed = entry.record().filed().atZone(home).toLocalDate();
        return new Proof(
                entry.previous(),
                entry.hash(),
                Sheets.code(entry.hash()),
                Dates.full(filed),
                Sheets.head(book, filed, home),
                Chain.head(book));
    }

    private static Use use(ProductUse p) {
        String hours = p.reentry_h().isPresent() ? p.reentry_h().getAsInt() + " h" : "";
        return new Use(p.name(), p.registration(), p.amount().text(), p.rate(), p.lot(), hours);
    }

    /** What it is to other entries, in words. */
    public static String state(Chain.Entry entry, List<Chain.Entry> book) {
        FiledRecord r = entry.record();
        List<Chain.Entry> by =
                book.stream().filter(e -> e.record().corrects().equals(r.id())).toList();
        String corrected = by.isEmpty()
                ? ""
                : tell(
                        "print.record.corrected-by-entry",
                        "number",
                        String.valueOf(by.get(by.size() - 1).number()));
        if (!r.isCorrection()) {
            return by.isEmpty() ? tell("print.record.as-filed") : tell("print.record.filed", "corrected", corrected);
        }
        String of = book.stream()
                .filter(e -> e.record().id().equals(r.corrects()))
                .map(e -> tell("print.record.a-correction-of-entry", "number", String.valueOf(e.number())))
                .findFirst()
                .orElse(tell("print.record.a-correction"));
        return by.isEmpty() ? of : of + ", " + corrected;
    }

    private static List<Item> items(FiledRecord r, Farm farm) {
        List<Item> items = new ArrayList<>();
        add(items, tell("print.record.place"), Sheets.place(r.field(), r.zone()));
        add(items, tell("print.record.location"), r.location());
        add(items, tell("print.record.ground-treated"), r.area().text());
        add(items, tell("print.record.crop"), r.crop());
        add(items, tell("print.record.placement"), r.placement());
        add(items, tell("print.record.rig"), r.rig());
        add(items, tell("print.record.day"), Dates.full(r.date()));
        add(items, tell("print.record.start"), Sheets.clock(r.start(), farm.timeZone()));
        add(items, tell("print.record.stop"), Sheets.clock(r.end(), farm.timeZone()));
        add(items, tell("print.record.applicator"), r.applicator().name());
        add(items, tell("print.record.certificate"), r.applicator().certification());
        add(items, tell("print.record.customer"), r.applicator().customer());
        add(items, tell("print.record.customers-address"), r.applicator().customerAddress());
        add(items, tell("print.record.under-supervision"), r.applicator().helper());
        add(items, tell("print.record.training-record"), r.applicator().helperTraining());
        for (Map.Entry<String, String> extra : r.extras().entrySet()) {
            add(
                    items,
                    extra.getKey().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                            + extra.getKey().substring(1),
                    extra.getValue());
        }
        add(items, tell("print.record.why-corrected"), r.why());
        add(items, tell("print.record.filed-by"), r.filedBy());
        return items;
    }

    private static void add(List<Item> items, String name, String entry) {
        if (!entry.isBlank()) {
            items.add(new Item(name, entry));
        }
    }
}
