// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.label.CropStages;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelEntry.Look;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * labels.csv: what labels say, one figure a row. The rows of a product and crop make one entry; a row without a crop
 * counts for every crop that its product has rows of. An entry is read off a label as a whole: who entered it and who
 * looked again is the same in all of its rows.
 */
final class LabelsCsv {
    private final Shelf shelf;
    private final ZoneId zone;
    private final Column product;
    private final Column crop;
    private final Column item;
    private final Column of;
    private final Column value;
    private final Column unit;
    private final Column enteredBy;
    private final Column enteredOn;
    private final Column checkedBy;
    private final Column checkedOn;

    private LabelsCsv(Sheet sheet, Shelf shelf, ZoneId zone) {
        this.shelf = shelf;
        this.zone = zone;
        product = sheet.text("product");
        crop = sheet.optionalText("crop");
        item = sheet.text("item");
        of = sheet.optionalText("of");
        value = sheet.text("value");
        unit = sheet.optionalText("unit");
        enteredBy = sheet.text("entered_by");
        enteredOn = sheet.text("entered_on");
        checkedBy = sheet.optionalText("second_look_by");
        checkedOn = sheet.optionalText("second_look_on");
    }

    static LabelBook read(Sheet sheet, Shelf shelf, ZoneId zone) {
        LabelsCsv file = new LabelsCsv(sheet, shelf, zone);
        if (!sheet.isComplete()) {
            return LabelBook.EMPTY;
        }
        Map<String, List<LabelLine>> byProduct = new LinkedHashMap<>();
        for (Row row : sheet.rows()) {
            file.line(row).ifPresent(line -> byProduct
                    .computeIfAbsent(line.product().toLowerCase(Locale.ROOT), k -> new ArrayList<>())
                    .add(line));
        }
        List<LabelEntry> entries = new ArrayList<>();
        byProduct.values().forEach(lines -> entries.addAll(file.entries(lines)));
        return new LabelBook(entries);
    }

    private Optional<LabelLine> line(Row row) {
        String name = row.told(shelf.named(row.cell(product)), List.of(product)).orElse(row.cell(product));
        String what = row.text(item).toLowerCase(Locale.ROOT);
        if (!what.isEmpty() && LabelItem.findByWord(what).isEmpty() && !LabelWriter.WORDS.contains(what)) {
            row.refuse("label.item-unknown", item, Problem.seen(what), "items", LabelWriter.words());
        }
        boolean named = LabelWriter.NAMED.contains(what);
        if (named == row.isEmpty(of) && row.isGood()) {
            row.refuse(named ? "label.of-missing" : "label.of-not-here", of, Problem.seen(row.cell(of)));
        }
        String said = (row.text(value) + " " + row.text(unit)).strip();
        Look look = look(row);
        return row.isGood()
                ? Optional.of(new LabelLine(
                        row,
                        item,
                        value,
                        name,
                        row.text(crop).toLowerCase(Locale.ROOT),
                        what,
                        row.text(of).toLowerCase(Locale.ROOT),
                        said,
                        look))
                : Optional.empty();
    }

    private Look look(Row row) {
        String first = row.text(enteredBy);
        Optional<LocalDate> day = row.date(enteredOn);
        String second = row.text(checkedBy);
        Optional<LocalDate> again = row.date(checkedOn.emptyAllowed());
        if (second.isEmpty() != again.isEmpty() && row.isGood()) {
            Column missing = second.isEmpty() ? checkedBy : checkedOn;
            row.refuse("label.look-half", missing, Said.of("found.nothing"));
        }
        if (day.isPresent() && again.isPresent() && again.get().isBefore(day.get())) {
            row.refuse(
                    "label.looked-before-entered",
                    checkedOn,
                    Said.of("found.before-entered", "day", again.get()),
                    "day",
                    day.get());
        }
        var at = day.orElse(LocalDate.EPOCH).atStartOfDay(zone).toInstant();
        return new Look(
                first,
                at,
                second,
                again.map(d -> d.atStartOfDay(zone).toInstant()).orElse(at));
    }

    /** Entries of one product, in the order in which its crops are first named. */
    private List<LabelEntry> entries(List<LabelLine> lines) {
        Set<String> crops = new LinkedHashSet<>();
        lines.stream().map(LabelLine::crop).filter(c -> !c.isEmpty()).forEach(crops::add);
        LabelLine head = lines.get(0);
        if (crops.isEmpty()) {
            head.row().refuse("label.no-crop", crop, Said.of("found.no-crop"));
        }
        List<LabelEntry> entries = new ArrayList<>();
        for (String of : crops) {
            List<LabelLine> own = lines.stream()
                    .filter(l -> l.crop().isEmpty() || l.crop().equals(of))
                    .toList();
            if (!CropStages.crops().contains(of)) {
                own.get(0)
                        .row()
                        .flag(
                                crop,
                                "stages of " + of,
                                "the stages of " + of + " are not known; stage limits of it cannot be entered");
            }
            if (sameLook(own)) {
                new LabelWriter(shelf.find(head.product()), head.product(), of, own)
                        .entry()
                        .ifPresent(entries::add);
            }
        }
        return entries;
    }

    /** Whether one person read all of it, and one looked again; told of the first row that differs. */
    private boolean sameLook(List<LabelLine> lines) {
        Look look = lines.get(0).look();
        for (LabelLine line : lines) {
            if (!line.look().equals(look)) {
                line.row().refuse("label.two-looks", enteredBy, Said.of("found.other-look"));
                return false;
            }
        }
        return true;
    }
}
