// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.FieldEntry;
import org.earleaf.entry.Parts;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.Disease;
import org.earleaf.field.FieldId;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneId;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Said;

/** fields.csv: one row for each field or zone with its crop of the season. */
final class FieldsCsv {
    /** A zone that still lacks its soil. */
    record FieldRow(int line, String field, String zone, double area_ha, Function<SoilProfile, Zone> with) {}

    private final Column field;
    private final Column zone;
    private final List<Column> columns = new ArrayList<>();
    private final IdColumn id;

    private FieldsCsv(Sheet sheet) {
        Allowed any = Allowed.ANY;
        field = sheet.text("field");
        zone = sheet.text("zone").emptyAllowed();
        columns.addAll(List.of(
                field,
                zone,
                sheet.number("area", Measures.AREA_HA, any),
                sheet.text("crop"),
                sheet.text("planted"),
                sheet.number("relative_maturity", Measures.DAYS, any),
                sheet.number("population", Measures.PLANTS_M2, any),
                sheet.number("row_spacing", Measures.LENGTH_M, any),
                sheet.text("previous_crop"),
                sheet.optionalText("drainage"),
                sheet.optionalText("tillage"),
                sheet.optionalNumber("residue_cover", Measures.SHARE, any),
                sheet.optionalNumber("curve_number", Measure.PLAIN, any),
                sheet.optionalText("hybrid"),
                sheet.optionalNumber("gdd_silk", Measures.GDD_F, any),
                sheet.optionalNumber("gdd_black_layer", Measures.GDD_F, any),
                sheet.optionalNumber("yield_goal", Measures.DRY_GRAIN_KGHA, any),
                sheet.optionalNumber("disease_rating", Measure.PLAIN, any)));
        for (Disease disease : Disease.values()) {
            columns.add(sheet.optionalNumber(FieldEntry.rating(disease), Measure.PLAIN, any));
        }
        columns.add(sheet.optionalText("disease_history"));
        columns.add(sheet.optionalText("wet_place"));
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
        Parts parts = new RowParts(row, columns);
        FieldEntry entry = FieldEntry.begin(parts);
        String f = row.cell(field);
        String z = row.cell(zone);
        if (!f.isEmpty()) {
            names.add(f, z, entry.planted(), entry.isCorn());
        }
        ZoneName called = new ZoneName(new ZoneId(new FieldId(id.of(row, f)), z), f, z);
        return entry.zone(called).map(g -> new FieldRow(row.line(), f, z, g.area_ha(), g.with()));
    }
}
