// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.function.Function;

/**
 * What an import found to be other than what was stored.
 *
 * @param what the fact ("weather 2026-06-03")
 * @param part what of it ("rain"); empty when the whole fact went
 * @param before as it was, given whether to speak metric
 * @param after as it is now, likewise
 * @param note what was done where the newer value was not taken; else empty
 */
public record Difference(
        String what, String part, Function<Boolean, String> before, Function<Boolean, String> after, String note) {
    static Difference removed(String what) {
        return new Difference(what, "", metric -> "stored", metric -> "not in this folder", "removed");
    }

    /** "weather 2026-06-03: rain 4 mm -> 6 mm". */
    public String sentence(boolean metric) {
        String head = part.isEmpty() ? what + ": " : what + ": " + part + " ";
        String tail = note.isEmpty() ? "" : " (" + note + ")";
        return head + before.apply(metric) + " -> " + after.apply(metric) + tail;
    }
}
