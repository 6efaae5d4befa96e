// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;

/** Water given from above [mm]; {@code zone} empty means the whole field. */
public record Irrigation(String field, String zone, LocalDate date, double depth_mm) {
    public boolean isOn(Zone z) {
        return new FieldPart(field, zone).holds(z);
    }
}
