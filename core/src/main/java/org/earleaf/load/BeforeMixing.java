// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.EnumSet;
import java.util.Set;

/** What is looked at before anything goes in a tank; common practice, and what labels ask for. */
public enum BeforeMixing {
    LABELS_READ,
    GEAR_ON,
    FIELD_EMPTY,
    AIR_LOOKED_AT,
    TANK_AS_EXPECTED;

    /** What a load asks for: without a product that carries a label only the tank and the gear. */
    public static Set<BeforeMixing> of(TankLoad load) {
        return load.isLabelled() ? EnumSet.allOf(BeforeMixing.class) : EnumSet.of(GEAR_ON, TANK_AS_EXPECTED);
    }
}
