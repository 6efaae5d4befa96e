// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
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
        Page page = new Page().title(tell("cli.record.records-filed"));
        if (entries.isEmpty()) {
            page.say(tell("cli.record.none-yet"));
        }
        for (Chain.Entry e : entries) {
            FiledRecord r = e.record();
            String corrects =
                    r.isCorrection() ? tell("cli.record.corrects", "entries", number(entries, r.corrects())) : "";
            page.say(e.number() + "  " + Dates.year(r.date()) + "  " + place(r.field(), r.zone()) + ": " + products(r)
                    + corrects);
        }
        page.head(tell("cli.record.planned-and-not-yet-made"));
        if (planned.isEmpty()) {
            page.say(tell("cli.record.none"));
        }
        for (Pass p : planned) {
            page.say(Dates.year(p.date()) + "  " + place(p.field(), p.zone()) + ": "
                    + Say.number(p.rate().entered(), 1) + " " + p.rate().unit() + " " + p.product() + ", "
                    + Words.here().say(p.placement()));
            page.row("    %s", tell("cli.record.earleaf-record-made-pass", "id", p.id()));
        }
        return page.toString();
    }

    private static void filed(Page page, FiledRecord r, Farm farm) {
        String time = String.valueOf(r.filed().atZone(farm.timeZone()).toLocalDateTime());
        line(page, tell("cli.record.filed"), tell("cli.record.by", "time", time, "filedBy", r.filedBy()));
    }

    private static void product(Page page, ProductUse p) {
        String registration = p.isRegistered() ? tell("cli.record.registration", "registration", p.registration()) : "";
        line(page, tell("cli.record.product"), p.name() + registration);
        line(page, tell("cli.record.total"), p.amount().text());
        line(page, tell("cli.record.rate"), p.rate());
    }

    static String of(Chain.Entry entry, List<Chain.Entry> all, Farm farm) {
        FiledRecord r = entry.record();
        Page page = new Page()
                .title(tell(
                        "cli.record.record",
                        "number",
                        String.valueOf(entry.number()),
                        "place",
                        place(r.field(), r.zone()),
                        "full",
                        Dates.full(r.date())));
        if (r.isCorrection()) {
            page.say(tell("cli.record.corrects-record", "all", number(all, r.corrects()), "why", r.why()));
        }
        r.products().forEach(p -> product(page, p));
        line(page, tell("cli.record.area"), r.area().text());
        line(page, tell("cli.record.crop"), r.crop());
        line(page, tell("cli.record.location"), r.location());
        line(
                page,
                tell("cli.record.placement-rig"),
                r.rig().isEmpty() ? r.placement() : r.placement() + ", " + r.rig());
        r.start()
                .ifPresent(t ->
                        line(page, tell("cli.record.start"), t.toLocalDateTime().toString()));
        r.end()
                .ifPresent(t ->
                        line(page, tell("cli.record.end"), t.toLocalDateTime().toString()));
        applicator(page, r.applicator());
        r.extras().forEach((name, value) -> line(page, name, value));
        filed(page, r, farm);
        deadlines(page, r, farm);
        page.gap()
                .say(tell("cli.record.hash", "hash", entry.hash()))
                .say(tell("cli.record.after", "previous", entry.previous()));
        return page.toString();
    }

    private static void applicator(Page page, Applicator a) {
        line(
                page,
                tell("cli.record.applicator"),
                a.certification().isEmpty()
                        ? a.name()
                        : tell("cli.record.certificate", "name", a.name(), "certification", a.certification()));
        line(page, tell("cli.record.for"), a.customer());
        line(page, tell("cli.record.customers-address"), a.customerAddress());
        line(page, tell("cli.record.helper"), a.helper());
    }

    private static void deadlines(Page page, FiledRecord r, Farm farm) {
        if (!r.isRegistered()) {
            return;
        }
        RecordRule rule = RecordRule.federal();
        Deadlines due = Deadlines.of(r, farm.timeZone(), rule);
        page.gap();
        if (Deadlines.isLate(r, farm.timeZone(), rule)) {
            page.say(tell("cli.record.filed-late-it-was-due", "fileBy", Dates.day(due.fileBy())));
        }
        page.say(tell(
                "cli.record.post-by-keep-until-the",
                "time",
                String.valueOf(due.postBy().toLocalDateTime()),
                "keepUntil",
                String.valueOf(due.keepUntil()),
                "jurisdiction",
                Words.here().say(rule.jurisdiction())));
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
                "rate", p.rate().entered(),
                "rate_unit", p.rate().unit(),
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
        return tell(
                "cli.record.on",
                "list",
                r.products().stream()
                        .map(p -> p.amount().text() + " " + p.name())
                        .collect(Collectors.joining(" + ")),
                "area",
                r.area().text(),
                "placement",
                r.placement());
    }

    private static String number(List<Chain.Entry> all, String id) {
        return all.stream()
                .filter(e -> e.record().id().equals(id))
                .map(e -> String.valueOf(e.number()))
                .findFirst()
                .orElse(id);
    }
}
