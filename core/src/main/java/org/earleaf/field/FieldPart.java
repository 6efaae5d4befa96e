// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/**
 * A field, or a zone of one.
 *
 * @param zone empty: the whole field
 */
public record FieldPart(String field, String zone) {
    public static FieldPart of(Zone zone) {
        return new FieldPart(zone.field(), zone.zone());
    }

    public boolean holds(Zone z) {
        return field.equals(z.field()) && (zone.isEmpty() || zone.equals(z.zone()));
    }

    /** Field name, with the zone's behind it where there is one. */
    public String label() {
        return zone.isEmpty() ? field : field + ", " + zone;
    }
}
