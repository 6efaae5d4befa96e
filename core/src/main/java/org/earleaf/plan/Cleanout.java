// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.Map;

/**
 * Time to clean the tank between two product classes on one day. A shift begins with a clean tank: it is rinsed at the
 * end of the day (common practice, no source).
 *
 * @param from_to_s by class and next class; what is not named takes none
 */
public record Cleanout(Map<String, Map<String, Double>> from_to_s) {
    public static final Cleanout NONE = new Cleanout(Map.of());

    public Cleanout {
        from_to_s = Map.copyOf(from_to_s);
    }

    public double between_s(String from, String to) {
        return from.equals(to) ? 0 : from_to_s.getOrDefault(from, Map.of()).getOrDefault(to, 0.0);
    }
}
