// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;

/** One row of a table, read by column name; null is NaN, or empty text; ids become today's names. */
final class Row {
    private final ResultSet row;
    private final Names names;

    Row(ResultSet row, Names names) {
        this.row = row;
        this.names = names;
    }

    /** Today's name of what the column knows by its id. */
    String called(Names.Kind kind, String column) {
        return names.name(kind, text(column));
    }

    String text(String column) {
        return findText(column).orElse("");
    }

    Optional<String> findText(String column) {
        try {
            return Optional.ofNullable(row.getString(column));
        } catch (SQLException e) {
            throw new StoreFault(column, e);
        }
    }

    double number(String column) {
        try {
            double value = row.getDouble(column);
            return row.wasNull() ? Double.NaN : value;
        } catch (SQLException e) {
            throw new StoreFault(column, e);
        }
    }

    int whole(String column) {
        try {
            return row.getInt(column);
        } catch (SQLException e) {
            throw new StoreFault(column, e);
        }
    }

    LocalDate date(String column) {
        return LocalDate.parse(text(column));
    }

    <E extends Enum<E>> E word(Class<E> kind, String column) {
        return Enum.valueOf(kind, text(column).toUpperCase(java.util.Locale.ROOT));
    }

    /** A column that the schema does not have: a mistake in the program, not in the data. */
    private static final class StoreFault extends IllegalStateException {
        private static final long serialVersionUID = 1L;

        StoreFault(String column, SQLException cause) {
            super("column " + column + ": " + cause.getMessage(), cause);
        }
    }
}
