// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Set;

/** Fungicides by their modes of action, as far as trials tell them apart. */
public enum FungicideKind {
    /** One strobilurin. */
    QOI("QoI"),
    /** A triazole and a strobilurin. */
    DMI_QOI("DMI+QoI"),
    /** Anything else: no figure of its own. */
    OTHER("other");

    private final String word;

    FungicideKind(String word) {
        this.word = word;
    }

    /** By the FRAC numbers on the label: 11 is a QoI, 3 a DMI; any other set has no figure of its own. */
    public static FungicideKind ofGroups(Set<String> groups) {
        if (groups.equals(Set.of("11"))) {
            return QOI;
        }
        return groups.equals(Set.of("3", "11")) ? DMI_QOI : OTHER;
    }

    public String word() {
        return word;
    }
}
