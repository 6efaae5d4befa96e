// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;

/**
 * What pages write down, and what has been filed. A reading or pass kept here is part of the farm that {@link Days}
 * gives from then on.
 */
public interface Notebook {
    /** Keeps a reading; the id handed in is ignored, the one given back stands. */
    Reading enter(Reading reading);

    /** Files a pass as made; the record can only be corrected from then on. */
    FiledRecord file(MadePass made);

    /** Every record, newest first. */
    List<FiledRecord> records();

    Optional<FiledRecord> findRecord(String id);

    /** Fingerprint of the newest entry; empty while nothing is filed. */
    Optional<String> findChainHead();

    /** A short line that says what is saved and where ("All saved on this machine"). */
    String state();

    /**
     * A pass that has been carried out.
     *
     * @param pass its state is MADE; the id is ignored
     * @param rig name
     * @param person who did it
     * @param area_ha ground covered
     * @param note free text, may be empty
     */
    record MadePass(Pass pass, String rig, String person, double area_ha, String note) {}

    /**
     * One record as filed.
     *
     * @param id stands in its address
     * @param number counts from 1
     * @param filed when
     * @param date when the pass was made
     * @param title what was done, in one line
     * @param items what is recorded, in order
     * @param previous fingerprint of the entry before; empty for the first
     * @param fingerprint of this entry
     */
    record FiledRecord(
            String id,
            int number,
            Instant filed,
            String field,
            String zone,
            LocalDate date,
            String title,
            List<Item> items,
            List<Correction> corrections,
            String previous,
            String fingerprint) {
        public FiledRecord {
            items = List.copyOf(items);
            corrections = List.copyOf(corrections);
        }
    }

    /**
     * One line of a record.
     *
     * @param from where the entry comes from ("entered", "load sheet", "station")
     */
    record Item(String name, String entry, String from) {}

    /** A further entry that says what is right; what was wrong stays. */
    record Correction(Instant filed, String person, String text, String fingerprint) {}
}
