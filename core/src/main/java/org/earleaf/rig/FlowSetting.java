// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.Said;

/**
 * A setting with all its parts.
 *
 * @param pressure_Pa NaN when no size (or pressure) was given to tell it from
 * @param rated_m3s likewise NaN
 * @param remarks values close to a limit
 */
public record FlowSetting(
        double rate_m3m2,
        double speed_ms,
        double width_m,
        double flow_m3s,
        double pressure_Pa,
        double rated_m3s,
        double densityFactor,
        List<Said> remarks) {
    public FlowSetting {
        remarks = List.copyOf(remarks);
    }

    public boolean hasPressure() {
        return !Double.isNaN(pressure_Pa);
    }

    /** Flow of water that stands in the tables for this flow of the liquid. */
    public double waterFlow_m3s() {
        return flow_m3s * densityFactor;
    }

    /** Rate of water that stands in the tables for this rate of the liquid. */
    public double waterRate_m3m2() {
        return rate_m3m2 * densityFactor;
    }

    /** A size of the standard that would serve, with the pressure it then needs. */
    public record Serves(NozzleSize size, double pressure_Pa) {}

    /** Sizes of the standard that pass this flow at a pressure within the range accepted, smallest first. */
    public List<Serves> sizesThatServe() {
        List<Serves> serving = new ArrayList<>();
        for (NozzleSize size : NozzleSize.listAll()) {
            double at_Pa = FlowMath.pressure_Pa(flow_m3s, size.rated_m3s(), densityFactor);
            if (at_Pa >= FlowPart.PRESSURE.low() && at_Pa <= FlowPart.PRESSURE.high()) {
                serving.add(new Serves(size, at_Pa));
            }
        }
        return serving;
    }
}
