// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.RigEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.units.Said;

/** rigs.csv: machines that make passes. */
final class RigsCsv {
    private RigsCsv() {}

    static List<Rig> read(Sheet sheet) {
        Column name = sheet.text(RigEntry.NAME);
        List<Column> columns = columns(sheet, name);
        IdColumn id = new IdColumn(sheet, "id");
        List<Rig> rigs = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        if (!sheet.isComplete()) {
            return rigs;
        }
        for (Row row : sheet.rows()) {
            String rig = row.text(name);
            if (!seen.add(rig.toLowerCase(Locale.ROOT))) {
                row.refuse("row.twice", name, Said.of("found.second-time", "what", rig));
            }
            RigEntry.of(new RowParts(row, columns), new RigId(id.of(row, rig))).ifPresent(rigs::add);
        }
        return rigs;
    }

    private static List<Column> columns(Sheet sheet, Column name) {
        Allowed any = Allowed.ANY;
        return List.of(
                name,
                sheet.text("kind"),
                sheet.number("clearance", Measures.LENGTH_M, any),
                sheet.number("width", Measures.LENGTH_M, any),
                sheet.number("tank", Measures.VOLUME_M3, any),
                sheet.optionalNumber("speed_min", Measures.SPEED_MS, any),
                sheet.optionalNumber("speed_max", Measures.SPEED_MS, any),
                sheet.optionalNumber("pressure_min", Measures.PRESSURE_PA, any),
                sheet.optionalNumber("pressure_max", Measures.PRESSURE_PA, any),
                sheet.optionalNumber("outlets_per_row", Measure.PLAIN, any),
                sheet.text("placements"),
                sheet.optionalNumber("cost", Measures.USD_HA, any),
                sheet.optionalNumber("heel", Measures.VOLUME_M3, any),
                sheet.optionalNumber("prime", Measures.VOLUME_M3, any),
                sheet.optionalNumber("field_efficiency", Measures.PLAIN_SHARE, any),
                sheet.optionalNumber("spray_clearance", Measures.LENGTH_M, any));
    }
}
