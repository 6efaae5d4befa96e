// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Optional;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * What one number of the farm may be, in the unit inside, all bounds inclusive: below {@code least} or above {@code most}
 * it is refused; between those and {@code low} to {@code high} it is possible, but outside what the models hold for:
 * brought into the range and remarked upon. The same for files, commands and pages; all of them stand in {@link Ranges}.
 *
 * @param what names the number in every message, "rig.width"
 * @param dimension empty: a number without a unit of measure
 * @param scale brings the dimension's inside unit to the one of the bounds
 */
public record Allowed(
        String what, Optional<Dimension> dimension, double scale, double least, double low, double high, double most) {
    /** Any number, where something else decides. */
    public static final Allowed ANY = plain("number", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public static final Allowed NOT_NEGATIVE = plain("number", 0, Double.POSITIVE_INFINITY);

    /** Room for the rounding of unit factors, so that a bound written in another unit is still the bound. */
    private static final double ROUNDING = 1e-9;

    private static final int DIGITS = 5;

    /** A number without a unit of measure. */
    public static Allowed plain(String what, double least, double most) {
        return new Allowed(what, Optional.empty(), 1, least, least, most, most);
    }

    /** A quantity, bounds in the dimension's inside unit. */
    public static Allowed of(String what, Dimension dimension, double least, double most) {
        return new Allowed(what, Optional.of(dimension), 1, least, least, most, most);
    }

    /** Bounds in another unit, so many in one of the dimension's. */
    public Allowed times(double factor) {
        return new Allowed(what, dimension, factor, least, low, high, most);
    }

    /** Brought into this range where it is possible at all. */
    public Allowed clamped(double from, double to) {
        return new Allowed(what, dimension, scale, least, from, to, most);
    }

    /** The number of a text with its unit ("90 ft"), in the unit of the bounds; refused where it cannot be. */
    public double read(String text, String where) {
        if (dimension.isEmpty()) {
            return check(NumberText.read(text, where), text, where, "");
        }
        Quantity q = Quantity.parse(text, dimension.get(), where);
        return check(q.inside() * scale, text, where, q.unit());
    }

    /** Likewise, a number with nothing behind it being in the unit given. */
    public double read(String text, String unit, String where) {
        boolean bare = Quantity.split(text, where).isEmpty() && !text.isBlank();
        return read(bare ? text + " " + unit : text, where);
    }

    /** @param unit in which it was entered, for the message; empty: none */
    private double check(double inside, String found, String where, String unit) {
        if (refuses(inside)) {
            throw new EarleafException(refused(where, found, shown(low, unit), shown(high, unit)));
        }
        return inside;
    }

    private String shown(double inside, String unit) {
        double outside = unit.isEmpty() ? inside : dimension.orElseThrow().outside(inside / scale, unit);
        return Figure.text(outside, DIGITS) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** What is told where it is refused; the bounds as text in the unit in which it was entered. */
    public Problem refused(String where, String found, String from, String to) {
        Said place = Said.text(where);
        Said seen = Said.text(found);
        return Double.isInfinite(high)
                ? Problem.of("number.below", place, seen, "what", Said.of(what), "low", from)
                : Problem.of("number.out-of-range", place, seen, "what", Said.of(what), "low", from, "high", to);
    }

    public boolean refuses(double inside) {
        return Double.isNaN(inside) || inside < least - room(least) || inside > most + room(most);
    }

    /** Brought into the range that the models hold for. */
    public double clamp(double inside) {
        if (inside < low) {
            return inside < low - room(low) ? low : inside;
        }
        return inside > high + room(high) ? high : inside;
    }

    private static double room(double bound) {
        return Double.isInfinite(bound) ? 0 : Math.abs(bound) * ROUNDING;
    }
}
