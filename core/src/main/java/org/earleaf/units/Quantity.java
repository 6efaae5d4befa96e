// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.Optional;
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
            Pattern.compile("\\s*([-+\u2212]?[0-9.,]+(?:[eE][-+]?[0-9]+)?)\\s*(.*?)\\s*");
    /** A number and its unit are shorter. */
    private static final int LONGEST = 100;

    /** Reads "15 gal/ac"; {@code where} names the option or cell for the message. */
    public static Quantity parse(String text, Dimension dimension, String where) {
        String[] parts = split(text, where)
                .orElseThrow(
                        () -> EarleafException.coded("quantity.unreadable", where, text, "units", dimension.words()));
        return of(NumberText.read(parts[0], where), parts[1], dimension, where);
    }

    /** The number and the unit behind it, neither of them read; empty where one of them is missing. */
    public static Optional<String[]> split(String text, String where) {
        if (text.length() > LONGEST) {
            throw EarleafException.coded(
                    "number.too-long",
                    where,
                    text.substring(0, NumberText.LONGEST) + "...",
                    "most",
                    NumberText.LONGEST);
        }
        Matcher m = NUMBER_UNIT.matcher(text);
        boolean both = m.matches() && !m.group(2).isEmpty();
        return both ? Optional.of(new String[] {m.group(1), m.group(2)}) : Optional.empty();
    }

    public static Quantity of(double value, String unit, Dimension dimension, String where) {
        double inside = dimension
                .findInside(value, unit)
                .orElseThrow(() -> EarleafException.coded("unit.unknown", where, unit, "units", dimension.words()));
        return new Quantity(value, unit, inside);
    }
}
