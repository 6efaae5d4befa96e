// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Optional;
import org.earleaf.units.Said;

/**
 * Chance that tar spot goes on rising, from the weather of a month. <b>Switched off</b>: the coefficients are recalled,
 * the table of the paper could not be read, and the negative signs of humidity run against older descriptions. It stays
 * off until two people have typed the coefficients from the paper itself.
 *
 * <pre>
 * z1 = 32.06987 - 0.89471 T30 - 0.14373 RHmax30;  z2 = 20.35950 - 0.91093 T30 - 0.29240 H90
 * p = mean of 1/(1 + exp(-z))
 *
 * T30      30-day mean of the daily mean temperature            [°C]
 * RHmax30  30-day mean of the highest humidity of the day       [%]
 * H90      14-day mean of night hours (20:00 to 06:00) of 90 %  [h]
 * Range  V10 to R4, T30 of 10 to 30 °C, where tar spot is established
 * Source Webster et al. 2023, Sci. Rep. 13, s41598-023-44338-6; coefficients from memory, unproved.
 * Check  TarSpotModelTest: arithmetic only.
 * </pre>
 */
public final class TarSpotModel {
    /** Whether the coefficients were confirmed against the paper. */
    public static final boolean PROVED = false;

    /** Stands wherever tar spot's weather risk would. */
    public static final Said WHY_OFF = Said.of("tar-spot.off");

    private TarSpotModel() {}

    /** The chance; empty as long as the coefficients are not proved. */
    public static Optional<Double> find(double t30_C, double rhMax30_pct, double humidNight_h) {
        return PROVED ? Optional.of(arithmetic(t30_C, rhMax30_pct, humidNight_h)) : Optional.empty();
    }

    /** The formula by itself, for its tests. */
    static double arithmetic(double t30_C, double rhMax30_pct, double humidNight_h) {
        double first = 32.06987 - 0.89471 * t30_C - 0.14373 * rhMax30_pct;
        double second = 20.35950 - 0.91093 * t30_C - 0.29240 * humidNight_h;
        return (logistic(first) + logistic(second)) / 2;
    }

    private static double logistic(double z) {
        return 1 / (1 + Math.exp(-z));
    }
}
