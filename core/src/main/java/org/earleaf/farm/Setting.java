// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Locale;
import org.earleaf.units.Units;

/**
 * What a farm may set for its decisions; every usual value is common practice without a source. Inside units: dollars a
 * hectare, metres, m/s, mg/kg, shares, hours, minutes, days; 1 and 0 for yes and no.
 */
public enum Setting {
    BAD_CASE_WEIGHT(
            "weight of the worst fifth of futures beside the mean, when choices are compared", "share", 0, 0, 1),
    LOW_NITRATE(
            "nitrate of the top foot below which an alarm is raised late in the vegetative stages", "mg/kg", 10, 1, 60),
    SOIL_TEST_SHIFTS(
            "whether a nitrate test shifts the soil's nitrate instead of choosing among members", "yes or no", 0, 0, 1),
    HIRED_RIG_NEAR("whether a high-clearance rig can be hired", "yes or no", 1, 0, 1),
    HIRED_RIG_CLEARANCE("clearance of a rig that can be hired", "m", 90 * Units.M_PER_IN, .5, 4),
    HIRED_RIG_COST(
            "hiring a high-clearance rig with drop hoses, without product", "$/ha", 16 / Units.HA_PER_AC, 0, 250),
    AIRCRAFT_NEAR("whether an aircraft that spreads urea can be hired", "yes or no", 1, 0, 1),
    AIRCRAFT_COST("spreading urea by air, without product", "$/ha", 15 / Units.HA_PER_AC, 0, 250),
    HIRED_NOTICE("days before a hired rig can come", "days", 2, 0, 14),
    LEAVE_AT("hour at which rigs may leave the yard", "h", 6, 0, 14),
    DRIVER_DAY("longest working day of a driver", "h", 12, 1, 18),
    SUNDAYS("whether Sundays are worked", "yes or no", 1, 0, 1),
    LEAF_HOURS("hours of a day fit for spraying leaves, where no hourly weather is given", "h", 6, 0, 18),
    GROUND_HOURS("hours of a day fit for nitrogen on the ground, where no hourly weather is given", "h", 10, 0, 18),
    ROAD_SPEED("speed of a rig on the road", "m/s", 15 * Units.MS_PER_MPH, 1, 20),
    FOLD_TIME("folding and unfolding at each change of place", "min", 6, 0, 60),
    FILL_TIME("filling the tank once, hitching and mixing included", "min", 15, 1, 120),
    TENDER_RELOAD("loading the tender at the yard", "min", 20, 1, 240),
    RINSE_TIME("rinsing the tank between two products", "min", 45, 0, 240),
    CALIBRATION_DAYS("days on which a catch test of a rig's outlets holds (assumption)", "days", 30, 1, 365),
    CALIBRATION_AREA("ground on which a catch test holds (assumption)", "ha", 500 * Units.HA_PER_AC, 1, 20_000);

    private final String meaning;
    private final String unit;
    private final double usual;
    private final double low;
    private final double high;

    Setting(String meaning, String unit, double usual, double low, double high) {
        this.meaning = meaning;
        this.unit = unit;
        this.usual = usual;
        this.low = low;
        this.high = high;
    }

    /** The word in files and stores, without a unit. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String meaning() {
        return meaning;
    }

    public String unit() {
        return unit;
    }

    /** Taken when the farm says nothing. */
    public double usual() {
        return usual;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }
}
