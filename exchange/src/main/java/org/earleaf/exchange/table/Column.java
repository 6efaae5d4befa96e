// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import org.earleaf.entry.Allowed;

/**
 * A column as asked for and as found in a header.
 *
 * @param base name without unit
 * @param required whether an empty cell is a fault
 * @param limits of a number, inside unit
 * @param header as the file spells it; the base when the column is not there
 * @param index place in the row, -1 when the column is not there
 * @param unit of the numbers in it
 */
public record Column(String base, boolean required, Allowed limits, String header, int index, Measure.Unit unit) {
    public boolean isThere() {
        return index >= 0;
    }

    /** The same column with another rule for empty cells. */
    public Column emptyAllowed() {
        return new Column(base, false, limits, header, index, unit);
    }

    /** The same column with other limits. */
    public Column within(Allowed other) {
        return new Column(base, required, other, header, index, unit);
    }
}
