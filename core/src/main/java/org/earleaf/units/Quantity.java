// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit exactly as it was entered, and its value inside Earleaf.
 *
 * @param entered the number as entered
 * @param unit the unit as entered
 * @param inside the value in {@link Dimension#inside()}
 */
public record Quantity(double entered, String unit, double inside) {
    private static final Pattern NUMBER_UNIT =
            Pattern.compile("\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(.*?)\\s*");

    /** Reads "15 gal/ac"; {@code where} names the option or cell for the message. */
    public static Quantity parse(String text, Dimension dimension, String where) {
        Matcher m = NUMBER_UNIT.matcher(text);
        if (!m.matches() || m.group(2).isEmpty()) {
            throw EarleafException.of(
                    where, "\"" + text + "\"", "a number with its unit (" + dimension.words() + ")", "Write both.");
        }
        return of(Double.parseDouble(m.group(1)), m.group(2), dimension, where);
    }

    public static Quantity of(double value, String unit, Dimension dimension, String where) {
        double inside = dimension
                .findInside(value, unit)
                .orElseThrow(() -> EarleafException.of(
                        where,
                        "the unit \"" + unit + "\"",
                        "one of " + dimension.words(),
                        "Write the number with one of these units."));
        return new Quantity(value, unit, inside);
    }
}
