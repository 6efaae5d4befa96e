// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.TankLoad;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Loads and label entries as text: the parts of the records and nothing that follows from them. */
final class LoadJson {
    private static final JsonMapper JSON = JsonMapper.builder()
            .changeDefaultVisibility(v -> v.withIsGetterVisibility(Visibility.NONE))
            .build();

    private LoadJson() {}

    static String text(Object fact) {
        return JSON.writeValueAsString(fact);
    }

    static TankLoad load(String body) {
        ObjectNode load = (ObjectNode) JSON.readTree(body);
        // Loads of before heel and overrides were kept.
        if (!load.has("unapplied_m3")) {
            load.put("unapplied_m3", 0.0).putArray("overridden");
        }
        return JSON.treeToValue(load, TankLoad.class);
    }

    static LabelEntry label(String body) {
        return JSON.readValue(body, LabelEntry.class);
    }
}
