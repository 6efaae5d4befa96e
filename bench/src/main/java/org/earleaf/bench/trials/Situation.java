// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;
import org.earleaf.field.Placement;

/** When the advice is asked for, and with what on the field. */
enum Situation {
    JUNE("10 June, nothing on", 0),
    JUNE_AFTER_STARTER("10 June, 45 kg/ha on", 45),
    PLANTING("at planting", 0);

    private final String word;
    private final double given_kgHa;

    Situation(String word, double given_kgHa) {
        this.word = word;
        this.given_kgHa = given_kgHa;
    }

    String word() {
        return word;
    }

    double given_kgHa() {
        return given_kgHa;
    }

    LocalDate on(SiteYear at) {
        return this == PLANTING ? at.planted() : LocalDate.of(at.year(), 6, 10);
    }

    Placement placement() {
        return this == PLANTING ? Placement.INCORPORATED : Placement.MID_INJECT;
    }
}
