// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import org.earleaf.weather.ReferenceEvapotranspiration;

/**
 * Wet-bulb temperature, and how far it lies below the air: the drier the air, the faster a droplet shrinks.
 *
 * <pre>
 * Tw = T atan(0.151977 sqrt(RH + 8.313659)) + atan(T + RH) - atan(RH - 1.676331)
 *      + 0.00391838 RH^1.5 atan(0.023101 RH) - 4.686035
 * outside its range   e = es(Tw) - 0.000665 P (T - Tw), solved for Tw
 * Delta T = max(0, T - Tw)
 *
 * T      air temperature                                  [°C]
 * RH     relative humidity                                [%]
 * Tw     wet-bulb temperature; angles in radians          [°C]
 * e, es  vapour pressure, and its saturation at Tw        [kPa]
 * P      air pressure                                     [kPa]
 * Range  5 to 99 %, -20 to 50 °C, not cold and dry at once; error -1 to +0.65 °C, mean below 0.3
 * Source Stull 2011, J. Appl. Meteorol. Climatol. 50:2267-2269; outside it the psychrometric equation,
 *        FAO-56 eqs 11 and 15.
 * Check  WetBulbTest
 * </pre>
 */
public final class WetBulb {
    private static final double SEA_LEVEL_KPA = 101.325;

    private WetBulb() {}

    /** Wet bulb at usual pressure. */
    public static double of_C(double air_C, double rh_pct) {
        return of_C(air_C, rh_pct, SEA_LEVEL_KPA);
    }

    /** The explicit equation where it holds, else the psychrometric one. */
    public static double of_C(double air_C, double rh_pct, double pressure_kPa) {
        return isInRange(air_C, rh_pct) ? explicit_C(air_C, rh_pct) : psychrometric_C(air_C, rh_pct, pressure_kPa);
    }

    /** How much colder the wet bulb is than the air [°C], never below 0; {@code NaN} when either is not known. */
    public static double deltaT_C(double air_C, double rh_pct) {
        return Math.max(0, air_C - of_C(air_C, rh_pct));
    }

    /** The paper leaves out what is cold and dry at once; the line from 5 %, 8 °C to 20 %, -10 °C is from memory. */
    private static boolean isInRange(double air_C, double rh_pct) {
        boolean coldAndDry = rh_pct < 20 && air_C < 8 - (rh_pct - 5) * 18 / 15;
        return rh_pct >= 5 && rh_pct <= 99 && air_C >= -20 && air_C <= 50 && !coldAndDry;
    }

    static double explicit_C(double t, double rh) {
        return t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659))
                + Math.atan(t + rh)
                - Math.atan(rh - 1.676331)
                + 0.00391838 * Math.pow(rh, 1.5) * Math.atan(0.023101 * rh)
                - 4.686035;
    }

    static double psychrometric_C(double air_C, double rh_pct, double pressure_kPa) {
        double e = rh_pct / 100 * ReferenceEvapotranspiration.saturation_kPa(air_C);
        if (Double.isNaN(e)) {
            return Double.NaN;
        }
        double low = air_C - 60;
        double high = air_C;
        while (high - low > 1e-4) {
            double mid = (low + high) / 2;
            double would = ReferenceEvapotranspiration.saturation_kPa(mid) - 0.000665 * pressure_kPa * (air_C - mid);
            if (would < e) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return (low + high) / 2;
    }

    /**
     * How long a droplet of water lives in still air; for advice, never to allow anything.
     *
     * <pre>
     * t = d^2/(80 Delta T)
     *
     * d      diameter   [µm]
     * t      life       [s]
     * Range  Delta T above 0
     * Source Amsden 1962, from memory; the paper was not found.
     * Check  WetBulbTest
     * </pre>
     */
    public static double dropletLife_s(double diameter_um, double deltaT_C) {
        return diameter_um * diameter_um / (80 * deltaT_C);
    }
}
