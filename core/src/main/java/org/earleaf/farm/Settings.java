// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.EnumMap;
import java.util.Map;

/** The farm's own values of its settings; what is not among them is as usual. */
public record Settings(Map<Setting, Double> own) {
    public static final Settings USUAL = new Settings(Map.of());

    public Settings {
        own.forEach((setting, value) -> setting.range().checked(value, setting));
        own = Map.copyOf(own);
    }

    public double of(Setting setting) {
        return own.getOrDefault(setting, setting.usual());
    }

    public boolean says(Setting setting) {
        return of(setting) > 0;
    }

    public Settings with(Setting setting, double value) {
        Map<Setting, Double> changed = new EnumMap<>(Setting.class);
        changed.putAll(own);
        changed.put(setting, value);
        return new Settings(changed);
    }
}
