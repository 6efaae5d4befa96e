// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import org.earleaf.field.FieldPart;
import org.earleaf.mix.LabelWork;

/**
 * Ground that a load goes on, as looked at when the load was made. NaN and empty: not known.
 *
 * @param stageSeen day of the stage of what stands there
 */
public record LoadGround(FieldPart part, LabelWork.Ground ground, LabelWork.Standing standing, LocalDate stageSeen) {
    public String field() {
        return part.field();
    }

    public String zone() {
        return part.zone();
    }

    public String label() {
        return part.label();
    }

    public String crop() {
        return standing.crop();
    }

    public double stage() {
        return standing.stage();
    }

    public double area_ha() {
        return ground.area_ha();
    }

    LoadGround covering(double share) {
        return new LoadGround(part, ground.covering(share), standing, stageSeen);
    }
}
