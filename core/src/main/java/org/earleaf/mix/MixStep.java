// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

/**
 * One thing that goes in the tank.
 *
 * @param order counts from 1
 * @param part whether it is a product or a part of the carrier
 */
public record MixStep(int order, String product, Part part, Amount amount, String how, String why) {
    /** What a step adds. */
    public enum Part {
        CARRIER_FIRST,
        PRODUCT,
        CARRIER_LAST
    }
}
