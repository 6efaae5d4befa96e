// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import java.util.List;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;

/** The rooms of one member laid open, so that a test can set them and let a single phase of the day work. */
final class OneDay {
    final SeasonSite site;
    final SeasonState state = new SeasonState(1);
    final Today today = new Today(1);

    OneDay(SoilProfile soil, ParameterSet set) {
        site = new SeasonSite(SyntheticSeason.zone().soil(soil, 13, 75).setup(), List.of(set));
        new Balance(site, state).start(0);
        warm(25);
    }

    /** All layers at one temperature. */
    OneDay warm(double t_C) {
        Arrays.fill(state.soilTemperature, t_C);
        Arrays.fill(today.warmth2, SoilTemperature.q10(t_C, SoilTemperature.LN_2, 25));
        Arrays.fill(today.warmth22, SoilTemperature.q10(t_C, SoilTemperature.LN_22, 25));
        return this;
    }

    /** All mineral, organic and residue nitrogen gone; ammonium at the background that stays. */
    OneDay bare() {
        for (double[] cells : List.of(state.nitrate, state.organic, state.residueC, state.residueN)) {
            Arrays.fill(cells, 0);
        }
        System.arraycopy(site.ammoniumFloor, 0, state.ammonium, 0, state.ammonium.length);
        System.arraycopy(state.water, 0, today.peak, 0, today.peak.length);
        return this;
    }

    double ledger(Ledger line) {
        return line == Ledger.MINERALISED
                ? new Balance(site, state).field(state.mineralised, 0)
                : state.ledger[line.ordinal()][0];
    }

    SoilNitrogen soilNitrogen() {
        return new SoilNitrogen(site, state, today);
    }
}
