// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** The last morning page as it was shown, to look at while a new one is worked out. No fact is read from it. */
public final class KeptBriefs {
    private final Database db;

    KeptBriefs(Database db) {
        this.db = db;
    }

    /**
     * A page as it was shown.
     *
     * @param day that it is of
     * @param program what made it: of another one it is not shown again
     * @param page what stood on it, in the language of pages
     */
    public record Kept(boolean metric, LocalDate day, Instant made, String program, String page) {}

    /** In place of the one before it. */
    public void keep(Kept brief) {
        db.inTransaction(() -> {
            int units = brief.metric() ? 1 : 0;
            db.sql().update("delete from kept_brief where metric = ?", units);
            return db.sql()
                    .update(
                            "insert into kept_brief (metric, day, made, program, page) values (?, ?, ?, ?, ?)",
                            units,
                            brief.day().toString(),
                            brief.made().toString(),
                            brief.program(),
                            brief.page());
        });
    }

    /** What is kept in these units. */
    public Optional<Kept> find(boolean metric) {
        return db.reading(() -> db
                .sql()
                .query(
                        "select day, made, program, page from kept_brief where metric = ?",
                        (row, n) -> new Kept(
                                metric,
                                LocalDate.parse(row.getString(1)),
                                Instant.parse(row.getString(2)),
                                row.getString(3),
                                row.getString(4)),
                        metric ? 1 : 0)
                .stream()
                .findFirst());
    }
}
