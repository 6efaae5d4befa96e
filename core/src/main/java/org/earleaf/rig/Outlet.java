// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** What the liquid leaves through. */
public sealed interface Outlet {
    /** Flow of water at 40 psi [m3/s]. */
    double rated_m3s();

    /** What it is. */
    Said said();

    /** A nozzle of a size of the standard. */
    record Nozzle(NozzleSize size) implements Outlet {
        @Override
        public double rated_m3s() {
            return size.rated_m3s();
        }

        @Override
        public Said said() {
            return size.said();
        }
    }

    /** A nozzle whose droplet classes were entered. */
    record Classed(NozzleModel model) implements Outlet {
        @Override
        public double rated_m3s() {
            return model.size().rated_m3s();
        }

        @Override
        public Said said() {
            return Said.of(
                    "outlet.model", "name", model.name(), "size", model.size().said());
        }
    }

    /** A plate with a hole, for drop hoses and coulters. */
    record Plate(double diameter_m, double cd) implements Outlet {
        @Override
        public double rated_m3s() {
            return OrificeMath.rated_m3s(diameter_m, cd);
        }

        @Override
        public Said said() {
            return Said.of("outlet.plate", "hole", Measure.HOLE.of(diameter_m));
        }
    }
}
