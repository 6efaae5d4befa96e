// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.regex.Pattern;

/**
 * A number as people write it, read alike at every door. A comma that can only be a decimal comma is one ("18,5",
 * "0,125", "1.234,5"); one that can only part groups of three is left out ("1,234.5", "1,234,567"); one that could be
 * either ("1,234") is asked about, never guessed. Length and exponent are looked at before anything is computed.
 */
public final class NumberText {
    /** No figure of a farm has more signs. */
    public static final int LONGEST = 40;

    /** Powers of ten beyond these are no figure of a farm. */
    private static final int MOST_POWER = 30;

    private static final Pattern SIGNS = Pattern.compile("[-+]?[0-9.,]+(?:[eE][-+]?[0-9]+)?");
    private static final Pattern PLAIN = Pattern.compile("(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?:[0-9]+|[0-9]{1,3}(?:\\.[0-9]{3})+|),[0-9]+");
    private static final Pattern GROUPED = Pattern.compile("[1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\\.[0-9]*)?");
    private static final Pattern UNCLEAR = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

    private NumberText() {}

    /** The number; refused where the text is none, or could be two. */
    public static double read(String text, String where) {
        return Double.parseDouble(plain(text, where));
    }

    /** The same number with a decimal point and without groups, every digit kept; safe for any reader of numbers. */
    public static String plain(String text, String where) {
        String said = text.strip().replace('\u2212', '-');
        if (said.length() > LONGEST) {
            throw EarleafException.coded("number.too-long", where, shortened(said), "most", LONGEST);
        }
        if (!SIGNS.matcher(said).matches()) {
            throw EarleafException.coded("number.unreadable", where, said);
        }
        int power = Math.max(said.indexOf('e'), said.indexOf('E'));
        String digits = said.substring(said.matches("[-+].*") ? 1 : 0, power < 0 ? said.length() : power);
        String sign = said.startsWith("-") ? "-" : "";
        return sign + pointed(digits, said, where) + (power < 0 ? "" : power(said.substring(power + 1), said, where));
    }

    private static String pointed(String digits, String said, String where) {
        if (PLAIN.matcher(digits).matches()) {
            return digits;
        }
        if (UNCLEAR.matcher(digits).matches()) {
            throw EarleafException.coded(
                    "number.comma-unclear",
                    where,
                    said,
                    "whole",
                    digits.replace(",", ""),
                    "decimal",
                    digits.replace(',', '.'));
        }
        if (GROUPED.matcher(digits).matches()) {
            return digits.replace(",", "");
        }
        if (DECIMAL_COMMA.matcher(digits).matches()) {
            return digits.replace(".", "").replace(',', '.');
        }
        throw EarleafException.coded("number.unreadable", where, said);
    }

    private static String power(String exponent, String said, String where) {
        String plain = exponent.replaceFirst("^([-+]?)0+(?=[0-9])", "$1");
        boolean small = plain.length() <= 3 && Math.abs(Integer.parseInt(plain)) <= MOST_POWER;
        if (!small) {
            throw EarleafException.coded("number.too-large", where, said, "most", MOST_POWER);
        }
        return "e" + plain;
    }

    /** Long text cut, so that a message stays readable. */
    private static String shortened(String said) {
        return said.substring(0, LONGEST) + "...";
    }
}
