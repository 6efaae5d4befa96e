// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;

/**
 * One trip over a field with one aim.
 *
 * @param id made by the store or, for files, from file and row
 * @param zone empty: the whole field
 * @param product name on the shelf or built in ("UAN 32")
 * @param rate as entered
 * @param rateUnit as entered ("lb N/ac", "gal/ac" ...)
 * @param nitrogen_kgHa nitrogen put on [kg N/ha of field]; 0 for a product without nitrogen
 * @param state proposed, planned, loaded, made or dropped
 */
public record Pass(
        String id,
        String field,
        String zone,
        LocalDate date,
        String product,
        double rate,
        String rateUnit,
        double nitrogen_kgHa,
        Placement placement,
        Inhibitor inhibitor,
        State state) {
    /** The life of a pass. */
    public enum State {
        PROPOSED,
        PLANNED,
        LOADED,
        MADE,
        DROPPED
    }

    public boolean isOn(Zone z) {
        return field.equals(z.field()) && (zone.isEmpty() || zone.equals(z.zone()));
    }

    /** The same, kept under an id. */
    public Pass withId(String other) {
        return new Pass(other, field, zone, date, product, rate, rateUnit, nitrogen_kgHa, placement, inhibitor, state);
    }

    /** The same pass in another state of its life. */
    public Pass in(State other) {
        return new Pass(id, field, zone, date, product, rate, rateUnit, nitrogen_kgHa, placement, inhibitor, other);
    }

    /** The same pass with more or less of the product. */
    public Pass times(double factor) {
        return new Pass(
                id,
                field,
                zone,
                date,
                product,
                rate * factor,
                rateUnit,
                nitrogen_kgHa * factor,
                placement,
                inhibitor,
                state);
    }
}
