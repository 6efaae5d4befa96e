// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.Optional;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;

/**
 * The six parts of a setting, with the range outside of which it is refused and the units in which people read it.
 * Ranges: common practice, no source.
 */
public enum FlowPart {
    RATE("rate", Dimension.VOLUME_RATE, "gal/ac", "L/ha", 1, 150),
    SPEED("speed", Dimension.SPEED, "mph", "km/h", 1, 22),
    WIDTH("width", Dimension.LENGTH, "in", "cm", 4, 80),
    FLOW("flow", Dimension.FLOW, "gal/min", "L/min", 0, Double.POSITIVE_INFINITY),
    PRESSURE("pressure", Dimension.PRESSURE, "psi", "kPa", 5, 120),
    SIZE("size", Dimension.FLOW, "gal/min at 40 psi", "L/min at 40 psi", 0, Double.POSITIVE_INFINITY);

    /** Within a tenth of a limit a value is accepted with a remark. */
    private static final double NEAR = 0.1;

    private static final double EQUAL = 1e-9;

    private final String word;
    private final Dimension dimension;
    private final String usUnit;
    private final String metricUnit;
    private final double low;
    private final double high;

    FlowPart(String word, Dimension dimension, String usUnit, String metricUnit, double low, double high) {
        this.word = word;
        this.dimension = dimension;
        this.usUnit = usUnit;
        this.metricUnit = metricUnit;
        this.low = dimension.findInside(low, unitWord(usUnit)).orElseThrow();
        this.high = dimension.findInside(high, unitWord(usUnit)).orElseThrow();
    }

    public String word() {
        return word;
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
        return dimension.outside(inside, unitWord(metric ? metricUnit : usUnit));
    }

    /** "15 gal/ac" or "140 L/ha". */
    public String text(double inside, boolean metric) {
        return Figure.text(outside(inside, metric), 4) + " " + (metric ? metricUnit : usUnit);
    }

    /** "15 gal/ac (140 L/ha)". */
    public String text(double inside) {
        return us(inside) + " " + usUnit + " (" + Figure.text(dimension.outside(inside, unitWord(metricUnit)), 3) + " "
                + metricUnit + ")";
    }

    /** What is wrong with a value, if anything. */
    Optional<Problem> findProblem(double inside, String how, String todo) {
        boolean within = inside >= low * (1 - EQUAL) && inside <= high * (1 + EQUAL);
        if (within && inside > 0 && Double.isFinite(inside)) {
            return Optional.empty();
        }
        String expected = Double.isFinite(high) ? us(low) + " to " + text(high) : "more than 0";
        return Optional.of(new Problem(word + how, text(inside), expected, todo));
    }

    /** Refuses a value out of range. */
    public void require(double inside, String how) {
        findProblem(inside, how, "Mend the value.").ifPresent(problem -> {
            throw new EarleafException(problem);
        });
    }

    /** A remark when a value is accepted but close to a limit. */
    Optional<Flag> findRemark(double inside) {
        if (!Double.isFinite(high)) {
            return Optional.empty();
        }
        if (inside < low * (1 + NEAR)) {
            return Optional.of(new Flag(word, text(inside) + " is close to the lowest accepted, " + text(low)));
        }
        if (inside > high * (1 - NEAR)) {
            return Optional.of(new Flag(word, text(inside) + " is close to the highest accepted, " + text(high)));
        }
        return Optional.empty();
    }

    private String us(double inside) {
        return Figure.text(dimension.outside(inside, unitWord(usUnit)), 3);
    }

    private static String unitWord(String unit) {
        return unit.replace(" at 40 psi", "");
    }
}
