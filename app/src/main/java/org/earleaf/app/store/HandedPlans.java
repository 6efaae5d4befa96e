// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.earleaf.week.Week.Told;

/** Plans of the week as they were handed to the drivers. */
public final class HandedPlans {
    private final Database db;

    HandedPlans(Database db) {
        this.db = db;
    }

    /** @param passes by day and rig, in order */
    public record Handed(Instant at, List<Told> passes) {
        public Handed {
            passes = List.copyOf(passes);
        }
    }

    /** Keeps a plan behind those before it; refused when nothing stands in it. */
    public void keep(Handed plan) {
        if (plan.passes().isEmpty()) {
            throw EarleafException.coded("plan.empty", "plan", "");
        }
        db.inTransaction(() -> {
            db.sql()
                    .update(
                            "insert into handed_plan (seq, handed)"
                                    + " select coalesce(max(seq), 0) + 1, ? from handed_plan",
                            plan.at().toString());
            Names names = Names.of(db.sql());
            int place = 0;
            for (Told t : plan.passes()) {
                db.sql()
                        .update(
                                "insert into handed_pass (plan, place, pass, field, zone, work, rig, day)"
                                        + " select max(seq), ?, ?, ?, ?, ?, ?, ? from handed_plan",
                                place++,
                                t.pass(),
                                names.id(Names.Kind.FIELD, t.field()),
                                t.zone(),
                                t.work(),
                                names.id(Names.Kind.RIG, t.rig()),
                                t.day().toString());
            }
            return place;
        });
    }

    /** The newest of all. */
    public Optional<Handed> findNewest() {
        return db.reading(
                () -> db
                        .sql()
                        .query("select handed from handed_plan order by seq desc limit 1", (row, k) -> row.getString(1))
                        .stream()
                        .findFirst()
                        .map(at -> new Handed(Instant.parse(at), passes())));
    }

    private List<Told> passes() {
        Names names = Names.of(db.sql());
        return db.sql()
                .query(
                        "select field, zone, case field when '' then pass else work end, rig, day from handed_pass"
                                + " where plan = (select max(seq) from handed_plan) order by place",
                        (row, k) -> new Told(
                                names.name(Names.Kind.FIELD, row.getString(1)),
                                row.getString(2),
                                row.getString(3),
                                names.name(Names.Kind.RIG, row.getString(4)),
                                LocalDate.parse(row.getString(5))));
    }
}
