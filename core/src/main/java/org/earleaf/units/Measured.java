// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * A quantity to be told to people, in US or metric units as they wish.
 *
 * @param value in {@link Measure#inside()}
 */
public record Measured(double value, Measure measure) {
    @Override
    public String toString() {
        return value + " " + measure.inside();
    }
}
