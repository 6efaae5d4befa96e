// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import org.earleaf.units.Figure;

/** What the liquid leaves through. */
public sealed interface Outlet {
    /** Flow of water at 40 psi [m3/s]. */
    double rated_m3s();

    /** As people say it. */
    String text();

    /** A nozzle of a size of the standard. */
    record Nozzle(NozzleSize size) implements Outlet {
        @Override
        public double rated_m3s() {
            return size.rated_m3s();
        }

        @Override
        public String text() {
            return size.toString();
        }
    }

    /** A nozzle whose droplet classes were entered. */
    record Classed(NozzleModel model) implements Outlet {
        @Override
        public double rated_m3s() {
            return model.size().rated_m3s();
        }

        @Override
        public String text() {
            return model.name() + ", " + model.size();
        }
    }

    /** A plate with a hole, for drop hoses and coulters. */
    record Plate(double diameter_m, double cd) implements Outlet {
        @Override
        public double rated_m3s() {
            return OrificeMath.rated_m3s(diameter_m, cd);
        }

        @Override
        public String text() {
            return "plate with a hole of " + Figure.text(diameter_m / 0.0254, 3) + " in ("
                    + Figure.text(diameter_m * 1000, 3) + " mm)";
        }
    }
}
