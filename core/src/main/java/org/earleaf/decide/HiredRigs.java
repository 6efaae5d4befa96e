// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;

/** Rigs that options may name although the farm does not list them. */
public final class HiredRigs {
    private HiredRigs() {}

    /** By the farm's settings; width, tank and speed are not known. */
    public static List<Rig> of(Farm farm) {
        return Rescue.rigs(farm);
    }
}
