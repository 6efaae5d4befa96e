// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/**
 * What a zone is known by for good: its field, and its part of it.
 *
 * @param part empty when the field is one zone
 */
public record ZoneId(FieldId field, String part) {
    /** Of a field that was never called otherwise. */
    public static ZoneId named(String field, String zone) {
        return new ZoneId(new FieldId(field), zone);
    }
}
