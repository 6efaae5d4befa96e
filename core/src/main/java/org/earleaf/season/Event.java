// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;

/** Something done to a zone on a day, before that day's weather. */
public sealed interface Event {
    LocalDate date();

    /** Nitrogen put on. */
    record Nitrogen(LocalDate date, NitrogenPass pass) implements Event {}

    /** Water from above [mm]. */
    record Water(LocalDate date, double depth_mm) implements Event {}

    /** Manure: organic nitrogen [kg/ha], and its ammonium as a pass. */
    record Manured(LocalDate date, double organic_kgHa, NitrogenPass ammonium) implements Event {}

    /** Tillage that leaves this residue cover. */
    record Tilled(LocalDate date, double coverAfter) implements Event {}

    default void applyTo(SeasonRun run) {
        if (this instanceof Nitrogen n) {
            run.applyAll(n.pass());
        } else if (this instanceof Water w) {
            run.irrigate(w.depth_mm());
        } else if (this instanceof Manured m) {
            run.manure(m.organic_kgHa(), m.ammonium());
        } else if (this instanceof Tilled t) {
            run.tillage(t.coverAfter());
        }
    }
}
