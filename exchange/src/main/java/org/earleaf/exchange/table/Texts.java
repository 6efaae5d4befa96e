// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for messages. */
public final class Texts {
    private static final MathContext FIVE_DIGITS = new MathContext(5);

    private Texts() {}

    /** Plain digits, five of them count, no trailing zeros. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "not known" : value > 0 ? "any amount" : "less than any amount";
        }
        BigDecimal rounded = new BigDecimal(value).round(FIVE_DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
