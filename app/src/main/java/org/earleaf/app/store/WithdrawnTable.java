// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.earleaf.field.Reading;
import org.springframework.jdbc.core.JdbcTemplate;

/** Readings taken back as they were entered. One that says something else by now counts again. */
final class WithdrawnTable {
    private final JdbcTemplate sql;

    WithdrawnTable(JdbcTemplate sql) {
        this.sql = sql;
    }

    /** Those that count. */
    List<Reading> counting(List<Reading> readings) {
        Set<String> gone = new HashSet<>(sql.queryForList(
                "select w.reading from withdrawn_reading w join reading r on r.id = w.reading and r.entered = w.entered",
                String.class));
        return readings.stream().filter(r -> !gone.contains(r.id())).toList();
    }

    void add(Reading r, LocalDate on) {
        sql.update(
                "insert into withdrawn_reading (reading, entered, on_) values (?, ?, ?)",
                r.id(),
                r.entered(),
                on.toString());
    }
}
