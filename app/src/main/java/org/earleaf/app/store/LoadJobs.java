// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.List;
import java.util.Optional;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.field.Placement;
import org.earleaf.units.EarleafException;

/** What the loads of a job are of, and where it goes on. */
public final class LoadJobs {
    private final Database db;

    LoadJobs(Database db) {
        this.db = db;
    }

    /**
     * One job.
     *
     * @param job by which its loads name it
     * @param recipe its name, or the product that goes on alone
     */
    public record Job(String job, String recipe, Placement placement) {}

    public void keep(Job job) {
        db.inTransaction(() -> db.sql()
                .update(
                        "insert into load_job (job, recipe, placement) values (?, ?, ?)"
                                + " on conflict (job) do update set recipe = excluded.recipe, placement = excluded.placement",
                        job.job(),
                        Names.of(db.sql()).id(Kind.PRODUCT, job.recipe()),
                        job.placement().name()));
    }

    public Optional<Job> find(String job) {
        return all().stream().filter(j -> j.job().equals(job)).findFirst();
    }

    /** Refused where no page has noted it. */
    public Job get(String job) {
        return find(job).orElseThrow(() -> EarleafException.coded("load.job-unknown", job, ""));
    }

    public List<Job> all() {
        return db.reading(() -> all(Names.of(db.sql())));
    }

    private List<Job> all(Names names) {
        return db.sql()
                .query(
                        "select job, recipe, placement from load_job",
                        (row, k) -> new Job(
                                row.getString(1),
                                names.name(Kind.PRODUCT, row.getString(2)),
                                Placement.valueOf(row.getString(3))));
    }
}
