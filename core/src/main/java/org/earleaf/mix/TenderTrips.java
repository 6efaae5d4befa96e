// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

/**
 * Whether a tender keeps its rigs going.
 *
 * <pre>
 * t = V / (r v w e) + fill + travel,   S = T t / (k V),   wait = max(0, R - S)
 *
 * V      load                                 [m3]
 * r      finished liquid on ground            [m3/m2]
 * v, w   speed, width                         [m/s], [m]
 * e      share of time in the field at full width
 * t      from one filling to the next         [s]
 * T      tender holds                         [m3]
 * k      rigs that draw on it
 * S      time one tenderful lasts             [s]
 * R      tender there and back, with its own filling  [s]
 * Range  all above 0; first order: rigs that queue wait longer
 * Source arithmetic
 * Check  RinseTest
 * </pre>
 */
public record TenderTrips(double load_m3, double cycle_s, double area_m2) {
    /** @param capacity_m2s ground that a rig covers in the field, v w e */
    public static TenderTrips of(
            double load_m3, double rate_m3m2, double capacity_m2s, double fill_s, double travel_s) {
        double area_m2 = load_m3 / rate_m3m2;
        return new TenderTrips(load_m3, area_m2 / capacity_m2s + fill_s + travel_s, area_m2);
    }

    /** Ground covered in a time, filling and driving with it. */
    public double rate_m2s() {
        return area_m2 / cycle_s;
    }

    public double lasts_s(double tender_m3, int rigs) {
        return tender_m3 * cycle_s / (rigs * load_m3);
    }

    public double wait_s(double tender_m3, int rigs, double round_s) {
        return Math.max(0, round_s - lasts_s(tender_m3, rigs));
    }
}
