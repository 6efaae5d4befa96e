// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;

/**
 * A number with its unit, kept digit for digit as entered: what is filed must be what was written.
 *
 * @param number as entered, with its trailing zeros
 * @param unit as entered
 */
public record Amount(BigDecimal number, String unit) {
    private static final Pattern NUMBER_UNIT =
            Pattern.compile("\\s*(-?(?:\\d{1,15}(?:\\.\\d{0,9})?|\\.\\d{1,9}))\\s*(\\S.*?)\\s*");

    /** Reads "812 gal"; {@code where} names the option or cell for the message. */
    public static Amount parse(String text, String where) {
        Matcher m = NUMBER_UNIT.matcher(text);
        if (!m.matches()) {
            throw EarleafException.of(
                    where, "\"" + text + "\"", "a number with its unit, as in 812 gal", "Write both.");
        }
        return new Amount(new BigDecimal(m.group(1)), m.group(2));
    }

    public String text() {
        return number.toPlainString() + " " + unit;
    }

    /** The amount in the inside unit of the dimension; refused when the unit is of another kind. */
    public double inside(Dimension dimension, String where) {
        return dimension
                .findInside(number.doubleValue(), unit)
                .orElseThrow(() -> EarleafException.of(
                        where,
                        "the unit \"" + unit + "\"",
                        "one of " + dimension.words(),
                        "Write the number with one of these units."));
    }
}
