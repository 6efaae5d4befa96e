// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;

/**
 * Fields and zones by name, as fields.csv lists them, even where the rest of a row is wrong; so that one fault there does
 * not make every other file look wrong.
 */
final class Names {
    private static final int NAMED = 12;
    /** Longer after planting no pass belongs to that crop; common practice, no source. */
    private static final int CORN_DAYS = 200;

    private static final int OTHER_CROP_DAYS = 365;

    private record Listed(String field, String zone, Optional<LocalDate> planted, boolean corn) {
        /** Last day that may belong to this crop; corn does not stand into the next year. */
        Optional<LocalDate> last() {
            return planted.map(day -> {
                LocalDate yearEnd = LocalDate.of(day.getYear(), 12, 31);
                LocalDate late = day.plusDays(corn ? CORN_DAYS : OTHER_CROP_DAYS);
                return corn && late.isAfter(yearEnd) ? yearEnd : late;
            });
        }
    }

    private final Map<String, List<Listed>> fields = new LinkedHashMap<>();
    private boolean whole;

    /** To be called when every zone of fields.csv could be named; before it, nothing is refused as unknown. */
    void setWhole() {
        whole = true;
    }

    void add(String field, String zone, Optional<LocalDate> planted, boolean corn) {
        fields.computeIfAbsent(key(field), k -> new ArrayList<>()).add(new Listed(field, zone, planted, corn));
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The field's name as fields.csv spells it; refuses the row when there is none. */
    String field(Row row, Column column) {
        String cell = row.text(column);
        List<Listed> zones = fields.get(key(cell));
        if (zones != null) {
            return zones.get(0).field();
        }
        if (whole && !cell.isEmpty()) {
            List<String> known =
                    fields.values().stream().map(z -> z.get(0).field()).toList();
            row.refuse(
                    column,
                    "the field \"" + cell + "\"",
                    "a field of fields.csv (" + some(known) + ")",
                    "Spell it as there, or add the field there.");
        }
        return cell;
    }

    /** The zone's name as fields.csv spells it, "" for the whole field; refuses the row when there is none. */
    String zone(Row row, Column column, String field) {
        String cell = row.text(column);
        List<Listed> zones = fields.getOrDefault(key(field), List.of());
        for (Listed z : zones) {
            if (z.zone().equalsIgnoreCase(cell)) {
                return z.zone();
            }
        }
        if (whole && !cell.isEmpty() && !zones.isEmpty()) {
            List<String> known = zones.stream()
                    .map(Listed::zone)
                    .filter(z -> !z.isEmpty())
                    .distinct()
                    .toList();
            String expected = known.isEmpty() ? "an empty cell, for " + field + " has no zones" : some(known);
            row.refuse(column, "the zone \"" + cell + "\" of " + field, expected, "Spell it as in fields.csv.");
        }
        return cell;
    }

    /** Refuses a pass that belongs to no season of the field: long before its planting, or after its harvest. */
    void refuseOutOfSeason(Row row, Column column, LocalDate date, String field, String zone, String what) {
        List<Listed> crops = fields.getOrDefault(key(field), List.of()).stream()
                .filter(z -> zone.isEmpty() || z.zone().equals(zone))
                .filter(z -> z.planted().isPresent())
                .toList();
        if (crops.isEmpty()) {
            return;
        }
        LocalDate early = crops.stream()
                .flatMap(z -> z.planted().stream())
                .min(LocalDate::compareTo)
                .orElseThrow();
        LocalDate last = crops.stream()
                .flatMap(z -> z.last().stream())
                .max(LocalDate::compareTo)
                .orElseThrow();
        LocalDate first = LocalDate.of(early.getYear() - 1, 8, 1);
        if (date.isAfter(last) || date.isBefore(first)) {
            String side = date.isAfter(last) ? " after harvest" : " in a season without planting";
            row.refuse(
                    column,
                    what + " on " + date + side + " (" + field + " was planted on " + early + ")",
                    "a day from " + first + " to " + last,
                    "Check the date; for another season, enter its planting in fields.csv.");
        }
    }

    private static String some(List<String> names) {
        String first = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? first + " and " + (names.size() - NAMED) + " more" : first;
    }
}
