// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.label.LabelEntry;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * One row of labels.csv.
 *
 * @param crop empty: every crop of the product
 * @param of active ingredient or crop that it speaks of; empty: none
 * @param said value with its unit
 */
record LabelLine(
        Row row,
        Column item,
        Column value,
        String product,
        String crop,
        String what,
        String of,
        String said,
        LabelEntry.Look look) {

    void refuse(Problem problem) {
        row.refuse(value, problem);
    }

    void refuseSecond() {
        row.refuse(
                "label.item-twice",
                item,
                of.isEmpty()
                        ? Said.of("found.second-time", "what", what)
                        : Said.of("found.second-time-of", "what", what, "of", of));
    }
}
