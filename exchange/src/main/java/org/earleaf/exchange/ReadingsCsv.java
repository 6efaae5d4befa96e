// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Limits;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.exchange.table.Texts;
import org.earleaf.field.Incidence;
import org.earleaf.field.Observed;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.ScoutingCount;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

/** readings.csv: anything observed in a field. */
final class ReadingsCsv {
    /** The depth of a spring nitrate test [mm]: 0 to 12 in. */
    private static final double USUAL_TEST_MM = 304.8;

    private static final double MOST_NITRATE_MGKG = 60;
    private static final double MOST_AMMONIUM_MGKG = 30;

    private final Sheet sheet;
    private final Names names;
    private final BiFunction<String, String, Optional<SoilProfile>> soils;
    private final Column field;
    private final Column date;
    private final Column kind;
    private final Column value;
    private final Column unit;
    private final Column zone;
    private final Column top;
    private final Column bottom;
    private final Column position;
    private final Column note;
    private final Column found;
    private final Column positive;
    private final Column plants;
    private final Column leaf;

    private ReadingsCsv(Sheet sheet, Names names, BiFunction<String, String, Optional<SoilProfile>> soils) {
        this.sheet = sheet;
        this.names = names;
        this.soils = soils;
        Limits depth = Limits.refuse(0, 3000);
        field = sheet.text("field");
        date = sheet.text("date");
        kind = sheet.text("kind");
        value = sheet.text("value").emptyAllowed();
        unit = sheet.text("unit").emptyAllowed();
        zone = sheet.optionalText("zone");
        top = sheet.optionalNumber("top", Measures.SOIL_DEPTH_MM, depth);
        bottom = sheet.optionalNumber("bottom", Measures.SOIL_DEPTH_MM, depth);
        position = sheet.optionalText("position");
        note = sheet.optionalText("note");
        found = sheet.optionalText(ScoutingCount.FOUND);
        positive = sheet.optionalText(ScoutingCount.POSITIVE);
        plants = sheet.optionalText(ScoutingCount.PLANTS);
        leaf = sheet.optionalText(ScoutingCount.LEAF);
    }

    /** @param soils soil of a field and zone, for soil tests given by area */
    static List<Reading> read(Sheet sheet, Names names, BiFunction<String, String, Optional<SoilProfile>> soils) {
        ReadingsCsv file = new ReadingsCsv(sheet, names, soils);
        List<Reading> readings = new ArrayList<>();
        if (sheet.isComplete()) {
            sheet.rows().forEach(row -> file.read(row).ifPresent(readings::add));
        }
        return readings;
    }

    private Optional<Reading> read(Row row) {
        String f = names.field(row, field);
        String z = names.zone(row, zone, f);
        Optional<LocalDate> day = row.date(date);
        Optional<Reading.Kind> what = row.word(kind, Reading.Kind::findByWord, Reading.Kind.words());
        ScoutingCount count = new ScoutingCount(row.cell(found), row.cell(positive), row.cell(plants), row.cell(leaf));
        String written = what.map(k -> note(row, k, count)).orElse("");
        double from = row.number(top);
        double to = row.number(bottom);
        Reading.Position where = row.word(position, ReadingsCsv::findPosition, "random, row, middle")
                .orElse(Reading.Position.RANDOM);
        if (from >= to) {
            row.refuse(
                    bottom,
                    row.cell(bottom) + ", with the top at " + row.cell(top),
                    "a bottom below the top",
                    "Check both.");
        }
        if (Double.isNaN(from) != Double.isNaN(to) && row.isGood()) {
            Column empty = Double.isNaN(from) ? top : bottom;
            row.refuse(
                    empty, "one depth of two", "both depths, or none", "Give from where to where the soil was taken.");
        }
        Optional<Incidence> counted =
                what.isPresent() && row.isGood() ? counted(row, what.get(), count) : Optional.empty();
        double inside = counted.isPresent()
                ? counted.get().share()
                : what.isPresent() && row.isGood() ? inside(row, what.get(), f, z, from, to) : Double.NaN;
        if (!row.isGood() || day.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        boolean assume = Double.isNaN(from) && isOfSoil(what.get());
        if (assume) {
            row.flag(top, "no depth", "no depth; 0 to 12 in (305 mm) is taken");
        }
        return Optional.of(new Reading(
                sheet.name() + " row " + row.line(),
                f,
                z,
                day.get(),
                what.get(),
                inside,
                counted.map(Incidence::toString).orElse(entered(row)),
                assume ? 0 : from,
                assume ? USUAL_TEST_MM : to,
                where,
                written));
    }

    /** The note, with the count of plants in words before it; refuses what cannot be. */
    private String note(Row row, Reading.Kind what, ScoutingCount count) {
        try {
            String written = count.note(what, row.text(note));
            if (what == Reading.Kind.LESIONS || what == Reading.Kind.INSECTS) {
                Scouted.of(written);
            }
            return written;
        } catch (EarleafException e) {
            Problem p = e.problems().get(0);
            row.refuse(column(p.where()), p.found(), p.expected(), p.todo());
            return "";
        }
    }

    private Column column(String part) {
        return switch (part) {
            case ScoutingCount.FOUND -> found;
            case ScoutingCount.POSITIVE -> positive;
            case ScoutingCount.PLANTS -> plants;
            case ScoutingCount.LEAF -> leaf.isThere() ? leaf : note;
            default -> note;
        };
    }

    /** Lesions may be given by the plants that show them alone. */
    private Optional<Incidence> counted(Row row, Reading.Kind what, ScoutingCount count) {
        return what == Reading.Kind.LESIONS && row.isEmpty(value) ? count.incidence() : Optional.empty();
    }

    private String entered(Row row) {
        return (row.cell(value) + " " + row.cell(unit)).strip();
    }

    private static boolean isOfSoil(Reading.Kind kind) {
        return kind == Reading.Kind.NITRATE || kind == Reading.Kind.AMMONIUM || kind == Reading.Kind.MOISTURE;
    }

    private double inside(Row row, Reading.Kind what, String f, String z, double from, double to) {
        if (row.isEmpty(value)) {
            row.refuse(value, "an empty cell", "a value", "Fill the cell.");
            return Double.NaN;
        }
        String text = row.cell(value);
        double density =
                soils.apply(f, z).map(soil -> density(soil, from, to)).orElse(Observed.USUAL_BULK_DENSITY_GCM3);
        try {
            double inside = Observed.inside(what, text, row.cell(unit), to - from, density);
            return limited(row, what, inside);
        } catch (EarleafException e) {
            Problem p = e.problems().get(0);
            Column wrong = p.where().startsWith("unit") ? unit : value;
            row.refuse(wrong, p.found(), p.expected(), p.todo());
            return Double.NaN;
        }
    }

    private static double density(SoilProfile soil, double from_mm, double to_mm) {
        double density = soil.bulkDensity_gcm3(from_mm, to_mm);
        return Double.isNaN(density) ? Observed.USUAL_BULK_DENSITY_GCM3 : density;
    }

    private double limited(Row row, Reading.Kind what, double inside) {
        double most =
                switch (what) {
                    case NITRATE -> MOST_NITRATE_MGKG;
                    case AMMONIUM -> MOST_AMMONIUM_MGKG;
                    default -> Double.POSITIVE_INFINITY;
                };
        if (inside > most) {
            String taken = Texts.number(most) + " ppm is taken";
            row.flag(value, "outside the model", entered(row) + " is more than the model holds for; " + taken);
            return most;
        }
        return inside;
    }

    private static Optional<Reading.Position> findPosition(String word) {
        return Arrays.stream(Reading.Position.values())
                .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
