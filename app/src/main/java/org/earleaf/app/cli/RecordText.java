// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.app.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.earleaf.exchange.table.CsvRows;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.record.Applicator;
import org.earleaf.record.Chain;
import org.earleaf.record.Deadlines;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.earleaf.record.RecordRule;
import org.earleaf.record.RecordTable;
import org.jspecify.annotations.Nullable;

/** Records as pages to read, and as JSON. */
final class RecordText {
    private static final String ROW = "%-22s %s";

    private RecordText() {}

    static String list(List<Chain.Entry> entries, List<Pass> planned) {
        Page page = new Page().title("Records filed");
        if (entries.isEmpty()) {
            page.say("None yet.");
        }
        for (Chain.Entry e : entries) {
            FiledRecord r = e.record();
            String corrects = r.isCorrection() ? ", corrects " + number(entries, r.corrects()) : "";
            page.say(e.number() + "  " + r.date() + "  " + place(r.field(), r.zone()) + ": " + products(r) + corrects);
        }
        page.head("Planned and not yet made");
        if (planned.isEmpty()) {
            page.say("None.");
        }
        for (Pass p : planned) {
            page.say(p.date() + "  " + place(p.field(), p.zone()) + ": " + Say.number(p.rate(), 1) + " " + p.rateUnit()
                    + " " + p.product() + ", " + p.placement().word());
            page.row("    %s", "earleaf record made --pass '" + p.id() + "' --by NAME");
        }
        return page.toString();
    }

    static String of(Chain.Entry entry, List<Chain.Entry> all, Farm farm) {
        FiledRecord r = entry.record();
        Page page = new Page()
                .title("Record " + entry.number() + ", " + place(r.field(), r.zone()) + ", " + Say.full(r.date()));
        if (r.isCorrection()) {
            page.say("Corrects record " + number(all, r.corrects()) + ": " + r.why());
        }
        for (ProductUse p : r.products()) {
            String registration = p.isRegistered() ? ", registration " + p.registration() : "";
            line(page, "Product", p.name() + registration);
            line(page, "Total", p.amount().text());
            line(page, "Rate", p.rate());
        }
        line(page, "Area", r.area().text());
        line(page, "Crop", r.crop());
        line(page, "Location", r.location());
        line(page, "Placement, rig", r.rig().isEmpty() ? r.placement() : r.placement() + ", " + r.rig());
        r.start().ifPresent(t -> line(page, "Start", t.toLocalDateTime().toString()));
        r.end().ifPresent(t -> line(page, "End", t.toLocalDateTime().toString()));
        applicator(page, r.applicator());
        r.extras().forEach((name, value) -> line(page, name, value));
        line(page, "Filed", r.filed().atZone(farm.timeZone()).toLocalDateTime() + " by " + r.filedBy());
        deadlines(page, r, farm);
        page.gap().say("Hash " + entry.hash()).say("after " + entry.previous());
        return page.toString();
    }

    private static void applicator(Page page, Applicator a) {
        line(
                page,
                "Applicator",
                a.certification().isEmpty() ? a.name() : a.name() + ", certificate " + a.certification());
        line(page, "For", a.customer());
        line(page, "Customer's address", a.customerAddress());
        line(page, "Helper", a.helper());
    }

    private static void deadlines(Page page, FiledRecord r, Farm farm) {
        if (!r.isRegistered()) {
            return;
        }
        RecordRule rule = RecordRule.federal();
        Deadlines due = Deadlines.of(r, farm.timeZone(), rule);
        page.gap();
        if (Deadlines.isLate(r, farm.timeZone(), rule)) {
            page.say("Filed late: it was due by " + Say.day(due.fileBy()) + ".");
        }
        page.say("Post by " + due.postBy().toLocalDateTime() + "; keep until " + due.keepUntil() + " ("
                + Words.US.say(rule.jurisdiction()) + "). The re-entry interval is the label's.");
    }

    private static void line(Page page, String name, String value) {
        if (!value.isBlank()) {
            page.row(ROW, name, value);
        }
    }

    static String listJson(List<Chain.Entry> entries, List<Pass> planned) {
        List<Object> passes = new ArrayList<>();
        planned.forEach(p -> passes.add(Json.object(
                "pass", p.id(),
                "field", p.field(),
                "zone", p.zone(),
                "date", p.date(),
                "product", p.product(),
                "rate", p.rate(),
                "rate_unit", p.rateUnit(),
                "placement", p.placement().word())));
        return Json.text(Json.object(
                "records", entries.stream().map(RecordText::map).toList(),
                "planned", passes,
                "head", Chain.head(entries)));
    }

    /** Everything filed as a table, so that it can be checked without Earleaf. */
    static String exportCsv(List<Chain.Entry> entries) {
        return CsvRows.text(RecordTable.rows(entries));
    }

    /** Everything filed, link by link, so that it can be checked without Earleaf. */
    static String exportJson(List<Chain.Entry> entries) {
        List<Object> links = new ArrayList<>();
        entries.forEach(e -> links.add(
                Json.object("number", e.number(), "previous", e.previous(), "hash", e.hash(), "text", e.text())));
        return Json.text(Json.object("records", links, "head", Chain.head(entries)));
    }

    static String json(Chain.Entry entry, List<Chain.Entry> all, Farm farm) {
        FiledRecord r = entry.record();
        Map<String, @Nullable Object> map = map(entry);
        map.put("late", Deadlines.isLate(r, farm.timeZone(), RecordRule.federal()));
        map.put(
                "corrected_by",
                all.stream()
                        .filter(e -> e.record().corrects().equals(r.id()))
                        .map(Chain.Entry::number)
                        .toList());
        return Json.text(map);
    }

    private static Map<String, @Nullable Object> map(Chain.Entry entry) {
        FiledRecord r = entry.record();
        List<Object> products = new ArrayList<>();
        r.products()
                .forEach(p -> products.add(Json.object(
                        "product", p.name(),
                        "registration", p.registration(),
                        "amount", p.amount().number(),
                        "amount_unit", p.amount().unit(),
                        "rate", p.rate())));
        return Json.object(
                "number", entry.number(),
                "id", r.id(),
                "corrects", r.corrects(),
                "why", r.why(),
                "pass", r.passId(),
                "field", r.field(),
                "zone", r.zone(),
                "location", r.location(),
                "crop", r.crop(),
                "area", r.area().number(),
                "area_unit", r.area().unit(),
                "date", r.date(),
                "start", r.start().map(t -> t.toOffsetDateTime()),
                "end", r.end().map(t -> t.toOffsetDateTime()),
                "placement", r.placement(),
                "rig", r.rig(),
                "products", products,
                "applicator", r.applicator().name(),
                "certification", r.applicator().certification(),
                "extras", r.extras(),
                "filed", r.filed(),
                "filed_by", r.filedBy(),
                "previous", entry.previous(),
                "hash", entry.hash());
    }

    private static String place(String field, String zone) {
        return zone.isEmpty() ? field : field + ", " + zone;
    }

    private static String products(FiledRecord r) {
        return r.products().stream()
                        .map(p -> p.amount().text() + " " + p.name())
                        .collect(Collectors.joining(" + "))
                + " on " + r.area().text() + ", " + r.placement();
    }

    private static String number(List<Chain.Entry> all, String id) {
        return all.stream()
                .filter(e -> e.record().id().equals(id))
                .map(e -> String.valueOf(e.number()))
                .findFirst()
                .orElse(id);
    }
}
