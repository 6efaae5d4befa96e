// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.earleaf.entry.Draft;
import org.earleaf.entry.Place;
import org.earleaf.entry.Plots;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.soil.SoilProfile;

/**
 * Fields and zones by name, as fields.csv lists them, even where the rest of a row is wrong; so that one fault there does
 * not make every other file look wrong.
 */
final class Names implements Plots {
    private record Listed(String field, String zone, Optional<LocalDate> planted, boolean corn) {}

    private final Map<String, List<Listed>> fields = new LinkedHashMap<>();
    private BiFunction<String, String, Optional<SoilProfile>> soils = (field, zone) -> Optional.empty();
    private boolean whole;

    /** To be called when soils are known: of a field and zone, for soil tests given by area. */
    void setSoils(BiFunction<String, String, Optional<SoilProfile>> known) {
        soils = known;
    }

    @Override
    public List<Plot> of(String field) {
        return fields.getOrDefault(key(field), List.of()).stream()
                .map(l -> new Plot(l.field(), l.zone(), l.planted(), l.corn(), soils.apply(l.field(), l.zone())))
                .toList();
    }

    @Override
    public List<String> fields() {
        return fields.values().stream().map(zones -> zones.get(0).field()).toList();
    }

    @Override
    public boolean isWhole() {
        return whole;
    }

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
        List<Column> columns = List.of(column);
        return row.told(Place.of(row.draft(columns), this), columns)
                .map(Place::field)
                .orElse(row.cell(column));
    }

    /** The zone's name as fields.csv spells it, "" for the whole field; refuses the row when there is none. */
    String zone(Row row, Column column, String field) {
        if (of(field).isEmpty()) {
            return row.cell(column);
        }
        Draft draft = Draft.of(Place.FIELD, field, Place.ZONE, row.cell(column));
        return row.told(Place.of(draft, this), List.of(column)).map(Place::zone).orElse(row.cell(column));
    }

    /** Refuses a day that belongs to no season of the field: long before its planting, or after its harvest. */
    void refuseOutOfSeason(Row row, Column column, LocalDate date, String field, String zone) {
        Draft draft = Draft.of(Place.FIELD, field, Place.ZONE, zone);
        if (row.isGood()) {
            row.told(Place.of(draft, this, date, column.base()), List.of(column));
        }
    }
}
