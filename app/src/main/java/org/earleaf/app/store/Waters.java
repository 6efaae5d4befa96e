// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.Optional;
import org.earleaf.entry.NameEntry;
import org.earleaf.mix.WaterQuality;
import org.earleaf.units.Said;

/** Tests of the water that goes in the tanks, each as it was entered; the newest counts. */
public final class Waters {
    private final Database db;

    Waters(Database db) {
        this.db = db;
    }

    /**
     * One test.
     *
     * @param source "well at the yard"
     * @param said what is dissolved, as on the sheet: "Ca 120, Mg 40"
     */
    public record Tested(Instant at, String person, String source, String said) {
        public WaterQuality read() {
            return WaterQuality.parse(said, Said.of("where.water-test"));
        }
    }

    /** Keeps a test; refused when it cannot be read or somebody is not named. */
    public void keep(Tested test) {
        String person = NameEntry.person(test.person(), "person");
        String source = NameEntry.told(test.source(), "source");
        test.read();
        db.inTransaction(() -> db.sql()
                .update(
                        "insert into water_test (seq, at, person, source, said)"
                                + " select coalesce(max(seq), 0) + 1, ?, ?, ?, ? from water_test",
                        test.at().toString(),
                        person,
                        source,
                        test.said().strip()));
    }

    public Optional<Tested> findNewest() {
        return db.reading(() -> db
                .sql()
                .query(
                        "select at, person, source, said from water_test order by seq",
                        (row, k) -> new Tested(
                                Instant.parse(row.getString(1)), row.getString(2), row.getString(3), row.getString(4)))
                .stream()
                .reduce((before, after) -> after));
    }
}
