// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.EnumMap;
import java.util.Map;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** The farm's own values for what is otherwise assumed. */
public record ProtectionSettings(Map<ProtectionAssumption, Double> own) {
    private static final int DIGITS = 6;

    public static final ProtectionSettings USUAL = new ProtectionSettings(Map.of());

    public ProtectionSettings {
        own.forEach((assumption, value) -> {
            if (!(value >= assumption.low() && value <= assumption.high())) {
                throw new EarleafException(Problem.of(
                        "assumption.out-of-range",
                        Said.text(assumption.name()),
                        Said.text(value + " " + assumption.unit()),
                        "low",
                        Figure.text(assumption.low(), DIGITS),
                        "high",
                        Figure.text(assumption.high(), DIGITS),
                        "unit",
                        assumption.unit(),
                        "meaning",
                        assumption,
                        "usual",
                        Figure.text(assumption.usual(), DIGITS)));
            }
        });
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
