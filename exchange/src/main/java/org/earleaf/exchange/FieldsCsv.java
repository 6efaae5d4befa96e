// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Checks;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldId;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneId;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** fields.csv: one row for each field or zone with its crop of the season. */
final class FieldsCsv {
    /** The model's planting days, 26 March to 29 June; from February to August a date may be meant. */
    private static final int FIRST_DAY = 85;

    private static final int LAST_DAY = 180;

    /** Of corn in the Midwest; common practice, no source. */
    private static final double USUAL_MATURITY_D = 108;

    private static final double USUAL_POPULATION_M2 = 8.0;
    private static final double USUAL_ROW_SPACING_M = 0.762;

    /** A zone that still lacks its soil. */
    record FieldRow(int line, String field, String zone, double area_ha, Function<SoilProfile, Zone> with) {}

    private final Column field;
    private final Column zone;
    private final Column area;
    private final Column crop;
    private final Column planted;
    private final Column maturity;
    private final Column population;
    private final Column spacing;
    private final Column previous;
    private final Column drainage;
    private final Column tillage;
    private final Column residue;
    private final Column curve;
    private final Column hybrid;
    private final Column silk;
    private final Column blackLayer;
    private final Column goal;
    private final DiseaseColumns disease;
    private final IdColumn id;

    private FieldsCsv(Sheet sheet) {
        field = sheet.text("field");
        zone = sheet.text("zone").emptyAllowed();
        area = sheet.number("area", Measures.AREA_HA, Ranges.FIELD_AREA);
        crop = sheet.text("crop");
        planted = sheet.text("planted");
        maturity = sheet.number("relative_maturity", Measures.DAYS, Ranges.MATURITY);
        population = sheet.number("population", Measures.PLANTS_M2, Ranges.POPULATION);
        spacing = sheet.number("row_spacing", Measures.LENGTH_M, Ranges.ROW_SPACING);
        previous = sheet.text("previous_crop");
        drainage = sheet.optionalText("drainage");
        tillage = sheet.optionalText("tillage");
        residue = sheet.optionalNumber("residue_cover", Measures.SHARE, Ranges.RESIDUE_COVER);
        curve = sheet.optionalNumber("curve_number", Measure.PLAIN, Ranges.CURVE_NUMBER);
        hybrid = sheet.optionalText("hybrid");
        silk = sheet.optionalNumber("gdd_silk", Measures.GDD_F, Ranges.HEAT_TO_SILK);
        blackLayer = sheet.optionalNumber("gdd_black_layer", Measures.GDD_F, Ranges.HEAT_TO_BLACK_LAYER);
        goal = sheet.optionalNumber("yield_goal", Measures.DRY_GRAIN_KGHA, Ranges.YIELD_GOAL);
        disease = new DiseaseColumns(sheet);
        id = new IdColumn(sheet, "field_id");
    }

    static List<FieldRow> read(Sheet sheet, Names names) {
        FieldsCsv file = new FieldsCsv(sheet);
        if (!sheet.isComplete()) {
            return List.of();
        }
        if (sheet.rows().isEmpty()) {
            sheet.refuseNoRows();
        }
        List<FieldRow> rows = new ArrayList<>();
        Map<String, Row> seen = new HashMap<>();
        boolean named = !sheet.isTorn();
        for (Row row : sheet.rows()) {
            file.refuseTwice(row, seen);
            named &= row.isGood() && !row.isEmpty(file.field);
            file.read(row, names).ifPresent(rows::add);
        }
        if (named) {
            names.setWhole();
        }
        return rows;
    }

