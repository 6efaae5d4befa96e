// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.SoilEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Flag;

/** soil.csv: horizons of a field or zone, top first. */
final class SoilCsv {
    private record Key(String field, String zone) {}

    private final Sheet sheet;
    private final Column field;
    private final Column zone;
    private final List<Column> columns;
    private final Map<Key, List<SoilEntry.Layer>> layers = new LinkedHashMap<>();
    private final Map<Key, List<Horizon>> horizons = new HashMap<>();
    /** Those of which a row is wrong; what remains of them is not judged. */
    private final Set<Key> torn = new HashSet<>();

    private boolean whole = true;

    private SoilCsv(Sheet sheet) {
        this.sheet = sheet;
        field = sheet.text("field");
        zone = sheet.text("zone").emptyAllowed();
        Allowed any = Allowed.ANY;
        Column texture = sheet.optionalText("texture");
        columns = List.of(
                texture,
                sheet.number("top", Measures.SOIL_DEPTH_MM, any),
                sheet.number("bottom", Measures.SOIL_DEPTH_MM, any),
                share("sand", texture),
                share("clay", texture),
                sheet.number("om", Measures.PERCENT, any).emptyAllowed(),
                sheet.number("ph", Measure.PLAIN, any).emptyAllowed(),
                sheet.optionalNumber("cec", Measures.CEC_CMOLKG, any),
                sheet.optionalNumber("bulk_density", Measures.DENSITY_GCM3, any),
                sheet.optionalNumber("wilting_point", Measures.SHARE, any),
                sheet.optionalNumber("field_capacity", Measures.SHARE, any));
    }

    /** Needed where no texture stands for it. */
    private Column share(String base, Column texture) {
        return texture.isThere()
                ? sheet.optionalNumber(base, Measures.PERCENT, Allowed.ANY)
                : sheet.number(base, Measures.PERCENT, Allowed.ANY);
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
            file.layers.keySet().removeAll(file.torn);
            if (!sheet.isTorn()) {
                file.layers.forEach((key, layers) -> file.horizons.put(key, SoilEntry.horizons(layers)));
            }
            file.whole &= !sheet.isTorn() && file.torn.isEmpty();
        }
        return file;
    }

    private void read(Row row, Names names) {
        String f = names.field(row, field);
        String z = names.zone(row, zone, f);
        SoilEntry.Layer layer = SoilEntry.layer(new RowParts(row, columns));
        if (row.isGood()) {
            layers.computeIfAbsent(new Key(f, z), k -> new ArrayList<>()).add(layer);
        } else {
            torn.add(new Key(f, z));
        }
    }

    /** The soil of a zone: its own horizons, or else those given for the whole field. */
    Optional<SoilProfile> find(String fieldName, String zoneName, Findings findings) {
        List<Horizon> own = horizons.get(new Key(fieldName, zoneName));
        List<Horizon> found = own != null ? own : horizons.get(new Key(fieldName, ""));
        if (found == null) {
            return Optional.empty();
        }
        String label = zoneName.isEmpty() ? fieldName : fieldName + ", " + zoneName;
        List<Flag> flags = new ArrayList<>();
        SoilProfile profile = SoilProfile.of(found, sheet.name() + ", " + label, flags);
        flags.forEach(findings::flag);
        return Optional.of(profile);
    }

    /** Whether every row could be read, so that a zone without soil is truly without. */
    boolean isWhole() {
        return whole;
    }
}
