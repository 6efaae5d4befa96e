// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.entry.Checks;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.exchange.table.Texts;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;

/** soil.csv: horizons of a field or zone, top first. */
final class SoilCsv {
    private static final double EQUAL_MM = 0.6;
    private static final double MODEL_DEPTH_MM = 1524;
    private static final double NEUTRAL_PH = 6.5;

    private record Key(String field, String zone) {}

    private record Found(Row row, Horizon horizon) {}

    private final Sheet sheet;
    private final Column field;
    private final Column zone;
    private final Column top;
    private final Column bottom;
    private final Column sand;
    private final Column clay;
    private final Column om;
    private final Column ph;
    private final Column cec;
    private final Column density;
    private final Column wilting;
    private final Column capacity;
    private final Map<Key, List<Found>> horizons = new LinkedHashMap<>();
    /** Those of which a row is wrong; what remains of them is not judged. */
    private final Set<Key> torn = new HashSet<>();

    private boolean whole = true;

    private SoilCsv(Sheet sheet) {
        this.sheet = sheet;
        field = sheet.text("field");
        zone = sheet.text("zone").emptyAllowed();
        top = sheet.number("top", Measures.SOIL_DEPTH_MM, Ranges.SOIL_TOP);
        bottom = sheet.number("bottom", Measures.SOIL_DEPTH_MM, Ranges.SOIL_BOTTOM);
        sand = sheet.number("sand", Measures.PERCENT, Ranges.SAND);
        clay = sheet.number("clay", Measures.PERCENT, Ranges.CLAY);
        om = sheet.number("om", Measures.PERCENT, Ranges.ORGANIC_MATTER).emptyAllowed();
        ph = sheet.number("ph", Measure.PLAIN, Ranges.PH).emptyAllowed();
        cec = sheet.optionalNumber("cec", Measures.CEC_CMOLKG, Ranges.CEC);
        density = sheet.optionalNumber("bulk_density", Measures.DENSITY_GCM3, Ranges.BULK_DENSITY);
        wilting = sheet.optionalNumber("wilting_point", Measures.SHARE, Ranges.WILTING_POINT);
        capacity = sheet.optionalNumber("field_capacity", Measures.SHARE, Ranges.FIELD_CAPACITY);
    }

    static SoilCsv read(Sheet sheet, Names names) {
        SoilCsv file = new SoilCsv(sheet);
        file.whole = sheet.isComplete();
        if (file.whole) {
            if (sheet.rows().isEmpty()) {
                sheet.refuseNoRows();
                file.whole = false;
            }
            sheet.rows().forEach(row -> file.read(row, names));
            file.horizons.keySet().removeAll(file.torn);
            if (!sheet.isTorn()) {
                file.horizons.values().forEach(file::checkOrder);
            }
            file.whole &= !sheet.isTorn() && file.torn.isEmpty();
        }
        return file;
    }

    private void read(Row row, Names names) {
        String f = names.field(row, field);
        String z = names.zone(row, zone, f);
        Horizon h = new Horizon(
                row.number(top),
                row.number(bottom),
                row.number(sand),
                row.number(clay),
                row.number(om),
                row.number(ph),
                row.number(cec),
                row.number(density),
                row.number(wilting),
                row.number(capacity));
        row.refuse(Checks.horizon(h), clay, bottom);
        if (row.isGood()) {
            horizons.computeIfAbsent(new Key(f, z), k -> new ArrayList<>()).add(new Found(row, h));
        } else {
            torn.add(new Key(f, z));
        }
    }

    private void checkOrder(List<Found> found) {
        found.sort(Comparator.comparingDouble(x -> x.horizon().top_mm()));
        double reached = 0;
        for (Found x : found) {
            Row row = x.row();
            if (Math.abs(x.horizon().top_mm() - reached) > EQUAL_MM) {
                row.refuse(
                        "soil.horizons-apart",
                        top,
                        x.horizon().top_mm() > reached
                                ? Said.of("found.horizon-gap", "top", row.cell(top))
                                : Said.of("found.horizon-overlap", "top", row.cell(top)),
                        "reached",
                        Texts.number(top.unit().entered(reached)));
            }
            reached = x.horizon().bottom_mm();
        }
        Found first = found.get(0);
        if (Double.isNaN(first.horizon().om_pct())) {
            first.row().refuse(om, EarleafException.coded("cell.empty", "om", ""));
        }
        if (Double.isNaN(first.horizon().ph())) {
            first.row().flag(ph, "empty", "empty; " + NEUTRAL_PH + " is taken");
        }
        remark(found, reached);
    }

    private void remark(List<Found> found, double reached) {
        for (Found x : found.subList(1, found.size())) {
            flagEmpty(x.row(), om);
            flagEmpty(x.row(), ph);
        }
        if (reached < MODEL_DEPTH_MM - EQUAL_MM) {
            Row last = found.get(found.size() - 1).row();
            last.flag(
                    bottom,
                    "ends early",
                    "the lowest horizon ends above 60 in (1524 mm); it is taken to reach on down");
        }
        for (Found x : found) {
            if (x.row().isEmpty(wilting) != x.row().isEmpty(capacity)) {
                x.row().flag(wilting, "one of two", "wilting point or field capacity alone; both come from texture");
            }
        }
    }

    private static void flagEmpty(Row row, Column column) {
        if (row.isEmpty(column)) {
            row.flag(column, "empty", "empty; that of the horizon above is taken");
        }
    }

    /** The soil of a zone: its own horizons, or else those given for the whole field. */
    Optional<SoilProfile> find(String fieldName, String zoneName, Findings findings) {
        List<Found> own = horizons.get(new Key(fieldName, zoneName));
        List<Found> found = own != null ? own : horizons.get(new Key(fieldName, ""));
        if (found == null) {
            return Optional.empty();
        }
        List<Horizon> list = new ArrayList<>();
        for (Found x : found) {
            Horizon h = x.horizon();
            list.add(list.isEmpty() && Double.isNaN(h.ph()) ? withPh(h, NEUTRAL_PH) : h);
        }
        String label = zoneName.isEmpty() ? fieldName : fieldName + ", " + zoneName;
        List<Flag> flags = new ArrayList<>();
        SoilProfile profile = SoilProfile.of(list, sheet.name() + ", " + label, flags);
        flags.forEach(f -> findings.flag(Place.of(f.where().toString()), f.what()));
        return Optional.of(profile);
    }

    private static Horizon withPh(Horizon h, double ph) {
        return new Horizon(
                h.top_mm(),
                h.bottom_mm(),
                h.sand_pct(),
                h.clay_pct(),
                h.om_pct(),
                ph,
                h.cec_cmolKg(),
                h.bulkDensity_gcm3(),
                h.wiltingPoint_share(),
                h.fieldCapacity_share());
    }

    /** Whether every row could be read, so that a zone without soil is truly without. */
    boolean isWhole() {
        return whole;
    }
}
