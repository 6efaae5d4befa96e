// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * Flow through a hole in a plate, for drop hoses and coulters. No maker's table: the general orifice equation, whose
 * discharge coefficient is fitted to a catch as soon as there is one.
 *
 * <pre>
 * Q = Cd A sqrt(2 dp / density),  A = pi d2 / 4
 *
 * Q      flow of the liquid itself                     [m3/s]
 * Cd     discharge coefficient                         [1]
 * d      diameter of the hole                          [m]
 * dp     pressure before the plate less that behind it (near 0 where the hose runs open)  [Pa]
 * Range  orifice Reynolds number above 10,000 and hose bore above 4 d; Cd 0.5 to 1
 * Source general orifice equation, any handbook of hydraulics. Cd: encyclopaedia tables of 1911 for sharp round holes
 *        0.603 to 0.620; plate as thick as its hole about 0.81; converging inlet 0.91 to 0.97.
 * Check  OrificeMathTest: US constant 29.84, metric constant 0.6664, worked plates, solving back.
 * </pre>
 */
public final class OrificeMath {
    /** Discharge coefficient of a thin sharp plate, until a catch says better. */
    public static final double SHARP_PLATE_CD = 0.62;

    /** The equation holds above this Reynolds number of the hole. */
    public static final double LEAST_REYNOLDS = 10_000;

    private OrificeMath() {}

    public static double flow_m3s(double diameter_m, double cd, double pressure_Pa, double density_kgM3) {
        return cd * Math.PI / 4 * diameter_m * diameter_m * jet_ms(pressure_Pa, density_kgM3);
    }

    public static double diameter_m(double flow_m3s, double cd, double pressure_Pa, double density_kgM3) {
        return Math.sqrt(flow_m3s / (cd * Math.PI / 4 * jet_ms(pressure_Pa, density_kgM3)));
    }

    public static double pressure_Pa(double flow_m3s, double diameter_m, double cd, double density_kgM3) {
        double jet_ms = flow_m3s / (cd * Math.PI / 4 * diameter_m * diameter_m);
        return density_kgM3 * jet_ms * jet_ms / 2;
    }

    /** Coefficient that a catch shows. */
    public static double cd(double flow_m3s, double diameter_m, double pressure_Pa, double density_kgM3) {
        return flow_m3s / (Math.PI / 4 * diameter_m * diameter_m * jet_ms(pressure_Pa, density_kgM3));
    }

    /** Mean coefficient of several catches through plates of one set. */
    public static double fitCd(double[] flows_m3s, double diameter_m, double pressure_Pa, double density_kgM3) {
        double sum = 0;
        for (double flow_m3s : flows_m3s) {
            sum += cd(flow_m3s, diameter_m, pressure_Pa, density_kgM3);
        }
        return sum / flows_m3s.length;
    }

    /** Flow of water at 40 psi through the hole, so that it can stand beside nozzle sizes. */
    public static double rated_m3s(double diameter_m, double cd) {
        return flow_m3s(diameter_m, cd, FlowMath.RATED_PA, FlowMath.WATER_KGM3);
    }

    /** Reynolds number of the jet in the hole; the equation holds above 10,000. */
    public static double reynolds(double flow_m3s, double diameter_m, double density_kgM3, double viscosity_PaS) {
        return 4 * flow_m3s * density_kgM3 / (Math.PI * diameter_m * viscosity_PaS);
    }

    private static double jet_ms(double pressure_Pa, double density_kgM3) {
        return Math.sqrt(2 * pressure_Pa / density_kgM3);
    }
}
