// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.Catches;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.HandedPlans;
import org.earleaf.app.store.KeptBriefs;
import org.earleaf.app.store.LoadJobs;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.PastYears;
import org.earleaf.app.store.Waters;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;

/**
 * Writes what pages write into the store.
 *
 * @param lasting false when the store goes with the program
 */
public record StoredNotebook(FarmStore store, boolean lasting) implements Notebook {
    @Override
    public Reading enter(Reading reading, Optional<Photograph> photograph) {
        return store.enter(reading, photograph);
    }

    @Override
    public Optional<Reading> withdraw(String id, LocalDate on) {
        return store.withdraw(id, on);
    }

    @Override
    public List<Photograph.Note> photographs() {
        return store.photographs();
    }

    @Override
    public Optional<Photograph> findPhotograph(String id) {
        return store.findPhotograph(id);
    }

    @Override
    public Chain.Entry fileMade(Pass made, Function<Pass, FiledRecord> account) {
        return store.fileMade(made, account);
    }

    @Override
    public Chain.Entry correct(FiledRecord correction, List<Pass> passes) {
        return store.correct(correction, passes);
    }

    @Override
    public LoadStore loads() {
        return store.loads();
    }

    @Override
    public LoadJobs jobs() {
        return store.jobs();
    }

    @Override
    public KeptBriefs kept() {
        return store.kept();
    }

    @Override
    public HandedPlans handed() {
        return store.handed();
    }

    @Override
    public Catches catches() {
        return store.catches();
    }

    @Override
    public Waters waters() {
        return store.waters();
    }

    @Override
    public PastYears past() {
        return store.past();
    }

    @Override
    public List<Chain.Entry> records() {
        return store.records();
    }

    @Override
    public Optional<Chain.Entry> findRecord(String numberOrId) {
        return store.findRecord(numberOrId);
    }

    @Override
    public void renameField(String name, String other) {
        store.renameField(name, other);
    }

    @Override
    public void renameRig(String name, String other) {
        store.renameRig(name, other);
    }

    @Override
    public void renameProduct(String name, String other) {
        store.renameProduct(name, other);
    }

    @Override
    public String state() {
        String file = String.valueOf(store.file().getFileName());
        if (store.findWhyOnlyRead().isPresent()) {
            return tell("notebook.only-read", "file", file);
        }
        return lasting ? tell("notebook.saved", "file", file) : tell("notebook.trial");
    }
}
