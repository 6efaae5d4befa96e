// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Placement;

/** irrigation.csv and manure.csv: what else was given to the fields. */
final class GivenCsv {
    private GivenCsv() {}

    static List<Irrigation> irrigation(Sheet sheet, Names names) {
        Column field = sheet.text("field");
        Column date = sheet.text("date");
        Column depth = sheet.number("depth", Measures.WATER_MM, Ranges.IRRIGATION);
        Column zone = sheet.optionalText("zone");
        List<Irrigation> all = new ArrayList<>();
        if (!sheet.isComplete()) {
            return all;
        }
        for (Row row : sheet.rows()) {
            String f = names.field(row, field);
            String z = names.zone(row, zone, f);
            Optional<LocalDate> day = row.date(date);
            double mm = row.number(depth);
            day.ifPresent(d -> names.refuseOutOfSeason(row, date, d, f, z));
            if (row.isGood() && day.isPresent()) {
                all.add(new Irrigation(f, z, day.get(), mm));
            }
        }
        return all;
    }

    static List<Manure> manure(Sheet sheet, Names names) {
        Column field = sheet.text("field");
        Column date = sheet.text("date");
        Column organic = sheet.number("organic_n", Measures.NITROGEN_KGHA, Ranges.MANURE_ORGANIC);
        Column ammonium = sheet.number("ammonium_n", Measures.NITROGEN_KGHA, Ranges.MANURE_AMMONIUM);
        Column placement = sheet.text("placement");
        Column zone = sheet.optionalText("zone");
        List<Manure> all = new ArrayList<>();
        if (!sheet.isComplete()) {
            return all;
        }
        for (Row row : sheet.rows()) {
            String f = names.field(row, field);
            String z = names.zone(row, zone, f);
            Optional<LocalDate> day = row.date(date);
            day.ifPresent(d -> names.refuseOutOfSeason(row, date, d, f, z));
            double org = row.number(organic);
            double nh4 = row.number(ammonium);
            Optional<Placement> where = row.word(placement, Placement::findByWord, Placement.words());
            if (row.isGood() && day.isPresent() && where.isPresent()) {
                all.add(new Manure(f, z, day.get(), org, nh4, where.get()));
            }
        }
        return all;
    }
}