    private void refuseTwice(Row row, Map<String, Row> seen) {
        String name = row.cell(field);
        String key = (name + "|" + row.cell(zone)).toLowerCase(Locale.ROOT);
        Row before = seen.putIfAbsent(key, row);
        if (before != null && !name.isEmpty()) {
            String label = row.isEmpty(zone) ? name : name + ", " + row.cell(zone);
            row.refuse(
                    "field.planted-twice",
                    field,
                    Said.of("found.planted-twice", "place", label, "row", String.valueOf(before.line())));
        }
        String whole = (name + "|").toLowerCase(Locale.ROOT);
        boolean mixed = row.isEmpty(zone)
                ? seen.keySet().stream().anyMatch(k -> k.startsWith(whole) && !k.equals(whole))
                : seen.containsKey(whole);
        if (mixed) {
            row.refuse("field.whole-and-zones", zone, Said.of("found.whole-and-zones", "field", name));
        }
    }

    private Optional<FieldRow> read(Row row, Names names) {
        String f = row.text(field);
        String z = row.text(zone);
        String c = row.text(crop).toLowerCase(Locale.ROOT);
        boolean corn = c.equals("corn");
        Optional<LocalDate> day = plantingDay(row, corn);
        if (!f.isEmpty()) {
            names.add(f, z, day, corn);
        }
        double ha = row.number(area);
        // A row without a good day is refused below, whatever stands for it until then.
        Zone.Planting planting = planting(row, c, day.orElse(LocalDate.EPOCH));
        Zone.Seedbed bed = seedbed(row);
        Drainage drain = row.word(drainage, Drainage::findByWord, Drainage.words(), Drainage.WELL, "well");
        double cn = row.number(curve);
        DiseaseFacts known = disease.read(row);
        ZoneName called = new ZoneName(new ZoneId(new FieldId(id.of(row, f)), z), f, z);
        if (!row.isGood() || day.isEmpty()) {
            return Optional.empty();
        }
        Function<SoilProfile, Zone> with =
                soil -> new Zone(called, ha, planting, new Zone.Land(soil, drain, cn), bed, known);
        return Optional.of(new FieldRow(row.line(), f, z, ha, with));
    }

    private Zone.Planting planting(Row row, String crop, LocalDate day) {
        boolean corn = crop.equals("corn");
        double days = number(row, maturity, corn, USUAL_MATURITY_D);
        double plants = number(row, population, corn, USUAL_POPULATION_M2);
        double rows_m = number(row, spacing, corn, USUAL_ROW_SPACING_M);
        Hybrid seed = new Hybrid(row.text(hybrid), days, row.number(silk), row.number(blackLayer));
        return new Zone.Planting(crop, day, seed, plants, rows_m, row.number(goal));
    }

    private Zone.Seedbed seedbed(Row row) {
        PreviousCrop before = row.word(previous, PreviousCrop::findByWord, PreviousCrop.words())
                .orElse(PreviousCrop.OTHER);
        Tillage till = row.word(tillage, Tillage::findByWord, Tillage.words(), Tillage.REDUCED, "reduced");
        return new Zone.Seedbed(before, till, row.number(residue));
    }

    /** An empty cell is the usual value for corn, and nothing for another crop; nor do corn's limits bind that. */
    private static double number(Row row, Column column, boolean corn, double usual) {
        return corn
                ? row.number(column, usual)
                : row.number(column.emptyAllowed().within(Allowed.NOT_NEGATIVE));
    }

    private Optional<LocalDate> plantingDay(Row row, boolean corn) {
        Optional<LocalDate> date = row.date(planted);
        if (!corn || date.isEmpty()) {
            return date;
        }
        LocalDate day = date.get();
        int of = day.getDayOfYear();
        Optional<Problem> impossible = Checks.planting(day);
        if (impossible.isPresent()) {
            row.refuse(planted, impossible.get());
            return date;
        }
        int in = Math.max(FIRST_DAY, Math.min(LAST_DAY, of));
        if (in == of) {
            return date;
        }
        LocalDate taken = LocalDate.ofYearDay(day.getYear(), in);
        row.flag(
                planted,
                "outside the model's planting days",
                day + " is outside the model's days; " + taken + " is taken");
        return Optional.of(taken);
    }
}
