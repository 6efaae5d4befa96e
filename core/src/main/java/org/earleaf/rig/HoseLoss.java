// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * Pressure lost in hoses, fittings and height.
 *
 * <pre>
 * dp = f (L/D) density v2/2;  Re = density v D / mu
 * f  = 64/Re below 2300, else 0.25 / [log10(e/(3.7 D) + 5.74/Re^0.9)]2
 *
 * dp     pressure lost                   [Pa]
 * L D    length and bore of the hose     [m]
 * v      velocity in it                  [m/s]
 * mu     viscosity                       [Pa s]
 * e      roughness, 1.5e-6 for smooth hose  [m]
 * Range  Reynolds number up to 1e8; between 2300 and 4000 the turbulent form is taken, which is the careful side
 * Source Darcy-Weisbach; Swamee & Jain 1976 (from memory); Hazen-Williams for water only, as a second way
 * Check  HoseLossTest
 * </pre>
 */
public final class HoseLoss {
    public static final double SMOOTH_HOSE_M = 1.5e-6;
    public static final double WATER_PAS = 1.0e-3;
    /** Assumption: enter what was measured; it rises when cold. A factor 2 moves the loss by about 17 %. */
    public static final double UAN_PAS = 3.5e-3;

    /** Share of the loss at full inlet flow that a boom line feeding even outlets shows end to end. */
    public static final double EVEN_OUTLETS = 1.0 / 3;

    /** Variation of pressure along a boom that is accepted: flow then varies by 2.5 % (common practice, no source). */
    public static final double BOOM_VARIATION = 0.05;

    private static final double GRAVITY_MS2 = 9.80665;

    private HoseLoss() {}

    /** A hose. */
    public record Hose(double length_m, double bore_m) {
        double velocity_ms(double flow_m3s) {
            return flow_m3s / (Math.PI / 4 * bore_m * bore_m);
        }
    }

    public static double velocity_ms(double flow_m3s, Hose hose) {
        return hose.velocity_ms(flow_m3s);
    }

    public static double friction_Pa(double flow_m3s, Hose hose, double density_kgM3, double viscosity_PaS) {
        double velocity_ms = hose.velocity_ms(flow_m3s);
        double re = density_kgM3 * velocity_ms * hose.bore_m() / viscosity_PaS;
        return frictionFactor(re, hose.bore_m())
                * hose.length_m()
                / hose.bore_m()
                * density_kgM3
                * velocity_ms
                * velocity_ms
                / 2;
    }

    static double frictionFactor(double re, double bore_m) {
        if (re < 2300) {
            return 64 / re;
        }
        double root = Math.log10(SMOOTH_HOSE_M / (3.7 * bore_m) + 5.74 / Math.pow(re, 0.9));
        return 0.25 / (root * root);
    }

    /** Fittings: K 0.9 for an elbow, 1.8 for a tee's branch, 0.05 to 0.2 a ball valve, 2 to 10 a strainer. */
    public static double fittings_Pa(double k, double flow_m3s, Hose hose, double density_kgM3) {
        double velocity_ms = hose.velocity_ms(flow_m3s);
        return k * density_kgM3 * velocity_ms * velocity_ms / 2;
    }

    public static double height_Pa(double rise_m, double density_kgM3) {
        return density_kgM3 * GRAVITY_MS2 * rise_m;
    }

    /** End to end loss of a boom line whose outlets draw evenly. */
    public static double boomLine_Pa(double inletFlow_m3s, Hose line, double density_kgM3, double viscosity_PaS) {
        return EVEN_OUTLETS * friction_Pa(inletFlow_m3s, line, density_kgM3, viscosity_PaS);
    }

    /**
     * Second way for water: h = 10.67 L Q^1.852 / (C^1.852 D^4.8704), metres of water, C 140 for smooth hose.
     *
     * <pre>
     * Source Hazen & Williams, metric form (from memory)
     * Check  HoseLossTest
     * </pre>
     */
    public static double hazenWilliams_Pa(double flow_m3s, Hose hose) {
        double head_m = 10.67 * hose.length_m() * Math.pow(flow_m3s / 140, 1.852) / Math.pow(hose.bore_m(), 4.8704);
        return height_Pa(head_m, FlowMath.WATER_KGM3);
    }
}
