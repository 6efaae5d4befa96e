// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.Arrays;

/** A value for every {@link Parameter}; immutable. */
public final class ParameterSet {
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
        double[] copy = values.clone();
        copy[p.ordinal()] = p.range().checked(value, p);
        return new ParameterSet(copy);
    }

    /** The same set with one value scaled or shifted, kept inside its range. */
    public ParameterSet clamped(Parameter p, double value) {
        return with(p, Math.max(p.low(), Math.min(p.high(), value)));
    }
}
