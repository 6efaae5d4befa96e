// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.util.HashMap;
import java.util.Map;

/**
 * What stands in the boxes of a form.
 *
 * @param sent by the name of the box
 */
public record Boxes(Map<String, String> sent) {
    public Boxes {
        sent = Map.copyOf(sent);
    }

    /** As it was sent; empty when it was not. */
    public String box(String name) {
        return sent.getOrDefault(name, "");
    }

    /** Without what stands around it. */
    String said(String name) {
        return box(name).strip();
    }

    boolean isEmpty(String name) {
        return said(name).isEmpty();
    }

    /** Whether a box to tick is ticked. */
    boolean says(String name) {
        return said(name).equals("yes");
    }

    /** The same, with something in a box that is empty. */
    Boxes knowing(String name, String known) {
        Map<String, String> all = new HashMap<>(sent);
        if (isEmpty(name)) {
            all.put(name, known);
        }
        return new Boxes(all);
    }
}
