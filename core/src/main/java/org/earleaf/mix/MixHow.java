// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

/** What the hand does with one thing that goes in the tank, or why it never goes in. */
public enum MixHow {
    START,
    START_AGITATED,
    DISSOLVE,
    BAGS,
    SLURRY_SLOWLY,
    THROUGH_SCREEN,
    DROP_IN_DISPERSE,
    DISSOLVE_SLOWLY,
    DROP_IN_DISSOLVE,
    SHAKE,
    AGITATE,
    SHAKE_SLOWLY,
    SLOWLY,
    SLOWLY_FOAM,
    SLOWLY_AGITATE,
    SLOWLY_GENTLY,
    /** Dry products into a nitrogen solution. */
    SLURRY_TWICE,
    /** Emulsions into a nitrogen solution. */
    PREMIX_TWICE,
    KEEP_PART,
    CLEAN_TANK,
    CLEAN_TANK_METER,
    TO_THE_MARK,
    // What never goes in a spray tank:
    UNDILUTED,
    SPREADER,
    BAIT,
    BAIT_CONCENTRATE,
    SEED
}
