// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A {@link Said} as one text of the farm file, and back: what was entered stands as it is, a code with its values as JSON
 * behind a mark, each value under the name of its kind.
 */
final class SaidText {
    private static final String CODED = "said:";

    private SaidText() {}

    static String of(Said said) {
        String text = said.toString();
        return said.isEntered() && !text.startsWith(CODED)
                ? text
                : CODED + JsonMapper.shared().writeValueAsString(tree(said));
    }

    /** A text that this version cannot read is shown as it stands: a remark never keeps a farm from being opened. */
    static Said read(String text) {
        if (!text.startsWith(CODED)) {
            return Said.text(text);
        }
        try {
            return said(JsonMapper.shared().readTree(text.substring(CODED.length())));
        } catch (JacksonException | IllegalArgumentException unknown) {
            return Said.text(text);
        }
    }

    private static Map<String, Object> tree(Said said) {
        Map<String, Object> values = new LinkedHashMap<>();
        said.values().forEach((name, value) -> values.put(name, kept(value)));
        return Map.of("code", said.code(), "values", values);
    }

    private static Map<String, Object> kept(Object value) {
        if (value instanceof List<?> list) {
            return Map.of("list", list.stream().map(SaidText::kept).toList());
        }
        if (value instanceof Said said) {
            return Map.of("said", tree(said));
        }
        if (value instanceof Measured m) {
            return Map.of(m.measure().name(), m.value());
        }
        if (value instanceof Integer || value instanceof Long) {
            return Map.of("whole", ((Number) value).longValue());
        }
        if (value instanceof Double number) {
            return Map.of("number", number);
        }
        if (value instanceof LocalDate date) {
            return Map.of("date", date.toString());
        }
        if (value instanceof LocalDateTime time) {
            return Map.of("time", time.toString());
        }
        if (value instanceof String entered) {
            return Map.of("text", entered);
        }
        throw new IllegalArgumentException("a remark cannot keep a value of " + value.getClass());
    }

    private static Said said(JsonNode node) {
        Map<String, Object> values = new LinkedHashMap<>();
        node.required("values").properties().forEach(e -> values.put(e.getKey(), value(e.getValue())));
        return new Said(node.required("code").asString(), values);
    }

    private static Object value(JsonNode node) {
        Map.Entry<String, JsonNode> only = node.properties().iterator().next();
        JsonNode v = only.getValue();
        return switch (only.getKey()) {
            case "list" ->
                StreamSupport.stream(v.spliterator(), false)
                        .map(SaidText::value)
                        .toList();
            case "said" -> said(v);
            case "whole" -> v.asLong();
            case "number" -> v.asDouble();
            case "date" -> LocalDate.parse(v.asString());
            case "time" -> LocalDateTime.parse(v.asString());
            case "text" -> v.asString();
            default -> Measure.valueOf(only.getKey()).of(v.asDouble());
        };
    }
}
