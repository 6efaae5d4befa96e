// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

/**
 * What a number may be, in the inside unit, all bounds inclusive: below {@code least} or above {@code most} it is refused;
 * between those and {@code low} to {@code high} it is brought into range and flagged.
 */
public record Limits(double least, double low, double high, double most) {
    public static final Limits ANY = refuse(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    public static final Limits NOT_NEGATIVE = refuse(0, Double.POSITIVE_INFINITY);
    /** Room for the rounding of unit factors, so that a bound written in another unit is still the bound. */
    private static final double ROUNDING = 1e-9;

    /** Refuses what is outside. */
    public static Limits refuse(double least, double most) {
        return new Limits(least, least, most, most);
    }

    /** Brings into {@code low} to {@code high} what is possible at all. */
    public static Limits clamp(double least, double low, double high, double most) {
        return new Limits(least, low, high, most);
    }

    boolean refuses(double value) {
        return value < least - room(least) || value > most + room(most);
    }

    double clamped(double value) {
        if (value < low) {
            return value < low - room(low) ? low : value;
        }
        return value > high + room(high) ? high : value;
    }

    private static double room(double bound) {
        return Double.isInfinite(bound) ? 0 : Math.abs(bound) * ROUNDING;
    }
}
