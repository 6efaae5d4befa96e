// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.EnumMap;
import java.util.Map;

/** The farm's own values for what is otherwise assumed. */
public record ProtectionSettings(Map<ProtectionAssumption, Double> own) {
    public static final ProtectionSettings USUAL = new ProtectionSettings(Map.of());

    public ProtectionSettings {
        own.forEach((assumption, value) -> assumption.range().checked(value, assumption));
        own = Map.copyOf(own);
    }

    public double of(ProtectionAssumption assumption) {
        return own.getOrDefault(assumption, assumption.usual());
    }

    public ProtectionSettings with(ProtectionAssumption assumption, double value) {
        Map<ProtectionAssumption, Double> changed = new EnumMap<>(ProtectionAssumption.class);
        changed.putAll(own);
        changed.put(assumption, value);
        return new ProtectionSettings(changed);
    }
}
