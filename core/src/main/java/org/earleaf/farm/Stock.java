// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

/**
 * Product on hand.
 *
 * @param amount as entered
 * @param unit volume or mass as entered ("gal", "lb", "kg" ...)
 * @param amount_L litres, NaN when entered by mass
 * @param amount_kg kilograms, NaN when entered by volume
 * @param lot lot number on the container, empty when not given
 * @param place where it stands, empty when not given
 */
public record Stock(
        String product, double amount, String unit, double amount_L, double amount_kg, String lot, String place) {
    /** The same of a product that is called otherwise. */
    public Stock called(String name) {
        return new Stock(name, amount, unit, amount_L, amount_kg, lot, place);
    }
}
