// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.units.Said;

/** A column by which a folder knows its things for good, so that what it calls them may change. */
final class IdColumn {
    private static final int LONGEST = 100;

    private final Column column;
    private final Map<String, String> idByName = new HashMap<>();
    private final Map<String, String> nameById = new HashMap<>();

    IdColumn(Sheet sheet, String name) {
        column = sheet.optionalText(name);
    }

    /** The id of what the row calls so: its name where the row gives none. Refuses what is not one id for one name. */
    String of(Row row, String name) {
        String cell = row.text(column);
        String id = cell.isEmpty() ? name : cell;
        if (name.isEmpty()) {
            return id;
        }
        if (id.length() > LONGEST) {
            row.refuse("id.too-long", column, Said.of("found.long-id", "n", id.length()), "most", LONGEST);
        }
        String plain = name.toLowerCase(Locale.ROOT);
        String before = idByName.putIfAbsent(plain, id);
        if (before != null && !before.equals(id)) {
            row.refuse("id.another", column, Said.of("found.another-id", "name", name), "before", before);
        }
        String other = nameById.putIfAbsent(id, plain);
        if (other != null && !other.equals(plain)) {
            row.refuse("id.twice", column, Said.of("found.second-id", "id", id));
        }
        return id;
    }
}
