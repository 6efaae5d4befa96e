// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.farm.Farm;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/** Briefs with the week's plan of seed 1 in them, as doors have them. */
public final class Briefs {
    private Briefs() {}

    public static Brief of(Farm farm, LocalDate on) {
        return of(farm, on, Morning.answers(farm, on, false, SideBySide.IN_TURN));
    }

    public static Brief of(Farm farm, LocalDate on, List<NitrogenOptions.Answer> answers) {
        return Morning.brief(farm, on, answers, Week.of(farm, on, answers, Week.Search.of(1)));
    }
}
