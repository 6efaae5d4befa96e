// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.Optional;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The six parts of a setting, with the range outside of which it is refused and the units in which people read it.
 * Ranges: common practice, no source.
 */
public enum FlowPart {
    RATE(Dimension.VOLUME_RATE, "gal/ac", "L/ha", 1, 150),
    SPEED(Dimension.SPEED, "mph", "km/h", 1, 22),
    WIDTH(Dimension.LENGTH, "in", "cm", 4, 80),
    FLOW(Dimension.FLOW, "gal/min", "L/min", 0, Double.POSITIVE_INFINITY),
    PRESSURE(Dimension.PRESSURE, "psi", "kPa", 5, 120),
    SIZE(Dimension.FLOW, "gal/min", "L/min", 0, Double.POSITIVE_INFINITY);

    /** Within a tenth of a limit a value is accepted with a remark. */
    private static final double NEAR = 0.1;

    private static final double EQUAL = 1e-9;
    private static final double LHA_PER_M3M2 = 1e7;

    private final Dimension dimension;
    private final String usUnit;
    private final String metricUnit;
    private final double low;
    private final double high;

    FlowPart(Dimension dimension, String usUnit, String metricUnit, double low, double high) {
        this.dimension = dimension;
        this.usUnit = usUnit;
        this.metricUnit = metricUnit;
        this.low = dimension.findInside(low, usUnit).orElseThrow();
        this.high = dimension.findInside(high, usUnit).orElseThrow();
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Lowest value accepted, in the unit used inside. */
    public double low() {
        return low;
    }

    /** Highest value accepted, in the unit used inside. */
    public double high() {
        return high;
    }

    /** The value in the unit in which people read it. */
    public double outside(double inside, boolean metric) {
        return dimension.outside(inside, unit(metric));
    }

    /** "15 gal/ac" or "140 L/ha". */
    public String text(double inside, boolean metric) {
        return Figure.text(outside(inside, metric), 4) + " " + unit(metric);
    }

    /** The unit in which people read it. */
    public String unit(boolean metric) {
        return metric ? metricUnit : usUnit;
    }

    /** The value as messages tell it. */
    public Measured measured(double inside) {
        return switch (this) {
            case RATE -> Measure.VOLUME_RATE.of(inside * LHA_PER_M3M2);
            case SPEED -> Measure.SPEED.of(inside);
            case WIDTH -> Measure.SPAN.of(inside);
            case FLOW, SIZE -> Measure.FLOW.of(inside);
            case PRESSURE -> Measure.PRESSURE.of(inside);
        };
    }

    boolean accepts(double inside) {
        boolean within = inside >= low * (1 - EQUAL) && inside <= high * (1 + EQUAL);
        return within && inside > 0 && Double.isFinite(inside);
    }

    Said found(double inside) {
        return Said.of("found.quantity", "quantity", measured(inside));
    }

    /** What is wrong with a value, if anything. */
    Optional<Problem> findProblem(double inside) {
        if (accepts(inside)) {
            return Optional.empty();
        }
        Said place = Said.of("where.flow-part", "part", this);
        return Optional.of(
                Double.isFinite(high)
                        ? Problem.of(
                                "flow.out-of-range", place, found(inside), "low", measured(low), "high", measured(high))
                        : Problem.of("flow.not-above-zero", place, found(inside)));
    }

    /** Refuses a value out of range. */
    public void require(double inside) {
        findProblem(inside).ifPresent(problem -> {
            throw new EarleafException(problem);
        });
    }

    /** A remark when a value is accepted but close to a limit. */
    Optional<Said> findRemark(double inside) {
        if (!Double.isFinite(high)) {
            return Optional.empty();
        }
        if (inside < low * (1 + NEAR)) {
            return Optional.of(
                    Said.of("flow.near-lowest", "part", this, "value", measured(inside), "limit", measured(low)));
        }
        if (inside > high * (1 - NEAR)) {
            return Optional.of(
                    Said.of("flow.near-highest", "part", this, "value", measured(inside), "limit", measured(high)));
        }
        return Optional.empty();
    }
}
