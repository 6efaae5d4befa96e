// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.OptionalInt;

/**
 * One product as it was put on.
 *
 * @param name brand or product name
 * @param registration registration number on its label; empty for plain fertiliser
 * @param amount total of the product put on, not of the mix, in the unit of its label
 * @param rate as asked for ("40 lb N/ac"), empty when not known
 * @param lot lot number, empty when not known
 * @param reentry_h restricted-entry interval of the label [h]; empty for none
 */
public record ProductUse(
        String name, String registration, Amount amount, String rate, String lot, OptionalInt reentry_h) {
    public static ProductUse fertiliser(String name, Amount amount, String rate) {
        return new ProductUse(name, "", amount, rate, "", OptionalInt.empty());
    }

    /** Whether the law of pesticide records asks for this product. */
    public boolean isRegistered() {
        return !registration.isBlank();
    }
}
