// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.util.List;

/**
 * Whether leaves are wet, hour by hour.
 *
 * <pre>
 * wet when RH >= 90 % or rain > 0; after the canopy has closed RH within it is taken 5 points higher, at most 100
 * second choice, by dew point: wet from T - Td <= 2 °C until T - Td > 3.8 °C
 *
 * RH     relative humidity of the station   [%]
 * T Td   air temperature and dew point      [°C]
 * Range  hourly data of the growing season
 * Source 90 %: Sentelhas et al., four regions, right in 0.87 to 0.92 of hours and better than the dew-point rule
 *        (congress paper, abstract read); 2 and 3.8 °C: from memory; 5 points in the canopy: assumption.
 * Check  LeafWetnessTest
 * </pre>
 */
public enum LeafWetness {
    DRY,
    DEW,
    DRIPPING;

    private static final double WET_RH = 90;
    private static final double CANOPY_RH = 5;
    private static final double WET_FROM_C = 2;
    private static final double DRY_FROM_C = 3.8;
    /** Rain that leaves leaves dripping for this hour and the next [mm], assumption. */
    private static final double DRIPS_MM = 0.2;

    /** Relative humidity among the leaves [%]. */
    public static double inCanopy_pct(double rh_pct, boolean closed) {
        return closed ? Math.min(100, rh_pct + CANOPY_RH) : rh_pct;
    }

    /** One per hour. */
    public static List<LeafWetness> byHumidity(List<WeatherHour> hours, boolean canopyClosed) {
        LeafWetness[] wet = new LeafWetness[hours.size()];
        double before = 0;
        for (int k = 0; k < wet.length; k++) {
            WeatherHour h = hours.get(k);
            double rain = Math.max(0, Double.isNaN(h.rain_mm()) ? 0 : h.rain_mm());
            boolean humid = inCanopy_pct(h.rh_pct(), canopyClosed) >= WET_RH;
            boolean drips = rain >= DRIPS_MM || (before >= DRIPS_MM && humid);
            wet[k] = drips ? DRIPPING : humid || rain > 0 ? DEW : DRY;
            before = rain;
        }
        return List.of(wet);
    }

    /** Wet or not by the dew-point depression, one per hour; where humidity is not known a wet leaf stays wet. */
    public static boolean[] byDewPoint(List<WeatherHour> hours) {
        boolean[] wet = new boolean[hours.size()];
        boolean now = false;
        for (int k = 0; k < wet.length; k++) {
            WeatherHour h = hours.get(k);
            double depression = h.air_C() - dewPoint_C(h.air_C(), h.rh_pct());
            now = h.rain_mm() > 0 || depression <= WET_FROM_C || (now && !(depression > DRY_FROM_C));
            wet[k] = now;
        }
        return wet;
    }

    /**
     * Dew point from temperature and humidity.
     *
     * <pre>
     * Td = 237.3 a/(17.27 - a),  a = ln(RH/100) + 17.27 T/(T + 237.3)
     *
     * Source FAO-56 eq. 11 solved for the temperature
     * Check  LeafWetnessTest
     * </pre>
     */
    public static double dewPoint_C(double air_C, double rh_pct) {
        double a = Math.log(rh_pct / 100) + 17.27 * air_C / (air_C + 237.3);
        return 237.3 * a / (17.27 - a);
    }
}
