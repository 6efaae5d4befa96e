// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Locale;
import org.earleaf.units.Assumed;
import org.earleaf.units.Units;

/**
 * What a farm may set for its decisions; a usual value without a source beside it is common practice, no source. Inside
 * units: dollars a hectare, metres, m/s, mg/kg, shares, hours, minutes, days; 1 and 0 for yes and no.
 */
public enum Setting implements Assumed {
    BAD_CASE_WEIGHT("share", 0, 0, 1),
    LOW_NITRATE("mg/kg", 10, 1, 60),
    /** Iowa State extension, late-spring test; Blackmer et al. 1989, J. Prod. Agric. 2:103 (from memory). */
    ENOUGH_NITRATE("mg/kg", 25, 10, 60),
    /** Seed of a second planting, the pass, and killing what stands. */
    REPLANT_COST("$/ha", 100 / Units.HA_PER_AC, 0, 1000),
    SOIL_TEST_SHIFTS("on/off", 1, 0, 1),
    HIRED_RIG_NEAR("on/off", 1, 0, 1),
    HIRED_RIG_CLEARANCE("m", 90 * Units.M_PER_IN, .5, 4),
    HIRED_RIG_COST("$/ha", 16 / Units.HA_PER_AC, 0, 250),
    AIRCRAFT_NEAR("on/off", 1, 0, 1),
    AIRCRAFT_COST("$/ha", 15 / Units.HA_PER_AC, 0, 250),
    HIRED_NOTICE("days", 2, 0, 14),
    LEAVE_AT("h", 6, 0, 14),
    DRIVER_DAY("h", 12, 1, 18),
    SUNDAYS("on/off", 1, 0, 1),
    LEAF_HOURS("h", 6, 0, 18),
    GROUND_HOURS("h", 10, 0, 18),
    ROAD_SPEED("m/s", 15 * Units.MS_PER_MPH, 1, 20),
    FOLD_TIME("min", 6, 0, 60),
    FILL_TIME("min", 15, 1, 120),
    TENDER_RELOAD("min", 20, 1, 240),
    RINSE_TIME("min", 45, 0, 240),
    CALIBRATION_DAYS("days", 30, 1, 365),
    CALIBRATION_AREA("ha", 500 * Units.HA_PER_AC, 1, 20_000);

    private final Range range;

    Setting(String unit, double usual, double low, double high) {
        this.range = new Range(unit, usual, low, high);
    }

    /** The word in files and stores, without a unit. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Range range() {
        return range;
    }
}
