// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/** What people wrote of a farm, found by going through its records: texts, quantities, and numbers with the unit beside. */
final class Entered {
    private final Set<String> texts =
            new TreeSet<>(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));

    Set<String> texts() {
        return new LinkedHashSet<>(texts);
    }

    void of(Object value) {
        if (value instanceof String text && text.length() > 2) {
            texts.add(text);
        } else if (value instanceof Quantity quantity) {
            add(quantity.entered(), quantity.unit());
        } else if (value instanceof Iterable<?> all) {
            all.forEach(this::of);
        } else if (value instanceof Map<?, ?> all) {
            all.values().forEach(this::of);
        } else if (value instanceof Optional<?> some) {
            some.ifPresent(this::of);
        } else if (value instanceof Record facts && !(value instanceof Said)) {
            parts(facts);
        }
    }

    private void parts(Record facts) {
        Object before = "";
        for (RecordComponent part : facts.getClass().getRecordComponents()) {
            Object value = value(facts, part);
            if (before instanceof Double number && value instanceof String unit) {
                add(number, unit);
            }
            of(value);
            before = value;
        }
    }

    private void add(double number, String unit) {
        if (!Double.isNaN(number) && !Double.isInfinite(number)) {
            String digits = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
            texts.add(digits + " " + unit);
            if (unit.startsWith("usd/")) {
                texts.add(String.format(Locale.ROOT, "$%,.2f/%s", number, unit.substring("usd/".length())));
            }
        }
    }

    private static Object value(Record facts, RecordComponent part) {
        try {
            part.getAccessor().setAccessible(true);
            Object value = part.getAccessor().invoke(facts);
            return value == null ? "" : value;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
