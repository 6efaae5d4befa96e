// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;

/**
 * How wet a cell is, as a share of what it can hold against gravity.
 *
 * @param share 0 at the wilting point, 1 at field capacity
 */
public record Wetness(double share) {
    private static final double SHADES_AT_CAPACITY = 4.4;

    public static Wetness of(SeasonTrace trace, SoilProfile soil, int day, int column, int layer) {
        return of(trace, soil, day, column, layer, layer + 1);
    }

    /** Mean over layers from (inclusive) to (exclusive), by thickness. */
    public static Wetness of(SeasonTrace trace, SoilProfile soil, int day, int column, int from, int to) {
        double held_mm = 0;
        double room_mm = 0;
        for (int layer = from; layer < to; layer++) {
            SoilWater water = soil.water().get(layer);
            double thick_mm = SoilProfile.thickness_mm(layer);
            held_mm += trace.at(day, Cell.WATER, column, layer) - water.wp() * thick_mm;
            room_mm += (water.fc() - water.wp()) * thick_mm;
        }
        return new Wetness(held_mm / room_mm);
    }

    /** 0 driest to 5 wettest, the class of the drawing. */
    public int shade() {
        return (int) Math.max(0, Math.min(5, Math.round(SHADES_AT_CAPACITY * share)));
    }

    public String word() {
        return switch (shade()) {
            case 0, 1 -> tell("wetness.dry");
            case 2, 3 -> tell("wetness.fair");
            case 4 -> tell("wetness.moist");
            default -> tell("wetness.wet");
        };
    }
}
