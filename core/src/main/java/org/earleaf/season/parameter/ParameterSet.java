// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.Arrays;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** A value for every {@link Parameter}; immutable. */
public final class ParameterSet {
    private static final int DIGITS = 6;

    private static final ParameterSet USUAL = new ParameterSet(
            Arrays.stream(Parameter.values()).mapToDouble(Parameter::usual).toArray());

    private final double[] values;

    private ParameterSet(double[] values) {
        this.values = values;
    }

    public static ParameterSet usual() {
        return USUAL;
    }

    public double of(Parameter p) {
        return values[p.ordinal()];
    }

    /** The same set with one value changed; refused outside the parameter's range. */
    public ParameterSet with(Parameter p, double value) {
        if (!(value >= p.low() && value <= p.high())) {
            throw new EarleafException(Problem.of(
                    "parameter.out-of-range",
                    Said.of("where.parameter", "name", p.name()),
                    Said.text(value + " " + p.unit()),
                    "low",
                    Figure.text(p.low(), DIGITS),
                    "high",
                    Figure.text(p.high(), DIGITS),
                    "unit",
                    p.unit()));
        }
        double[] copy = values.clone();
        copy[p.ordinal()] = value;
        return new ParameterSet(copy);
    }

    /** The same set with one value scaled or shifted, kept inside its range. */
    public ParameterSet clamped(Parameter p, double value) {
        return with(p, Math.max(p.low(), Math.min(p.high(), value)));
    }
}
