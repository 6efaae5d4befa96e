// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import static org.earleaf.app.words.Words.tell;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.record.Chain;
import org.earleaf.record.Deadlines;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.ProductUse;
import org.earleaf.record.RecordRule;

/**
 * What is posted at the central place after an application.
 *
 * <p>Source: 40 CFR 170.309 and 170.311: product, registration number, active ingredient, crop or site, location and
 * description of the treated ground, date, start and end, restricted-entry interval; within 24 hours of the end and for
 * 30 days after the interval; kept two years. Above how many hours signs and spoken word are both asked for is an
 * assumption here: both above 24 hours, which is stricter than the rule is said to be.
 *
 * @param missing what the rule asks for and the record does not tell
 */
public record PostingSheet(
        String farm,
        long number,
        Treated treated,
        Applied applied,
        KeepOut keepOut,
        Hung hung,
        List<Row> products,
        List<String> missing,
        Proof proof) {
    private static final int BOTH_ABOVE_H = 24;

    /** Where it was put on. */
    public record Treated(String place, String ground, String location, String crop) {}

    /** When it was put on, and by whom. */
    public record Applied(String date, String start, String end, String by) {}

    /**
     * For how long nobody goes in.
     *
     * @param interval hours that the labels ask for
     * @param until when that is over
     * @param signs what to do about signs
     */
    public record KeepOut(String interval, String until, String signs) {}

    /** For how long the sheet hangs and is kept, and by which rule. */
    public record Hung(String postBy, String takeDown, String keepUntil, String rule) {}

    /**
     * What leads to the record.
     *
     * @param head newest fingerprint when printed
     */
    public record Proof(String code, String head) {}

    /** One product. */
    public record Row(String name, String registration, String actives, String reentry) {}

    /** Whether a record is of something that is posted. */
    public static boolean isPosted(FiledRecord r) {
        return r.isRegistered();
    }

    public static PostingSheet of(Chain.Entry entry, List<Chain.Entry> book, LabelBook labels, Farm farm) {
        FiledRecord r = entry.record();
        ZoneId home = farm.timeZone();
        Deadlines due = Deadlines.of(r, home, RecordRule.federal());
        List<Row> rows = r.products().stream()
                .filter(ProductUse::isRegistered)
                .map(p -> row(p, labels))
                .toList();
        return new PostingSheet(
                farm.name(),
                entry.number(),
                new Treated(Sheets.place(r.field(), r.zone()), r.area().text(), r.location(), r.crop()),
                new Applied(
                        Dates.full(r.date()),
                        Sheets.clock(r.start(), home),
                        Sheets.clock(r.end(), home),
                        r.applicator().name()),
                keepOut(r.reentry_h(), due, home),
                hung(due, home),
                rows,
                missing(r, rows),
                new Proof(Sheets.code(entry.hash()), Chain.head(book)));
    }

    private static KeepOut keepOut(OptionalInt hours, Deadlines due, ZoneId home) {
        return new KeepOut(
                hours.isPresent() ? hours.getAsInt() + " h" : tell("print.posting.none-stated"),
                hours.isPresent() ? Sheets.time(due.reentryEnds(), home) : tell("print.posting.as-the-label-says"),
                signs(hours));
    }

    private static Hung hung(Deadlines due, ZoneId home) {
        return new Hung(
                Sheets.time(due.postBy(), home),
                Dates.full(due.unpostAfter()),
                Dates.full(due.keepUntil()),
                Words.here().say(RecordRule.federal().jurisdiction()));
    }

    private static Row row(ProductUse p, LabelBook labels) {
        String actives =
                labels.activesOf(p.name()).stream().map(ActiveIngredient::name).collect(Collectors.joining(", "));
        String hours = p.reentry_h().isPresent() ? p.reentry_h().getAsInt() + " h" : tell("print.posting.none-stated");
        return new Row(p.name(), p.registration(), actives, hours);
    }

    private static List<String> missing(FiledRecord r, List<Row> rows) {
        List<String> missing = new ArrayList<>();
        if (r.start().isEmpty() || r.end().isEmpty()) {
            missing.add(tell("print.posting.start-and-end-of-the"));
        }
        rows.stream()
                .filter(row -> row.actives().isEmpty())
                .forEach(row -> missing.add(tell("print.posting.active-ingredients-of", "name", row.name())));
        return missing;
    }

    private static String signs(OptionalInt hours) {
        boolean both = hours.isPresent() && hours.getAsInt() > BOTH_ABOVE_H;
        return both ? tell("print.posting.put-up-signs-and-tell") : tell("print.posting.tell-every-worker-or-put");
    }
}
