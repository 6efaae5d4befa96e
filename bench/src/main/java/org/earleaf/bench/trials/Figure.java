// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Locale;

/** A figure and the 90 % interval it lies in. */
record Figure(double value, double low, double high) {
    String json() {
        return String.format(Locale.ROOT, "[%.3f,%.3f,%.3f]", value, low, high);
    }

    /** As in "21.30 (18.02 to 24.91)". */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", value, low, high);
    }
}
