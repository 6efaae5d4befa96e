// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * Exact conversion factors, each defined once.
 *
 * <p>Source: international yard and pound agreement (1 in = 25.4 mm, 1 lb = 0.45359237 kg), US gallon = 231 in3, corn
 * bushel = 56 lb at 15.5 % moisture (US grain standards).
 */
public final class Units {
    public static final double MM_PER_IN = 25.4;
    public static final double M_PER_FT = 0.3048;
    public static final double M_PER_MI = 1609.344;
    public static final double KG_PER_LB = 0.45359237;
    public static final double M2_PER_AC = 4046.8564224;
    public static final double HA_PER_AC = M2_PER_AC / 10_000;
    public static final double L_PER_GAL = 3.785411784;
    public static final double PA_PER_PSI = 6894.757293168;
    public static final double MS_PER_MPH = 0.44704;
    public static final double KGHA_PER_LBAC = KG_PER_LB / HA_PER_AC;
    public static final double LHA_PER_GALAC = L_PER_GAL / HA_PER_AC;
    public static final double M_PER_IN = MM_PER_IN / 1000;
    public static final double M3_PER_GAL = L_PER_GAL / 1000;
    public static final double M3_PER_FLOZ = M3_PER_GAL / 128;
    /** m3/s in one gal/min. */
    public static final double M3S_PER_GPM = M3_PER_GAL / 60;
    /** m3/m2 in one gal/ac. */
    public static final double M3M2_PER_GALAC = M3_PER_GAL / M2_PER_AC;
    /** m3/m2 in one L/ha. */
    public static final double M3M2_PER_LHA = 1e-7;

    public static final double KGM3_PER_LBGAL = KG_PER_LB / M3_PER_GAL;
    /** Dry share of corn at the trade's 15.5 % moisture. */
    public static final double DRY_SHARE_OF_TRADE_CORN = 0.845;

    public static final double LB_PER_BU_CORN = 56;
    /** kg/ha of grain at 15.5 % moisture in one bu/ac. */
    public static final double KGHA_PER_BUAC = LB_PER_BU_CORN * KGHA_PER_LBAC;

    private Units() {}

    public static double lbAc(double kgHa) {
        return kgHa / KGHA_PER_LBAC;
    }

    public static double kgHa(double lbAc) {
        return lbAc * KGHA_PER_LBAC;
    }

    /** Yield in bu/ac at 15.5 % moisture of dry grain in kg/ha. */
    public static double buAc(double dryGrain_kgHa) {
        return dryGrain_kgHa / DRY_SHARE_OF_TRADE_CORN / KGHA_PER_BUAC;
    }

    public static double inches(double mm) {
        return mm / MM_PER_IN;
    }

    public static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    public static double fahrenheit(double celsius) {
        return 1.8 * celsius + 32;
    }
}
