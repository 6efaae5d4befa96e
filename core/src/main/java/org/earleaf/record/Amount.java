// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;
import org.earleaf.units.Quantity;

/**
 * A number with its unit, kept digit for digit as entered: what is filed must be what was written.
 *
 * @param number as entered, with its trailing zeros
 * @param unit as entered
 */
public record Amount(BigDecimal number, String unit) {
    private static final Pattern DIGITS = Pattern.compile("-?(?:\\d{1,15}(?:\\.\\d{0,9})?|\\.\\d{1,9})");

    /** Reads "812 gal"; {@code where} names the option or cell for the message. */
    public static Amount parse(String text, String where) {
        String[] parts = Quantity.split(text, where).orElseThrow(() -> unreadable(text, where));
        String number = NumberText.plain(parts[0], where);
        if (!DIGITS.matcher(number).matches()) {
            throw unreadable(text, where);
        }
        return new Amount(new BigDecimal(number), parts[1]);
    }

    private static EarleafException unreadable(String text, String where) {
        return EarleafException.coded(
                "quantity.unreadable",
                where,
                text,
                "units",
                Dimension.VOLUME.words() + ", " + Dimension.MASS.words() + ", " + Dimension.AREA.words());
    }

    public String text() {
        return number.toPlainString() + " " + unit;
    }

    /** The amount in the inside unit of the dimension; refused when the unit is of another kind. */
    public double inside(Dimension dimension, String where) {
        return dimension
                .findInside(number.doubleValue(), unit)
                .orElseThrow(() -> EarleafException.coded("unit.unknown", where, unit, "units", dimension.words()));
    }
}
