// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.Map;
import org.earleaf.units.Said;

/** Places in files as people read them, so that a table of faults can name them so. */
public final class PlaceText {
    private PlaceText() {}

    public static String of(Said place) {
        Map<String, Object> v = place.values();
        return switch (place.code()) {
            case "where.cell" -> v.get("file") + ", row " + v.get("row") + ", column " + v.get("column");
            case "where.row" -> v.get("file") + ", row " + v.get("row");
            case "where.column" -> v.get("file") + ", column " + v.get("column");
            case "where.feature" -> v.get("file") + ", feature " + v.get("feature");
            default -> place.toString();
        };
    }
}
