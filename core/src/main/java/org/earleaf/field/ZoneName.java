// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/**
 * What a zone is called today, beside what it is known by for good.
 *
 * @param field name of the field
 * @param zone name of the zone; empty when the field is one zone
 */
public record ZoneName(ZoneId id, String field, String zone) {
    /** Of one that was never called otherwise. */
    public static ZoneName of(String field, String zone) {
        return new ZoneName(ZoneId.named(field, zone), field, zone);
    }
}
