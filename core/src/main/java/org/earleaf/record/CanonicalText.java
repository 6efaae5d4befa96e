// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.earleaf.field.FieldPart;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The one text form of a record: UTF-8, one {@code name: value} a line, each line ended by a line feed, names in fixed
 * order, first line {@code earleaf record 1}. In a value a backslash is written {@code \\}, a line feed {@code \n}, a
 * carriage return {@code \r}; an unknown value is empty. Each product is a block of six lines; further entries follow
 * as {@code extra NAME: value} in the order of their names. The bytes of this text are what the chain hashes.
 */
final class CanonicalText {
    private static final String HEAD = "earleaf record 1";

    private CanonicalText() {}

    static String write(FiledRecord r) {
        Lines out = new Lines();
        out.put("id", r.id());
        out.put("corrects", r.corrects());
        out.put("why", r.why());
        out.put("pass", r.passId());
        out.put("field", r.field());
        out.put("zone", r.zone());
        out.put("location", r.location());
        out.put("crop", r.crop());
        out.put("area", r.area().text());
        out.put("placement", r.placement());
        out.put("rig", r.rig());
        out.put("date", r.date().toString());
        out.put("start", r.start().map(ZonedDateTime::toString).orElse(""));
        out.put("end", r.end().map(ZonedDateTime::toString).orElse(""));
        Applicator a = r.applicator();
        out.put("applicator kind", a.kind().word());
        out.put("applicator", a.name());
        out.put("certification", a.certification());
        out.put("customer", a.customer());
        out.put("customer address", a.customerAddress());
        out.put("helper", a.helper());
        out.put("helper training", a.helperTraining());
        out.put("filed", r.filed().toString());
        out.put("filed by", r.filedBy());
        for (ProductUse p : r.products()) {
            out.put("product", p.name());
            out.put("registration", p.registration());
            out.put("amount", p.amount().text());
            out.put("rate", p.rate());
            out.put("lot", p.lot());
            out.put(
                    "reentry_h",
                    p.reentry_h().isPresent() ? String.valueOf(p.reentry_h().getAsInt()) : "");
        }
        r.extras().forEach((name, value) -> out.put("extra " + name, value));
        return out.text.toString();
    }

    static FiledRecord read(String text) {
        Reader in = new Reader(text);
        try {
            return record(in);
        } catch (DateTimeException | NumberFormatException e) {
            throw in.wrong(String.valueOf(e.getMessage()), Said.of("record.line.as-filed"));
        }
    }

    private static FiledRecord record(Reader in) {
        String id = in.take("id");
        String corrects = in.take("corrects");
        String why = in.take("why");
        String pass = in.take("pass");
        var treated = new FiledRecord.Treated(
                new FieldPart(in.take("field"), in.take("zone")),
                in.take("location"),
                in.take("crop"),
                Amount.parse(in.take("area"), "area"));
        var work = new FiledRecord.Work(
                in.take("placement"),
                in.take("rig"),
                LocalDate.parse(in.take("date")),
                time(in.take("start")),
                time(in.take("end")));
        Applicator applicator = applicator(in);
        Instant filed = Instant.parse(in.take("filed"));
        var filing = new FiledRecord.Filing(id, corrects, why, filed, in.take("filed by"));
        List<ProductUse> products = new ArrayList<>();
        while (in.nextIs("product: ")) {
            products.add(product(in));
        }
        SortedMap<String, String> extras = new TreeMap<>();
        while (in.nextIs("extra ")) {
            String name = in.nextName();
            extras.put(name.substring("extra ".length()), in.take(name));
        }
        in.end();
        return new FiledRecord(filing, pass, treated, work, products, applicator, extras);
    }

    private static Applicator applicator(Reader in) {
        String kind = in.take("applicator kind");
        return new Applicator(
                Applicator.Kind.findByWord(kind).orElseThrow(() -> in.wrong(kind, Said.of("record.line.kind"))),
                in.take("applicator"),
                in.take("certification"),
                in.take("customer"),
                in.take("customer address"),
                in.take("helper"),
                in.take("helper training"));
    }

    private static ProductUse product(Reader in) {
        String name = in.take("product");
        String registration = in.take("registration");
        Amount amount = Amount.parse(in.take("amount"), "amount");
        String rate = in.take("rate");
        String lot = in.take("lot");
        String reentry = in.take("reentry_h");
        return new ProductUse(
                name,
                registration,
                amount,
                rate,
                lot,
                reentry.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(reentry)));
    }

    private static Optional<ZonedDateTime> time(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(ZonedDateTime.parse(text));
    }

    private static final class Lines {
        final StringBuilder text = new StringBuilder(HEAD + "\n");

        void put(String name, String value) {
            String safe = value.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
            text.append(name).append(": ").append(safe).append('\n');
        }
    }

    /** Takes the lines one by one and refuses whatever is not where it belongs. */
    private static final class Reader {
        private final String[] lines;
        private int at = 1;

        Reader(String text) {
            lines = text.split("\n", -1);
            if (!lines[0].equals(HEAD)) {
                at = 0;
                throw wrong(lines[0], Said.text(HEAD));
            }
        }

        boolean nextIs(String start) {
            return at < lines.length && lines[at].startsWith(start);
        }

        String nextName() {
            int colon = lines[at].indexOf(": ");
            if (colon < 0) {
                throw wrong(lines[at], Said.of("record.line.named"));
            }
            return lines[at].substring(0, colon);
        }

        String take(String name) {
            String start = name + ": ";
            if (!nextIs(start)) {
                throw wrong(here(), Said.of("record.line.start", "start", start));
            }
            return plain(lines[at++].substring(start.length()));
        }

        void end() {
            if (at != lines.length - 1 || !lines[at].isEmpty()) {
                throw wrong(here(), Said.of("record.line.end"));
            }
        }

        private static String plain(String value) {
            StringBuilder out = new StringBuilder();
            for (int k = 0; k < value.length(); k++) {
                char c = value.charAt(k);
                if (c == '\\' && k + 1 < value.length()) {
                    char next = value.charAt(++k);
                    out.append(next == 'n' ? '\n' : next == 'r' ? '\r' : next);
                } else {
                    out.append(c);
                }
            }
            return out.toString();
        }

        private Said here() {
            return at < lines.length ? Said.text(lines[at]) : Said.of("found.end");
        }

        EarleafException wrong(String found, Said expected) {
            return wrong(Said.text(found), expected);
        }

        EarleafException wrong(Said found, Said expected) {
            Said place = Said.of("where.record-line", "line", String.valueOf(at + 1));
            return new EarleafException(Problem.of("record.changed", place, found, "expected", expected));
        }
    }
}
