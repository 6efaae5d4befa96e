// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;

/** Manure given: organic and ammonium nitrogen [kg N/ha]; {@code zone} empty means the whole field. */
public record Manure(
        String field, String zone, LocalDate date, double organicN_kgHa, double ammoniumN_kgHa, Placement placement) {
    public boolean isOn(Zone z) {
        return new FieldPart(field, zone).holds(z);
    }
}
