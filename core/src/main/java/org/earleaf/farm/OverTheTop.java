// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.earleaf.units.Units.KGHA_PER_LBAC;

/**
 * Outer fence for nitrogen solution sprayed over corn leaves. It is no recommended rate: the supplier's sheet and the
 * label of anything mixed in decide first.
 *
 * <pre>
 * most N: 90 lb/ac to V4, falling by 10 lb/ac a leaf to 60 at V7, none beyond; with a herbicide 60 from V3 on
 *
 * Range  emergence to V7; above 85 °F or below 40 % humidity a warning
 * Source state extension summary of Minnesota trials, which found more harm above 60 lb N/ac at V3, lower yield at
 *        120 beyond V3, and harm above 60 with atrazine added; V5 and V6 by straight line
 * Check  OverTheTopTest
 * </pre>
 */
public final class OverTheTop {
    private static final double HOT_C = (85 - 32) / 1.8;
    private static final double DRY_PCT = 40;

    private OverTheTop() {}

    /** Most nitrogen that may be sprayed on the leaves at this many collars; 0 means none. */
    public static double most_kgHa(double collars, boolean withHerbicide) {
        if (collars > 7) {
            return 0;
        }
        double alone_lbAc = 90 - 10 * Math.max(0, collars - 4);
        double most_lbAc = withHerbicide && collars >= 3 ? Math.min(60, alone_lbAc) : alone_lbAc;
        return most_lbAc * KGHA_PER_LBAC;
    }

    /** Whether heat or dry air makes burn more likely. */
    public static boolean burnsMore(double air_C, double rh_pct) {
        return air_C > HOT_C || rh_pct < DRY_PCT;
    }
}
