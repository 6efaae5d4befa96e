// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

/** The life of a load. Product and label room are held from {@link #RESERVED} on, and given back by a cancelled load. */
public enum LoadState {
    PLANNED,
    RESERVED,
    MIXING,
    MIXED,
    APPLIED,
    CANCELLED;

    /** Whether it holds stock and label room that no other load may take. */
    public boolean holds() {
        return this == RESERVED || this == MIXING || this == MIXED || this == APPLIED;
    }

    /** Whether it can still be changed: nothing is in the tank. */
    public boolean isOpen() {
        return this == PLANNED || this == RESERVED;
    }
}
