// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

/**
 * Measured response of dry grain to nitrogen, a quadratic with a plateau.
 *
 * <pre>
 * y = zero + b N + c N2 up to the agronomic optimum, flat beyond
 *
 * y, zero  dry grain  [kg/ha]
 * N        nitrogen   [kg/ha]
 * Source   trials of Iowa State University in the public repository vanichols/ghproj_ccgap
 * Check    MeasuredCornTest
 * </pre>
 */
record Measured(double zero_kgHa, double b, double c, double optimum_kgHa, double plateau_kgHa) {
    /** A year in which nitrogen gained nothing has no optimum in the source: its line is flat. */
    static Measured of(Rows row) {
        if (Double.isNaN(row.number("agronomic_optimum_kg_n_ha"))) {
            return flat(row.number("plateau_kg_ha"));
        }
        return new Measured(
                row.number("zero_n_kg_ha"),
                row.number("b"),
                row.number("c"),
                row.number("agronomic_optimum_kg_n_ha"),
                row.number("plateau_kg_ha"));
    }

    /** The same yield at every rate. */
    static Measured flat(double yield_kgHa) {
        return new Measured(yield_kgHa, 0, 0, 0, yield_kgHa);
    }

    double at(double nitrogen_kgHa) {
        return nitrogen_kgHa >= optimum_kgHa
                ? plateau_kgHa
                : zero_kgHa + b * nitrogen_kgHa + c * nitrogen_kgHa * nitrogen_kgHa;
    }
}
