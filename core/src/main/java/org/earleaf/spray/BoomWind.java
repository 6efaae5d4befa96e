// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

/** Wind at the height of the boom, from wind measured elsewhere. Wind measured at the boom goes before either. */
public final class BoomWind {
    private static final double STATION_M = 10;

    private BoomWind() {}

    /**
     * From a station's wind at 10 m.
     *
     * <pre>
     * u = u10 (z/10)^0.143
     *
     * z      height of the boom above the ground   [m]
     * u u10  wind at z and at 10 m                 [m/s]
     * Range  0.5 to 10 m
     * Source power law with exponent 1/7 (neutral air over open ground): common practice, no source.
     * Check  BoomWindTest
     * </pre>
     */
    public static double fromStation_ms(double wind10m_ms, double boom_m) {
        return wind10m_ms * Math.pow(boom_m / STATION_M, 0.143);
    }

    /**
     * From one height to another over the same crop.
     *
     * <pre>
     * u2 = u1 ln((z2 - d)/z0)/ln((z1 - d)/z0),  d = 0.65 H, z0 = 0.13 H
     *
     * z1 z2  heights above the ground, both above d + z0   [m]
     * u1 u2  wind there                                    [m/s]
     * H      crop height                                   [m]
     * Source logarithmic profile; d and z0 by crop height: common practice, no source.
     * Check  BoomWindTest
     * </pre>
     */
    public static double overCrop_ms(double wind_ms, double measured_m, double wanted_m, double crop_m) {
        double d = 0.65 * crop_m;
        double z0 = 0.13 * crop_m;
        if (Math.min(measured_m, wanted_m) <= d + z0) {
            return Double.NaN; // inside the canopy the profile says nothing
        }
        return wind_ms * Math.log((wanted_m - d) / z0) / Math.log((measured_m - d) / z0);
    }
}
