// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Optional;
import java.util.stream.Stream;

/** A rig that a pass may name although no farm lists it. The token stands in files; people are told the word. */
public enum HiredRig {
    HIGH_CLEARANCE("hired high-clearance rig"),
    AIRCRAFT("hired aircraft");

    private final String token;

    HiredRig(String token) {
        this.token = token;
    }

    public String token() {
        return token;
    }

    public static Optional<HiredRig> find(String rig) {
        return Stream.of(values()).filter(h -> h.token.equals(rig)).findFirst();
    }
}
