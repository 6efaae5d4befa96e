// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Spread;
import org.jspecify.annotations.Nullable;

/** An object of JSON being filled, whose keys carry the unit of the system asked for. */
final class Keys {
    private final boolean metric;
    private final Map<String, @Nullable Object> map = new LinkedHashMap<>();

    Keys(boolean metric) {
        this.metric = metric;
    }

    boolean isMetric() {
        return metric;
    }

    Keys put(String key, @Nullable Object value) {
        map.put(key, value);
        return this;
    }

    Keys put(String name, JsonUnit unit, double inside) {
        return put(unit.key(name, metric), unit.value(inside, metric));
    }

    Keys put(String name, JsonUnit unit, Spread s) {
        return put(
                unit.key(name, metric),
                Json.object(
                        "p10", unit.value(s.p10(), metric),
                        "p50", unit.value(s.p50(), metric),
                        "p90", unit.value(s.p90(), metric)));
    }

    Keys put(String key, DateSpread s) {
        return put(key, Json.object("p10", s.p10(), "p50", s.p50(), "p90", s.p90(), "probability", s.probability()));
    }

    Map<String, @Nullable Object> map() {
        return map;
    }
}
