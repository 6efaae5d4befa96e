// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people write them: no exponent, no trailing zeros, the same in every locale. */
public final class Figure {
    private static final String UNKNOWN = "?";

    private Figure() {}

    /** A number with so many significant digits, whole digits never cut: 1234.5 with three is 1235. */
    public static String text(double value, int significant) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return UNKNOWN;
        }
        BigDecimal exact = new BigDecimal(value);
        int whole = Math.max(0, exact.precision() - exact.scale());
        BigDecimal digits = exact.round(new MathContext(Math.max(significant, whole), RoundingMode.HALF_UP));
        return plain(digits);
    }

    /** A number with at most so many digits behind the point. */
    public static String fixed(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return UNKNOWN;
        }
        return plain(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    private static String plain(BigDecimal digits) {
        return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
    }
}
