// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.module.SimpleModule;

/**
 * What is told of a load, kept as its code and values: {@code {"code": ..., "values": {...}}}. A quantity is
 * {@code {"measure": ..., "inside": ...}}. Of before there were codes stands the sentence itself; it is told as it is.
 */
final class SaidJson {
    private static final String CODE = "code";
    private static final String VALUES = "values";
    private static final String MEASURE = "measure";
    private static final String INSIDE = "inside";

    private SaidJson() {}

    static SimpleModule module() {
        return new SimpleModule().addSerializer(Said.class, new Writer()).addDeserializer(Said.class, new Reader());
    }

    private static final class Writer extends ValueSerializer<Said> {
        @Override
        public void serialize(Said said, JsonGenerator out, SerializationContext context) {
            out.writePOJO(plain(said));
        }

        private static Object plain(Object value) {
            if (value instanceof Said said) {
                Map<String, Object> values = new LinkedHashMap<>();
                said.values().forEach((name, each) -> values.put(name, plain(each)));
                return Map.of(CODE, said.code(), VALUES, values);
            }
            if (value instanceof Measured q) {
                return Map.of(MEASURE, q.measure().name(), INSIDE, q.value());
            }
            if (value instanceof List<?> list) {
                return list.stream().map(Writer::plain).toList();
            }
            if (value instanceof Number || value instanceof String) {
                return value;
            }
            throw new IllegalArgumentException(
                    "a load keeps no " + value.getClass().getName());
        }
    }

    private static final class Reader extends ValueDeserializer<Said> {
        @Override
        public Said deserialize(JsonParser in, DeserializationContext context) {
            JsonNode node = context.readTree(in);
            return node.isString() ? Said.text(node.asString()) : said(node);
        }

        private static Said said(JsonNode node) {
            Map<String, Object> values = new LinkedHashMap<>();
            node.get(VALUES).properties().forEach(each -> values.put(each.getKey(), value(each.getValue())));
            return new Said(node.get(CODE).asString(), values);
        }

        private static Object value(JsonNode node) {
            if (node.isArray()) {
                List<Object> list = new ArrayList<>();
                node.forEach(each -> list.add(value(each)));
                return list;
            }
            if (node.has(MEASURE)) {
                return Measure.valueOf(node.get(MEASURE).asString())
                        .of(node.get(INSIDE).asDouble());
            }
            if (node.isObject()) {
                return said(node);
            }
            return node.isNumber() ? node.numberValue() : node.asString();
        }
    }
}
