// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/**
 * The one way commands print JSON: keys in the order given, numbers as numbers, dates ISO 8601, what is missing (empty
 * {@link Optional}, NaN, infinite) as null.
 */
public final class Json {
    /** Nine digits carry every figure we have and hide the noise of binary fractions (0.30000000000000004). */
    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    private Json() {}

    /** An object from keys and values in turn: {@code object("on", date, "fields", list)}. */
    public static Map<String, @Nullable Object> object(@Nullable Object... keysAndValues) {
        if (keysAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("keys and values must come in pairs");
        }
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        for (int k = 0; k < keysAndValues.length; k += 2) {
            object.put(String.valueOf(keysAndValues[k]), keysAndValues[k + 1]);
        }
        return object;
    }

    /** Indented text of maps, iterables, optionals, numbers, booleans, dates and strings, nested as deep as wanted. */
    public static String text(@Nullable Object value) {
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT);
        return MAPPER.writer().with(printer).writeValueAsString(plain(value));
    }

    private static @Nullable Object plain(@Nullable Object value) {
        if (value instanceof Optional<?> optional) {
            return plain(optional.orElse(null));
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            map.forEach((key, inner) -> copy.put(String.valueOf(key), plain(inner)));
            return copy;
        }
        if (value instanceof Iterable<?> items) {
            List<@Nullable Object> copy = new ArrayList<>();
            items.forEach(item -> copy.add(plain(item)));
            return copy;
        }
        if (value instanceof Double || value instanceof Float) {
            return number(((Number) value).doubleValue());
        }
        if (value == null || value instanceof Number || value instanceof Boolean) {
            return value;
        }
        // Dates and times of java.time print themselves in ISO 8601.
        return value.toString();
    }

    private static @Nullable BigDecimal number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return null;
        }
        BigDecimal digits = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        // Whole numbers as 1200, not 1.2E+3.
        return digits.scale() < 0 ? digits.setScale(0) : digits;
    }
}
