// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.util.Optional;
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

    /** The rate as a number with its unit, where it is one. */
    public Optional<Amount> asked() {
        int gap = rate.indexOf(' ');
        try {
            return gap < 0
                    ? Optional.empty()
                    : Optional.of(new Amount(new BigDecimal(rate.substring(0, gap)), rate.substring(gap + 1)));
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }

    /** Whether the law of pesticide records asks for this product. */
    public boolean isRegistered() {
        return !registration.isBlank();
    }
}
