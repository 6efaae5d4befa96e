// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Parts;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** The cells of a row as the parts of a fact: each part is named by its column, whose header tells the unit of its numbers. */
public final class RowParts implements Parts {
    private final Row row;
    private final List<Column> columns;

    public RowParts(Row row, List<Column> columns) {
        this.row = row;
        this.columns = List.copyOf(columns);
    }

    private Column column(String part) {
        return Row.columnOf(part, columns);
    }

    @Override
    public String text(String part) {
        return row.cell(column(part));
    }

    @Override
    public double number(String part, Allowed allowed) {
        return row.number(column(part).emptyAllowed().within(allowed));
    }

    @Override
    public double number(String part, Allowed allowed, double usual) {
        return row.number(column(part).within(allowed), usual);
    }

    @Override
    public Optional<LocalDate> date(String part) {
        return row.date(column(part).emptyAllowed());
    }

    @Override
    public void refuse(Problem problem) {
        row.refuse(List.of(problem), columns.toArray(Column[]::new));
    }

    @Override
    public void remark(String part, Said said) {
        row.flag(column(part), said);
    }

    @Override
    public void assumed(String part, String word) {
        row.assumed(column(part), word);
    }

    @Override
    public boolean isGood() {
        return row.isGood();
    }
}
