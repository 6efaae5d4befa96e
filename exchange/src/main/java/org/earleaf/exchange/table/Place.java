// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

/**
 * A spot in a file.
 *
 * @param row line of the file, the header being line 1; 0 for the whole file or column
 * @param column as the header spells it; empty for the whole row
 */
public record Place(String file, int row, String column) {
    public static Place of(String file) {
        return new Place(file, 0, "");
    }

    /** The same column over all rows. */
    Place anyRow() {
        return new Place(file, 0, column);
    }

    @Override
    public String toString() {
        String at = row == 0 ? file : file + ", row " + row;
        return column.isEmpty() ? at : at + ", column " + column;
    }
}
