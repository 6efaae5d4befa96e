// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;

/**
 * One trip over a field with one aim.
 *
 * @param id made by the store or, for files, from file and row
 * @param product name on the shelf or built in ("UAN 32")
 * @param state proposed, planned, loaded, made or dropped
 */
public record Pass(
        String id,
        FieldPart part,
        LocalDate date,
        String product,
        Rate rate,
        Placement placement,
        Inhibitor inhibitor,
        State state) {
    /**
     * How much of the product.
     *
     * @param entered number as entered
     * @param unit as entered ("lb N/ac", "gal/ac" ...)
     * @param nitrogen_kgHa nitrogen put on [kg N/ha of field]; 0 for a product without nitrogen
     */
    public record Rate(double entered, String unit, double nitrogen_kgHa) {
        Rate times(double factor) {
            return new Rate(entered * factor, unit, nitrogen_kgHa * factor);
        }
    }

    /** The life of a pass. */
    public enum State {
        PROPOSED,
        PLANNED,
        LOADED,
        MADE,
        DROPPED
    }

    public String field() {
        return part.field();
    }

    public String zone() {
        return part.zone();
    }

    public double nitrogen_kgHa() {
        return rate.nitrogen_kgHa();
    }

    public boolean isOn(Zone z) {
        return part.holds(z);
    }

    /** The same, kept under an id. */
    public Pass withId(String other) {
        return new Pass(other, part, date, product, rate, placement, inhibitor, state);
    }

    /** The same pass in another state of its life. */
    public Pass in(State other) {
        return new Pass(id, part, date, product, rate, placement, inhibitor, other);
    }

    /** The same pass with more or less of the product. */
    public Pass times(double factor) {
        return new Pass(id, part, date, product, rate.times(factor), placement, inhibitor, state);
    }
}
