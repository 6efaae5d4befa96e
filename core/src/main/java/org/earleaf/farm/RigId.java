// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import org.earleaf.units.Called;

/** What a rig is known by for good, whatever it is called: its first name, or what a folder says. */
public record RigId(String text) {
    /** One that was never called otherwise. */
    public static Called<RigId> called(String name) {
        return new Called<>(new RigId(name), name);
    }
}
