// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * A number that is assumed until a farm or a run says otherwise: a constant of an enum, by whose name the catalogue tells
 * what it is.
 */
public interface Assumed {
    /** @param usual taken when nothing else is said */
    record Range(String unit, double usual, double low, double high) {
        private static final int DIGITS = 6;

        /** The value, refused outside of what may be set. */
        public double checked(double value, Enum<?> of) {
            if (value >= low && value <= high) {
                return value;
            }
            throw new EarleafException(Problem.of(
                    "assumption.out-of-range",
                    Said.text(of.name()),
                    Said.text(value + " " + unit),
                    "low",
                    Figure.text(low, DIGITS),
                    "high",
                    Figure.text(high, DIGITS),
                    "unit",
                    unit,
                    "meaning",
                    of,
                    "usual",
                    Figure.text(usual, DIGITS)));
        }
    }

    Range range();

    default String unit() {
        return range().unit();
    }

    /** Taken when nothing else is said. */
    default double usual() {
        return range().usual();
    }

    default double low() {
        return range().low();
    }

    default double high() {
        return range().high();
    }
}
