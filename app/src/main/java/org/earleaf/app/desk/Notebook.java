// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.Catches;
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
 * What pages write down, and what has been filed. A reading or pass kept here is part of the farm that {@link Days}
 * gives from then on.
 */
public interface Notebook {
    /** Keeps a reading and its photograph, both or neither; the id handed in is ignored, the one given back stands. */
    Reading enter(Reading reading, Optional<Photograph> photograph);

    /** Takes a reading back: it counts no longer. Empty when there is none of this id that counts. */
    Optional<Reading> withdraw(String id, LocalDate on);

    /** Every photograph kept, without its picture. */
    List<Photograph.Note> photographs();

    Optional<Photograph> findPhotograph(String id);

    /**
     * Marks a pass made and files its record, both or neither.
     *
     * @param made with the id of a known pass it takes that one's place, else it is new
     * @param account makes the record of the pass as it is kept
     */
    Chain.Entry fileMade(Pass made, Function<Pass, FiledRecord> account);

    /** Files a further record that says what is right; the passes made, one for each product, become what it says. */
    Chain.Entry correct(FiledRecord correction, List<Pass> passes);

    /** Loads of the farm, their jobs, and catch tests of its rigs. */
    LoadStore loads();

    LoadJobs jobs();

    Catches catches();

    /** Tests of the water that goes in the tanks. */
    Waters waters();

    /** What the fields grew in the years before this season. */
    PastYears past();

    /** Plans as they were handed to the drivers. */
    HandedPlans handed();

    /** The morning page as it was last shown. */
    KeptBriefs kept();

    /** Every record in the order of filing. */
    List<Chain.Entry> records();

    /** By its number or id. */
    Optional<Chain.Entry> findRecord(String numberOrId);

    /** Calls a field otherwise: what was stored of it goes with it, what was filed stays as filed. */
    void renameField(String name, String other);

    void renameRig(String name, String other);

    void renameProduct(String name, String other);

    /** A short line that says what is saved and where ("All saved on this machine"). */
    String state();
}
