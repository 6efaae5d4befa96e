// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.rig.FlowPart.PRESSURE;
import static org.earleaf.rig.FlowPart.SPEED;

import java.util.Optional;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.units.Said;

/** Why a rig, or an outlet on it, does not serve a pass. */
public sealed interface SetupReason {
    Said said();

    /** The rig is not built for it. */
    record NoSuchPlacement(String rig, Placement placement) implements SetupReason {
        @Override
        public Said said() {
            return Said.of("setup.no-such-placement", "rig", rig, "placement", placement);
        }
    }

    /** The crop does not pass under it. */
    record TooTall(Said said) implements SetupReason {}

    /** A pass that is never set here. */
    record NotSetHere(String rig, Because because) implements SetupReason {
        /** What keeps it from being set. */
        public enum Because {
            AMMONIA,
            BY_AIR,
            SPLIT,
            STREAMS,
            TENDER
        }

        @Override
        public Said said() {
            return Said.of("setup.not-set-here", "rig", rig, "because", because);
        }
    }

    /** Speed asked or possible lies outside. */
    record SpeedOut(String rig, double speed_ms, double low_ms, double high_ms, Placement placement)
            implements SetupReason {
        @Override
        public Said said() {
            if (low_ms > high_ms) {
                return Said.of("setup.no-speed", "rig", rig, "placement", placement);
            }
            return Said.of(
                    "setup.speed-out",
                    "rig",
                    rig,
                    "speed",
                    SPEED.measured(speed_ms),
                    "low",
                    SPEED.measured(low_ms),
                    "high",
                    SPEED.measured(high_ms),
                    "placement",
                    placement);
        }
    }

    /** An outlet needs a pressure that is not to be had. */
    record PressureOut(Said outlet, double speed_ms, double needs_Pa, double low_Pa, double high_Pa)
            implements SetupReason {
        @Override
        public Said said() {
            return Said.of(
                    "setup.pressure-out",
                    "outlet",
                    outlet,
                    "needs",
                    PRESSURE.measured(needs_Pa),
                    "speed",
                    SPEED.measured(speed_ms),
                    "low",
                    PRESSURE.measured(low_Pa),
                    "high",
                    PRESSURE.measured(high_Pa));
        }
    }

    /** An outlet whose droplets are finer or coarser than wanted, or not known, at the pressure that it needs. */
    record DropletsOut(
            Said outlet,
            double speed_ms,
            double needs_Pa,
            Optional<DropletClass> is,
            DropletClass finest,
            DropletClass coarsest)
            implements SetupReason {
        @Override
        public Said said() {
            return Said.of(
                    "setup.droplets-out",
                    "outlet",
                    outlet,
                    "needs",
                    PRESSURE.measured(needs_Pa),
                    "speed",
                    SPEED.measured(speed_ms),
                    "is",
                    is.map(c -> Said.of("setup.droplets", "class", c.name()))
                            .orElseGet(() -> Said.of("setup.droplets-unknown")),
                    "wanted",
                    finest == coarsest
                            ? Said.text(finest.name())
                            : Said.of("setup.range", "first", finest.name(), "last", coarsest.name()));
        }
    }

    /** The rate lies outside what is accepted. */
    record RateOut(double rate_m3m2) implements SetupReason {
        @Override
        public Said said() {
            return Said.of(
                    "setup.rate-out",
                    "rate",
                    FlowPart.RATE.measured(rate_m3m2),
                    "low",
                    FlowPart.RATE.measured(FlowPart.RATE.low()),
                    "high",
                    FlowPart.RATE.measured(FlowPart.RATE.high()));
        }
    }
}
