// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.earleaf.units.Figure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** Reads the figures of what labels say to a load, for tests. */
final class Findings {
    private Findings() {}

    /** A figure in the unit of the label. */
    static String told(Said figure) {
        return switch (figure.code()) {
            case "label.days" -> Figure.text((double) figure.values().get("n"), 3) + " days";
            case "label.hours" -> Figure.text((double) figure.values().get("n"), 3) + " h";
            case "label.degrees" -> Figure.text((double) figure.values().get("n"), 3) + " degrees";
            default -> figure.toString();
        };
    }

    /** What is told beside the count of passes, which has to be so. */
    static Said counted(Said said, long made, long reserved) {
        assertThat(said.code()).isEqualTo("label.counted");
        assertThat(said.values()).containsEntry("made", made).containsEntry("reserved", reserved);
        return (Said) said.values().get("said");
    }

    static double lbAc(Said amount) {
        return Units.lbAc(((Measured) amount.values().get("amount")).value());
    }
}
