// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.List;
import org.earleaf.field.PastYear;
import org.earleaf.units.EarleafException;

/** What the fields grew in the years before this season, one row of a field or zone for each year. */
public final class PastYears {
    private final Database db;
    private final Runnable changed;

    PastYears(Database db, Runnable changed) {
        this.db = db;
        this.changed = changed;
    }

    /** Keeps a year in place of what was known of it. */
    public void keep(PastYear year) {
        db.inTransaction(() -> {
            Merge merge = new Merge(db.sql());
            merge.insert(
                    WorkTables.PAST,
                    merge.update(WorkTables.PAST, List.of(year), (was, now) -> now, stored -> false)
                            .unknown());
            changed.run();
            return year;
        });
    }

    /**
     * Takes a year out again; refused where nothing is known of it.
     *
     * @param named its field or zone, and its number
     * @return what was known of it
     */
    public PastYear takeOut(PastYear named) {
        return db.inTransaction(() -> {
            Merge.Stored<PastYear> found = new Merge(db.sql())
                    .stored(WorkTables.PAST).stream()
                            .filter(s -> s.fact().part().equals(named.part())
                                    && s.fact().year() == named.year())
                            .findFirst()
                            .orElseThrow(() -> EarleafException.coded(
                                    "past.unknown",
                                    "year",
                                    String.valueOf(named.year()),
                                    "place",
                                    named.part().label()));
            db.sql().update("delete from past_year where seq = ?", found.seq());
            changed.run();
            return found.fact();
        });
    }
}
