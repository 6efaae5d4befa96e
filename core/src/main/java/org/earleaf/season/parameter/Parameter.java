// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

/**
 * Every number of the season model that is not geometry or a unit: what it is, its unit, default and range, where it
 * comes from, and how far it may stray in an ensemble (coefficient of variation, or standard deviation in its own unit
 * where {@code sd} is given). The page of assumptions and docs/assumptions.md are made from this list.
 */
public enum Parameter {
    // thermal time and stage
    EMERGENCE("thermal time from planting to emergence", "°F d", 115, 95, 140, Tag.PUBLISHED, 0, 10),
    LEAF_EARLY("thermal time per collar to V10", "°F d", 82, 59, 90, Tag.PUBLISHED, 0, 0),
    LEAF_LATE("thermal time per collar after V10", "°F d", 50, 45, 65, Tag.PUBLISHED, 0, 0),
    SILK_SHIFT("shift of silking against the rating", "°F d", 0, -75, 75, Tag.OWN, 0, 25),
    LATE_SILK("silking earlier per day planted after 1 May", "°F d", 1.7, 0, 4, Tag.OWN, 0, 0),
    LATE_BLACK("black layer earlier per day planted after 1 May", "°F d", 6.8, 0, 10, Tag.PUBLISHED, 0, 0),
    HEIGHT_SCALE("height increments after V6", "share", 1, .8, 1.2, Tag.OWN, .08, 0),
    LAI_MAX("largest leaf area at 8 plants/m2", "m2/m2", 5, 3.5, 6.5, Tag.OWN, .08, 0),
    // water
    KCB_FULL("basal crop coefficient at full cover", "-", 1.15, 1, 1.25, Tag.MEMORY, 0, 0),
    KC_MAX("largest crop coefficient", "-", 1.2, 1.05, 1.3, Tag.MEMORY, 0, 0),
    KCB_EXTINCTION("leaf area extinction of the basal coefficient", "-", .7, .5, .9, Tag.MEMORY, 0, 0),
    EVAPORATION_READY("readily evaporable share of the top layer's water", "share", .25, .1, .6, Tag.OWN, 0, 0),
    EVAPORATION_RESIDUE("evaporation cut by full residue cover", "share", .5, .2, .65, Tag.PUBLISHED, 0, 0),
    INTERCEPTION("rain held per unit leaf area", "mm", .2, .1, .3, Tag.MEMORY, 0, 0),
    STEMFLOW("scale of the share of rain that runs down the stems", "share", 1, .3, 1.7, Tag.OWN, .2, 0),
    RAIN_CATCH("rain of the field against the gauge", "share", 1, .7, 1.3, Tag.OWN, .08, 0),
    AVAILABLE_WATER("field capacity less wilting point, scale", "share", 1, .7, 1.3, Tag.OWN, .1, 0),
    CONDUCTIVITY("saturated conductivity, scale", "share", 1, .2, 5, Tag.OWN, .5, 0),
    DRAIN_RATE("greatest daily drainage, scale", "share", 1, .3, 3, Tag.OWN, .4, 0),
    LATERAL("water exchange between row and middle", "1/d", .15, 0, .5, Tag.OWN, 0, 0),
    SOLUTE_MIXED("share of a layer's solute that moves with water", "share", .8, .4, 1, Tag.OWN, 0, 0),
    ROOT_DEPTH_MAX("deepest roots", "mm", 1370, 900, 1600, Tag.PUBLISHED, .1, 0),
    ROOT_LENGTH("root length at tassel", "cm/cm2", 120, 60, 200, Tag.OWN, 0, 0),
    ROOT_HALF("root density of full activity", "cm/cm3", .25, .1, .5, Tag.OWN, 0, 0),
    WATER_UPTAKE("share of available water taken by full roots", "1/d", .10, .06, .12, Tag.MEMORY, 0, 0),
    BARE_WARMING("soil above air temperature before the canopy closes", "°C", 1.5, 0, 3, Tag.OWN, 0, 0),
    BARE_COVER("residue cover above which the soil does not warm so", "share", .30, 0, 1, Tag.OWN, 0, 0),
    // surface nitrogen
    WASH_IN("infiltration that moves 63 % of surface nitrogen in", "mm", 4, 2, 8, Tag.OWN, 0, 0),
    UREA_SURFACE("hydrolysis of urea on the surface at 25 °C", "1/d", .30, .15, .6, Tag.OWN, 0, 0),
    UREA_ENTRY("diffusion of urea into the soil", "1/d", .08, 0, .2, Tag.OWN, 0, 0),
    AMMONIA_LOSS("volatilisation rate", "1/d", .25, .05, .6, Tag.OWN, .4, 0),
    AMMONIA_FIXED("ammonia held by the soil", "1/d", .33, .1, .6, Tag.OWN, 0, 0),
    SURFACE_NITRIFY("nitrification on the surface at 25 °C", "1/d", .05, 0, .1, Tag.OWN, 0, 0),
    // residue and soil nitrogen
    RESIDUE_DECAY("decay of surface residue at 25 °C", "1/d", .012, .004, .03, Tag.OWN, 0, 0),
    RESIDUE_DECAY_BURIED("decay of buried residue at 25 °C", "1/d", .030, .01, .06, Tag.OWN, 0, 0),
    RESIDUE_REACH("share of top-layer nitrogen within reach of residue", "1/d", .10, .02, .3, Tag.OWN, .4, 0),
    RESIDUE_REACH_SURFACE("share of surface nitrogen within reach", "1/d", .2, .05, .5, Tag.OWN, 0, 0),
    CARBON_USE("carbon-use efficiency of microbes", "share", .40, .3, .6, Tag.MEMORY, 0, 0),
    MICROBE_CN("carbon to nitrogen of microbes", "-", 8.5, 6, 12, Tag.MEMORY, 0, 0),
    MICROBE_TURNOVER("release by microbes at 25 °C", "1/d", .008, .002, .03, Tag.OWN, 0, 0),
    MINERALISATION(
            "gross mineralisation of soil organic nitrogen at 25 °C", "1/d", 1.5e-4, .5e-4, 3e-4, Tag.OWN, .3, 0),
    UREA_SOIL("hydrolysis of urea in soil at 25 °C", "1/d", .35, .15, .8, Tag.OWN, 0, 0),
    NITRIFICATION("nitrification at 25 °C", "1/d", .09, .03, .2, Tag.OWN, .25, 0),
    TAKE_BACK("ammonium taken by soil microbes and clay at 25 °C", "1/d", .04, 0, .1, Tag.OWN, .4, 0),
    AMMONIUM_FLOOR("exchangeable ammonium that stays", "mg/kg", 1, 0, 3, Tag.PRACTICE, 0, 0),
    NITRATE_FLOOR("nitrate that roots leave", "mg/kg", .5, 0, 2, Tag.OWN, 0, 0),
    DENITRIFICATION("denitrification at 25 °C, saturated", "1/d", .055, .01, .12, Tag.OWN, .5, 0),
    DEPOSIT_NITRATE("nitrate from the air", "kg/ha/d", .02, 0, .05, Tag.PRACTICE, 0, 0),
    DEPOSIT_AMMONIUM("ammonium from the air", "kg/ha/d", .01, 0, .05, Tag.PRACTICE, 0, 0),
    START_NITRATE("soil nitrate at the start, scale", "share", 1, .2, 3, Tag.OWN, .4, 0),
    // crop nitrogen and growth
    LUXURY("nitrogen aimed at above the critical curve", "share", 1.20, 1, 1.4, Tag.PUBLISHED, 0, 0),
    ROOT_NITROGEN("share of uptake that stays in roots", "share", .15, .05, .3, Tag.OWN, .2, 0),
    UPTAKE_MAX("largest daily gain of shoot nitrogen", "kg/ha/d", 8.8, 5, 12, Tag.PUBLISHED, 0, 0),
    NITRATE_UPTAKE("share of nitrate taken by full roots", "1/d", .12, .04, .3, Tag.OWN, 0, 0),
    AMMONIUM_UPTAKE("share of ammonium taken by full roots", "1/d", .03, 0, .1, Tag.OWN, 0, 0),
    RUE("radiation-use efficiency of absorbed light", "g/MJ", 3.5, 2.8, 4.0, Tag.PUBLISHED, .06, 0),
    LIGHT_EXTINCTION("light extinction", "-", .55, .4, .7, Tag.MEMORY, 0, 0),
    KERNELS("reference kernels per plant", "-", 560, 385, 650, Tag.PUBLISHED, 0, 0),
    KERNEL_WEIGHT("potential kernel weight, dry", "mg", 300, 200, 350, Tag.PRACTICE, 0, 0),
    HARVEST_INDEX("largest harvest index", "share", .55, .45, .62, Tag.PUBLISHED, 0, 0),
    NITROGEN_HARVEST("largest share of shoot nitrogen in grain", "share", .62, .55, .7, Tag.MEMORY, 0, 0),
    GRAIN_N_MIN("least nitrogen in dry grain", "share", .009, .008, .013, Tag.OWN, 0, 0),
    // what strikes now and then; 0 switches it off
    FROST("frost kills and thins leaves", "on/off", 1, 0, 1, Tag.PRACTICE, 0, 0),
    HEAT("hot dry days at silking cost kernels", "on/off", 1, 0, 1, Tag.PRACTICE, 0, 0),
    WATERLOGGING("waterlogged topsoil halves root activity", "on/off", 1, 0, 1, Tag.PRACTICE, 0, 0);

    /** Where a number comes from. */
    public enum Tag {
        PUBLISHED("published"),
        MEMORY("published, from memory"),
        PRACTICE("common practice, no source"),
        OWN("own construct, calibrated to published ranges");

        private final String word;

        Tag(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private final String meaning;
    private final String unit;
    private final double usual;
    private final double low;
    private final double high;
    private final Tag tag;
    private final double cv;
    private final double sd;

    Parameter(String meaning, String unit, double usual, double low, double high, Tag tag, double cv, double sd) {
        this.meaning = meaning;
        this.unit = unit;
        this.usual = usual;
        this.low = low;
        this.high = high;
        this.tag = tag;
        this.cv = cv;
        this.sd = sd;
    }

    public String meaning() {
        return meaning;
    }

    public String unit() {
        return unit;
    }

    /** Value taken when nothing else is said. */
    public double usual() {
        return usual;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
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
