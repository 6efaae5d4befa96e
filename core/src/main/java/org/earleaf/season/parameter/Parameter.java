// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import org.earleaf.units.Assumed;

/**
 * Every number of the season model that is not geometry or a unit: its unit, default and range, where it comes from, and
 * how far it may stray in an ensemble (coefficient of variation, or standard deviation in its own unit where {@code sd}
 * is given); the catalogue says what it is. The page of assumptions and docs/assumptions.md are made from this list.
 */
public enum Parameter implements Assumed {
    // thermal time and stage
    EMERGENCE("°F d", 115, 95, 140, Tag.PUBLISHED, 0, 10),
    LEAF_EARLY("°F d", 82, 59, 90, Tag.PUBLISHED, 0, 0),
    LEAF_LATE("°F d", 50, 45, 65, Tag.PUBLISHED, 0, 0),
    SILK_SHIFT("°F d", 0, -75, 75, Tag.OWN, 0, 25),
    LATE_SILK("°F d", 1.7, 0, 4, Tag.OWN, 0, 0),
    LATE_BLACK("°F d", 6.8, 0, 10, Tag.PUBLISHED, 0, 0),
    HEIGHT_SCALE("share", 1, .8, 1.2, Tag.OWN, .08, 0),
    LAI_MAX("m2/m2", 5, 3.5, 6.5, Tag.OWN, .08, 0),
    // water
    KCB_FULL("-", 1.15, 1, 1.25, Tag.MEMORY, 0, 0),
    KC_MAX("-", 1.2, 1.05, 1.3, Tag.MEMORY, 0, 0),
    KCB_EXTINCTION("-", .7, .5, .9, Tag.MEMORY, 0, 0),
    EVAPORATION_READY("share", .25, .1, .6, Tag.OWN, 0, 0),
    EVAPORATION_RESIDUE("share", .5, .2, .65, Tag.PUBLISHED, 0, 0),
    INTERCEPTION("mm", .2, .1, .3, Tag.MEMORY, 0, 0),
    STEMFLOW("share", 1, .3, 1.7, Tag.OWN, .2, 0),
    RAIN_CATCH("share", 1, .7, 1.3, Tag.OWN, .08, 0),
    AVAILABLE_WATER("share", 1, .7, 1.3, Tag.OWN, .1, 0),
    CONDUCTIVITY("share", 1, .2, 5, Tag.OWN, .5, 0),
    DRAIN_RATE("share", 1, .3, 3, Tag.OWN, .4, 0),
    LATERAL("1/d", .15, 0, .5, Tag.OWN, 0, 0),
    SOLUTE_MIXED("share", .8, .4, 1, Tag.OWN, 0, 0),
    ROOT_DEPTH_MAX("mm", 1370, 900, 1600, Tag.PUBLISHED, .1, 0),
    ROOT_FRONT("mm/°F d", .65, .2, 1.5, Tag.TRIALS, 0, 0),
    ROOT_LENGTH("cm/cm2", 120, 60, 200, Tag.OWN, 0, 0),
    ROOT_HALF("cm/cm3", .25, .1, .5, Tag.OWN, 0, 0),
    WATER_UPTAKE("1/d", .10, .06, .12, Tag.MEMORY, 0, 0),
    BARE_WARMING("°C", 1.5, 0, 3, Tag.OWN, 0, 0),
    BARE_COVER("share", .30, 0, 1, Tag.OWN, 0, 0),
    // surface nitrogen
    WASH_IN("mm", 4, 2, 8, Tag.OWN, 0, 0),
    UREA_SURFACE("1/d", .30, .15, .6, Tag.OWN, 0, 0),
    UREA_ENTRY("1/d", .08, 0, .2, Tag.OWN, 0, 0),
    AMMONIA_LOSS("1/d", .25, .05, .6, Tag.OWN, .4, 0),
    AMMONIA_FIXED("1/d", .33, .1, .6, Tag.OWN, 0, 0),
    SURFACE_NITRIFY("1/d", .05, 0, .1, Tag.OWN, 0, 0),
    // residue and soil nitrogen
    RESIDUE_DECAY("1/d", .012, .004, .03, Tag.OWN, 0, 0),
    RESIDUE_DECAY_BURIED("1/d", .030, .01, .06, Tag.OWN, 0, 0),
    RESIDUE_REACH("1/d", .05, .01, .3, Tag.TRIALS, .4, 0),
    RESIDUE_REACH_SURFACE("1/d", .2, .05, .5, Tag.OWN, 0, 0),
    CARBON_USE("share", .40, .3, .6, Tag.MEMORY, 0, 0),
    MICROBE_CN("-", 8.5, 6, 12, Tag.MEMORY, 0, 0),
    MICROBE_TURNOVER("1/d", .008, .002, .03, Tag.OWN, 0, 0),
    MINERALISATION("1/d", .78e-4, .2e-4, 4e-4, Tag.TRIALS, .48, 0),
    UREA_SOIL("1/d", .35, .15, .8, Tag.OWN, 0, 0),
    NITRIFICATION("1/d", .09, .03, .2, Tag.OWN, .25, 0),
    TAKE_BACK("1/d", .04, 0, .1, Tag.OWN, .4, 0),
    AMMONIUM_FLOOR("mg/kg", 1, 0, 3, Tag.PRACTICE, 0, 0),
    NITRATE_FLOOR("mg/kg", .5, 0, 2, Tag.OWN, 0, 0),
    DENITRIFICATION("1/d", .028, .008, .12, Tag.TRIALS, .4, 0),
    DEPOSIT_NITRATE("kg/ha/d", .02, 0, .05, Tag.PRACTICE, 0, 0),
    DEPOSIT_AMMONIUM("kg/ha/d", .01, 0, .05, Tag.PRACTICE, 0, 0),
    START_NITRATE("share", .94, .2, 3, Tag.TRIALS, .4, 0),
    // crop nitrogen and growth
    CRITICAL("kg/t", 37, 18, 65, Tag.TRIALS, .12, 0),
    LUXURY("share", 1, 1, 1.4, Tag.TRIALS, 0, 0),
    ROOT_NITROGEN("share", .15, .05, .3, Tag.OWN, .2, 0),
    UPTAKE_MAX("kg/ha/d", 8.8, 5, 12, Tag.PUBLISHED, 0, 0),
    NITRATE_UPTAKE("1/d", .065, .02, .3, Tag.TRIALS, 0, 0),
    AMMONIUM_UPTAKE("1/d", .03, 0, .1, Tag.OWN, 0, 0),
    RUE("g/MJ", 3.74, 2, 6, Tag.TRIALS, .2, 0),
    NITROGEN_POWER("-", .62, .3, 1.5, Tag.TRIALS, 0, 0),
    FED("share", .86, .7, 1, Tag.TRIALS, 0, 0),
    RUE_DECLINE("share", .5, .2, .85, Tag.TRIALS, 0, 0),
    LIGHT_EXTINCTION("-", .55, .4, .7, Tag.MEMORY, 0, 0),
    KERNELS("-", 560, 385, 650, Tag.PUBLISHED, 0, 0),
    KERNEL_WEIGHT("mg", 300, 200, 350, Tag.PRACTICE, 0, 0),
    HARVEST_INDEX("share", .515, .45, .62, Tag.TRIALS, 0, 0),
    NITROGEN_HARVEST("share", .62, .55, .7, Tag.MEMORY, 0, 0),
    GRAIN_N_MIN("share", .009, .008, .013, Tag.OWN, 0, 0),
    // hybrid's era, rotation and the field's own past
    ERA_GROWTH("1/yr", .0026, 0, .015, Tag.TRIALS, 0, 0),
    ERA_GREEN("1/yr", .018, 0, .03, Tag.TRIALS, 0, 0),
    ERA_DEMAND("1/yr", .008, 0, .015, Tag.TRIALS, 0, 0),
    CORN_DRAG("share", .94, .8, 1, Tag.TRIALS, 0, 0),
    DEPLETION("share", .32, 0, .8, Tag.TRIALS, 0, 0),
    SOYBEAN_SUPPLY("share", 1.12, .8, 1.5, Tag.TRIALS, 0, 0),
    SOYBEAN_START("share", 1.36, .8, 2.5, Tag.TRIALS, 0, 0),
    CARRY_OVER("1/(100 kg/ha)", .35, 0, 1, Tag.TRIALS, 0, 0),
    // what strikes now and then; 0 switches it off
    FROST("on/off", 1, 0, 1, Tag.PRACTICE, 0, 0),
    HEAT("on/off", 1, 0, 1, Tag.PRACTICE, 0, 0),
    WATERLOGGING("on/off", 1, 0, 1, Tag.PRACTICE, 0, 0);

    /** Where a number comes from. */
    public enum Tag {
        PUBLISHED,
        /** Published, recalled from memory. */
        MEMORY,
        /** Common practice, no source. */
        PRACTICE,
        /** Own construct, calibrated to published ranges. */
        OWN,
        /** Fitted to measured corn in bench/trials. */
        TRIALS
    }

    private final Range range;
    private final Tag tag;
    private final double cv;
    private final double sd;

    Parameter(String unit, double usual, double low, double high, Tag tag, double cv, double sd) {
        this.range = new Range(unit, usual, low, high);
        this.tag = tag;
        this.cv = cv;
        this.sd = sd;
    }

    @Override
    public Range range() {
        return range;
    }

    public Tag tag() {
        return tag;
    }

    /** Coefficient of variation in an ensemble (lognormal), 0: not perturbed this way. */
    public double cv() {
        return cv;
    }

    /** Standard deviation in an ensemble (normal), 0: not perturbed this way. */
    public double sd() {
        return sd;
    }

    /** Whether each member of an ensemble may have its own value. */
    public boolean isPerMember() {
        return cv > 0 || sd > 0;
    }
}
