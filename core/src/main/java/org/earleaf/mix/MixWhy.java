// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

/** Why something goes in the tank where it does. */
public enum MixWhy {
    BEFORE_FOAM,
    KEEPS_APART,
    CONDITIONS_WATER,
    PLAIN_WATER,
    WETS_BEFORE_OILS,
    DISSOLVES_BEFORE_OILS,
    SUSPENSION,
    CAPSULES,
    SALTS,
    OILS,
    EMULSIONS,
    SURFACTANT,
    OIL_COATS,
    UPSETS,
    POLYMER,
    NEEDS_CARRIER,
    WETTED_IN_WATER,
    SOLUTION_CARRIES,
    ALONE,
    ROOM,
    NEVER
}
