// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.List;
import org.earleaf.units.Said;

/**
 * One thing that goes in the tank.
 *
 * @param order counts from 1
 * @param part whether it is a product or a part of the carrier
 * @param before products that its label wants in before it
 */
public record MixStep(
        int order, String product, Part part, Amount amount, MixHow how, MixWhy why, List<String> before) {
    /** What a step adds. */
    public enum Part {
        CARRIER_FIRST,
        PRODUCT,
        CARRIER_LAST
    }

    public MixStep {
        before = List.copyOf(before);
    }

    /** The same, told with what labels want in before it. */
    public MixStep after(List<String> products) {
        return new MixStep(order, product, part, amount, how, why, products);
    }

    /** Why it goes in where it does. */
    public Said reason() {
        return before.isEmpty()
                ? Said.of("mix.why", "why", why)
                : Said.of("mix.why-label", "why", why, "products", before);
    }
}
