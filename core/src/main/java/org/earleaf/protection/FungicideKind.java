// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

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

    public String word() {
        return word;
    }
}
