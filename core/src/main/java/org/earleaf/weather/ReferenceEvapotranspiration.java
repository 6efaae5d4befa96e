// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

/**
 * Daily reference evapotranspiration of short grass by Penman-Monteith, and the radiation terms under it.
 *
 * <pre>
 * ET0 = [0.408 D (Rns - Rnl - G) + g 900/(Tm + 273) u2 (es - ea)] / [D + g (1 + 0.34 u2)]     floor 0
 * Ra  = 37.586 dr (ws sin(lat) sin(dec) + cos(lat) cos(dec) sin(ws))
 * Rnl = 4.903e-9 (Tx^4 + Tn^4)/2 (0.34 - 0.14 sqrt(ea)) (1.35 min(1, Rs/Rso) - 0.35)          T in kelvin
 *
 * D      slope of the saturation vapour pressure curve   [kPa/°C]
 * g      psychrometric constant                          [kPa/°C]
 * Ra     radiation above the air                         [MJ/m2/d]
 * Rs     radiation at the ground, Rso under a clear sky  [MJ/m2/d]
 * Rns, Rnl net short wave taken up, net long wave lost    [MJ/m2/d]
 * G      heat into the soil, 0 for a day                 [MJ/m2/d]
 * es, ea vapour pressure, saturated and actual           [kPa]
 * u2     wind at 2 m                                     [m/s]
 * Range  latitude 25 to 55 degrees, -50 to 2500 m
 * Source Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eqs 6 to 52.
 * Check  ReferenceEvapotranspirationTest: the paper's examples 8, 10, 11, 17, 18, 20.
 * </pre>
 */
public final class ReferenceEvapotranspiration {
    /** Wind taken where none was measured [m/s]: FAO-56, the mean of over 2000 stations. */
    public static final double USUAL_WIND_MS = 2.0;

    private ReferenceEvapotranspiration() {}

    /** Saturation vapour pressure [kPa] over water at a temperature. */
    public static double saturation_kPa(double t_C) {
        return 0.6108 * Math.exp(17.27 * t_C / (t_C + 237.3));
    }

    /** Air pressure [kPa] at an elevation. */
    public static double pressure_kPa(double elevation_m) {
        return 101.3 * Math.pow((293 - 0.0065 * elevation_m) / 293, 5.26);
    }

    public static double psychrometric_kPaC(double elevation_m) {
        return 0.665e-3 * pressure_kPa(elevation_m);
    }

    public static double slope_kPaC(double tmean_C) {
        return 4098 * saturation_kPa(tmean_C) / ((tmean_C + 237.3) * (tmean_C + 237.3));
    }

    private static double declination(int dayOfYear) {
        return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
    }

    private static double sunsetAngle(double latitude_deg, int dayOfYear) {
        double lat = Math.toRadians(latitude_deg);
        return Math.acos(-Math.tan(lat) * Math.tan(declination(dayOfYear)));
    }

    /** Radiation above the air [MJ/m2/d]. */
    public static double extraterrestrial_MJm2(double latitude_deg, int dayOfYear) {
        double lat = Math.toRadians(latitude_deg);
        double dec = declination(dayOfYear);
        double ws = sunsetAngle(latitude_deg, dayOfYear);
        double dr = 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
        return 37.586 * dr * (ws * Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.sin(ws));
    }

    /** Hours between sunrise and sunset. */
    public static double daylight_h(double latitude_deg, int dayOfYear) {
        return 24 * sunsetAngle(latitude_deg, dayOfYear) / Math.PI;
    }

    /** Radiation at the ground [MJ/m2/d] from hours of sunshine. */
    public static double solarOfSunshine_MJm2(double ra_MJm2, double sunshine_h, double daylight_h) {
        return (0.25 + 0.50 * sunshine_h / daylight_h) * ra_MJm2;
    }

    /** Radiation at the ground [MJ/m2/d] of inland places from the daily range of temperature. */
    public static double solarOfRange_MJm2(double ra_MJm2, double tmax_C, double tmin_C) {
        return 0.16 * Math.sqrt(Math.max(0, tmax_C - tmin_C)) * ra_MJm2;
    }

    /** Radiation at the ground under a clear sky [MJ/m2/d]. */
    public static double clearSky_MJm2(double ra_MJm2, double elevation_m) {
        return (0.75 + 2e-5 * elevation_m) * ra_MJm2;
    }

    /** Net long wave lost [MJ/m2/d]. */
    public static double netLongWave_MJm2(
            double tmax_C, double tmin_C, double ea_kPa, double rs_MJm2, double rso_MJm2) {
        double tx = tmax_C + 273.16;
        double tn = tmin_C + 273.16;
        double black = 4.903e-9 * (tx * tx * tx * tx + tn * tn * tn * tn) / 2;
        double cloud = 1.35 * Math.min(1, rs_MJm2 / rso_MJm2) - 0.35;
        return black * (0.34 - 0.14 * Math.sqrt(ea_kPa)) * cloud;
    }

    /** Wind at 2 m [m/s] from wind at another height over grass. */
    public static double windAt2m_ms(double wind_ms, double height_m) {
        return wind_ms * 4.87 / Math.log(67.8 * height_m - 5.42);
    }

    /** Actual vapour pressure [kPa] from the two relative humidities. */
    public static double vapour_kPa(double tmax_C, double tmin_C, double rhMax_pct, double rhMin_pct) {
        return (saturation_kPa(tmin_C) * rhMax_pct + saturation_kPa(tmax_C) * rhMin_pct) / 200;
    }

    /** The air of a day near the ground: its warmest and coldest, its vapour pressure, and its wind at 2 m. */
    public record Air(double tmax_C, double tmin_C, double ea_kPa, double wind2m_ms) {
        double mean_C() {
            return (tmax_C + tmin_C) / 2;
        }

        /** What the air could still take up. */
        double deficit_kPa() {
            return (saturation_kPa(tmax_C) + saturation_kPa(tmin_C)) / 2 - ea_kPa;
        }
    }

    /** ET0 [mm/d] from everything known; {@code soilHeat_MJm2} is 0 for a day. */
    public static double penmanMonteith_mm(
            Air air, double rs_MJm2, double ra_MJm2, double elevation_m, double soilHeat_MJm2) {
        double tm = air.mean_C();
        double d = slope_kPaC(tm);
        double g = psychrometric_kPaC(elevation_m);
        double rso = clearSky_MJm2(ra_MJm2, elevation_m);
        double rn = 0.77 * rs_MJm2 - netLongWave_MJm2(air.tmax_C, air.tmin_C, air.ea_kPa, rs_MJm2, rso);
        double energy = 0.408 * d * (rn - soilHeat_MJm2);
        double wind = g * 900 / (tm + 273) * air.wind2m_ms * air.deficit_kPa();
        return Math.max(0, (energy + wind) / (d + g * (1 + 0.34 * air.wind2m_ms)));
    }

    /**
     * Hargreaves fallback, FAO-56 eq. 52 [mm/d]; expect 20 % either way on a single day; for daily ranges of 3 to 25 °C.
     */
    public static double hargreaves_mm(double tmax_C, double tmin_C, double ra_MJm2) {
        double tm = (tmax_C + tmin_C) / 2;
        return 0.0023 * (tm + 17.8) * Math.sqrt(Math.max(0, tmax_C - tmin_C)) * 0.408 * ra_MJm2;
    }
}
