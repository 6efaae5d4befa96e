// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Something to tell a person, before it is put into words: a code of the catalogue and the values it speaks of. Facts
 * carry this in place of sentences; the doors make the sentence by language and units. Nothing is ever read back from
 * a sentence.
 *
 * @param code small letters, digits, dots and dashes, "nitrogen.short-about"
 * @param values by name, in the order given: numbers, dates and times, constants of enums, quantities, text exactly as
 *     a person entered it, further {@link Said}, and lists of these
 */
public record Said(String code, Map<String, Object> values) {
    private static final String ENTERED = "as-entered";
    private static final Pattern CODE = Pattern.compile("[a-z0-9]+([.-][a-z0-9]+)*");
    private static final Pattern NAME = Pattern.compile("[a-z][a-zA-Z0-9]*");

    public Said {
        if (!CODE.matcher(code).matches()) {
            throw new IllegalArgumentException("a code is of small letters, digits, dots and dashes, not " + code);
        }
        Map<String, Object> copy = new LinkedHashMap<>();
        values.forEach((name, value) -> copy.put(checked(name), kept(code, name, value)));
        values = Collections.unmodifiableMap(copy);
    }

    /** {@code Said.of("nitrogen.short-about", "day", day, "first", first)}. */
    public static Said of(String code, Object... namesAndValues) {
        return new Said(code, pairs(namesAndValues));
    }

    /** Names and codes as a person entered them; never prose of ours. */
    public static Said text(String entered) {
        return of(ENTERED, "text", entered);
    }

    static Map<String, Object> pairs(Object... namesAndValues) {
        if (namesAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("names and values must come in pairs");
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (int k = 0; k < namesAndValues.length; k += 2) {
            if (values.put(String.valueOf(namesAndValues[k]), namesAndValues[k + 1]) != null) {
                throw new IllegalArgumentException("the value " + namesAndValues[k] + " is given twice");
            }
        }
        return values;
    }

    /** Whether this is text as entered, without words of ours. */
    public boolean isEntered() {
        return code.equals(ENTERED);
    }

    private static String checked(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("a value is named by letters and digits, not " + name);
        }
        return name;
    }

    private static Object kept(String code, String name, Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(item -> kept(code, name, item)).toList();
        }
        if (value instanceof Number
                || value instanceof String
                || value instanceof Enum<?>
                || value instanceof Measured
                || value instanceof Quantity
                || value instanceof Said
                || value instanceof LocalDate
                || value instanceof LocalDateTime
                || value instanceof LocalTime) {
            return value;
        }
        throw new IllegalArgumentException(code + " cannot tell the value " + name + ": "
                + (value == null ? "null" : value.getClass().getName()));
    }

    /** For logs and tests, not for people: the text as entered, or the code with its values. */
    @Override
    public String toString() {
        return isEntered() ? String.valueOf(values.get("text")) : values.isEmpty() ? code : code + values;
    }
}
