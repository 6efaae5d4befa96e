// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.number.LocalizedNumberFormatter;
import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.number.Precision;
import com.ibm.icu.text.RuleBasedNumberFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers by language: thousands parted, a true minus sign, never "-0". */
final class Numbers {
    private static final int MOST_SPELLED = 12;

    private final Locale locale;

    Numbers(Locale locale) {
        this.locale = locale;
    }

    /** To so many decimals; -2 is to hundreds. The value must be a number. */
    static BigDecimal rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return decimals < 0 ? rounded.setScale(0) : rounded;
    }

    static boolean isKnown(double value) {
        return !Double.isNaN(value) && !Double.isInfinite(value);
    }

    /** The digits of a rounded number, its sign apart. */
    String digits(BigDecimal rounded) {
        LocalizedNumberFormatter form = NumberFormatter.withLocale(locale)
                .precision(Precision.fixedFraction(rounded.scale() < 0 ? 0 : rounded.scale()));
        return form.format(rounded.abs()).toString();
    }

    static String sign(BigDecimal rounded) {
        return rounded.signum() < 0 ? "\u2212" : "";
    }

    String text(BigDecimal rounded) {
        return sign(rounded) + digits(rounded);
    }

    /** A count in a word up to twelve, in digits beyond. */
    String spelled(int count, boolean opening) {
        if (count < 0 || count > MOST_SPELLED) {
            return text(BigDecimal.valueOf(count));
        }
        String word = new RuleBasedNumberFormat(locale, RuleBasedNumberFormat.SPELLOUT).format(count);
        return opening ? UCharacter.toTitleCase(locale, word, null) : word;
    }
}
