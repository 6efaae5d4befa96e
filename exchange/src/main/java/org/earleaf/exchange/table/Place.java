// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import org.earleaf.units.Said;

/**
 * A spot in a file.
 *
 * @param feature of a file of outlines, the first being 1; 0 elsewhere
 * @param row line of the file, the header being line 1; 0 for the whole file or column
 * @param column as the header spells it; empty for the whole row
 */
public record Place(String file, int feature, int row, String column) {
    public Place(String file, int row, String column) {
        this(file, 0, row, column);
    }

    public static Place of(String file) {
        return new Place(file, 0, "");
    }

    public static Place ofFeature(String file, int feature) {
        return new Place(file, feature, 0, "");
    }

    /** The same column over all rows. */
    Place anyRow() {
        return new Place(file, feature, 0, column);
    }

    /** As it is told. */
    public Said said() {
        String line = String.valueOf(row);
        if (feature > 0) {
            return Said.of("where.feature", "file", file, "feature", String.valueOf(feature));
        }
        if (row > 0) {
            return column.isEmpty()
                    ? Said.of("where.row", "file", file, "row", line)
                    : Said.of("where.cell", "file", file, "row", line, "column", column);
        }
        return column.isEmpty() ? Said.text(file) : Said.of("where.column", "file", file, "column", column);
    }
}
