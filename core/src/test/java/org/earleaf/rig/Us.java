// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.KGM3_PER_LBGAL;
import static org.earleaf.units.Units.M3M2_PER_GALAC;
import static org.earleaf.units.Units.M3S_PER_GPM;
import static org.earleaf.units.Units.MS_PER_MPH;
import static org.earleaf.units.Units.M_PER_IN;
import static org.earleaf.units.Units.PA_PER_PSI;

import org.assertj.core.data.Percentage;

/** Units in which the sources of the checks print their values. */
final class Us {
    /** Tolerance of worked values that are printed to four digits. */
    static final Percentage HALF_PERCENT = Percentage.withPercentage(0.5);

    static final Percentage DIGITS = Percentage.withPercentage(0.02);
    static final double LHA = 1e-7;
    static final double LMIN = 1e-3 / 60;
    static final double KMH = 1 / 3.6;

    private Us() {}

    static double gpa(double v) {
        return v * M3M2_PER_GALAC;
    }

    static double gpm(double v) {
        return v * M3S_PER_GPM;
    }

    static double mph(double v) {
        return v * MS_PER_MPH;
    }

    static double in(double v) {
        return v * M_PER_IN;
    }

    static double psi(double v) {
        return v * PA_PER_PSI;
    }

    static double lbGal(double v) {
        return v * KGM3_PER_LBGAL;
    }
}
