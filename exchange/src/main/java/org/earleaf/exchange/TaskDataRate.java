// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

/**
 * Rates as whole numbers of the task data of machines.
 *
 * <pre>
 * volume on ground, entities 1 (wanted) and 2 (put on): hundredths of a cubic millimetre on a square metre
 * mass on ground, entities 6 and 7: milligrams on a square metre
 *
 * Range  0 to 2^31 - 1
 * Source ISO 11783-10, public data dictionary of ISO 11783-11
 * Check  TaskDataRateTest: 15 gal/ac is 1,403,093, 40 lb/ac is 4,483 mg/m2, worked by hand
 * </pre>
 */
public final class TaskDataRate {
    private static final double PER_M3M2 = 1e11;
    /** 1 kg/ha is 100 mg/m2. */
    private static final double MGM2_PER_KGHA = 100;

    private TaskDataRate() {}

    /** Volume on ground as entities 1 and 2 write it. */
    public static long ofVolume(double rate_m3m2) {
        return Math.round(rate_m3m2 * PER_M3M2);
    }

    public static double volume_m3m2(long units) {
        return units / PER_M3M2;
    }

    /** Mass on ground as entities 6 and 7 write it [mg/m2]. */
    public static long ofMass(double rate_kgHa) {
        return Math.round(rate_kgHa * MGM2_PER_KGHA);
    }

    public static double mass_kgHa(long units) {
        return units / MGM2_PER_KGHA;
    }
}
