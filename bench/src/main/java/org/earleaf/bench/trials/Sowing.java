// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;

/** When corn was planted, and how thickly [plants/m2]. */
record Sowing(LocalDate day, double plants_m2) {
    /**
     * Not told of the Iowa trials: planted there from 25 April to 15 May (common practice, no source), 2 May stands for
     * it as in the evidence that this bench repeats.
     */
    static Sowing usual(int year) {
        return new Sowing(LocalDate.of(year, 5, 2), 8);
    }
}
