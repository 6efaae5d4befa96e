// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

/** Whole minutes and cents, for solvers of whole numbers; what is not whole is a fault of the farm drawn. */
final class Whole {
    private Whole() {}

    static long cents(double usd) {
        return whole(usd * 100, usd + " $");
    }

    static int minutes(double s) {
        return (int) whole(s / 60, s + " s");
    }

    private static long whole(double value, String word) {
        long whole = Math.round(value);
        if (Math.abs(whole - value) > 1e-6) {
            throw new IllegalStateException(word + " is not whole");
        }
        return whole;
    }
}
