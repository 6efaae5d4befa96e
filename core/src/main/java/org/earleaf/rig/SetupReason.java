// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.rig.FlowPart.PRESSURE;
import static org.earleaf.rig.FlowPart.SPEED;

import java.util.Optional;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.units.Figure;

/** Why a rig, or an outlet on it, does not serve a pass. */
public sealed interface SetupReason {
    String sentence();

    /** The rig is not built for it. */
    record NoSuchPlacement(String rig, Placement placement) implements SetupReason {
        @Override
        public String sentence() {
            return rig + " cannot put it " + placement.word() + ".";
        }
    }

    /** The crop does not pass under it. */
    record TooTall(String sentence) implements SetupReason {}

    /** A pass that is never set here: by air, ammonia, tender. */
    record NotSetHere(String rig, String because) implements SetupReason {
        @Override
        public String sentence() {
            return rig + ": " + because;
        }
    }

    /** Speed asked or possible lies outside. */
    record SpeedOut(String rig, double speed_ms, double low_ms, double high_ms, Placement placement)
            implements SetupReason {
        @Override
        public String sentence() {
            if (low_ms > high_ms) {
                return rig + " drives no speed that suits " + placement.word() + ".";
            }
            return rig + ": " + SPEED.text(speed_ms) + " is outside " + SPEED.text(low_ms) + " to "
                    + SPEED.text(high_ms) + " for " + placement.word() + ".";
        }
    }

    /** An outlet needs a pressure that is not to be had. */
    record PressureOut(String outlet, double speed_ms, double needs_Pa, double low_Pa, double high_Pa)
            implements SetupReason {
        @Override
        public String sentence() {
            return outlet + " needs " + PRESSURE.text(needs_Pa) + " at " + SPEED.text(speed_ms) + "; "
                    + PRESSURE.text(low_Pa) + " to " + PRESSURE.text(high_Pa) + " is possible.";
        }
    }

    /** An outlet whose droplets are finer or coarser than wanted, or not known, at the pressure that it needs. */
    record DropletsOut(
            String outlet,
            double speed_ms,
            double needs_Pa,
            Optional<DropletClass> is,
            DropletClass finest,
            DropletClass coarsest)
            implements SetupReason {
        @Override
        public String sentence() {
            String wanted = finest == coarsest ? finest.name() : finest + " to " + coarsest;
            return outlet + " needs " + PRESSURE.text(needs_Pa) + " at " + SPEED.text(speed_ms) + ": "
                    + is.map(c -> "droplets " + c).orElse("its droplets are not entered there") + "; wanted " + wanted
                    + ".";
        }
    }

    /** The rate lies outside what is accepted. */
    record RateOut(double rate_m3m2) implements SetupReason {
        @Override
        public String sentence() {
            return FlowPart.RATE.text(rate_m3m2) + " is outside " + Figure.text(1, 1) + " to "
                    + FlowPart.RATE.text(FlowPart.RATE.high()) + ".";
        }
    }
}
