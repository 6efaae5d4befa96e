// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

/**
 * Every number of disease and insect pressure that a farm may set for itself: what it is, its unit, default and range,
 * and what stands behind it. Tables with published numbers lie among the resources; docs/protection-assumptions.md and
 * the page of assumptions are made from this list.
 */
public enum ProtectionAssumption {
    // scouting
    SCOUTED_PLANTS("plants looked at where a note gives no count", "plants", 50, 10, 200, Support.PRACTICE),
    SIGHTING_LASTS("days that a scouting stays good", "d", 21, 5, 30, Support.ASSUMPTION),
    LESION_SHARE("ear leaf covered for each mean lesion on a plant", "share", .0004, .0001, .01, Support.ASSUMPTION),
    // growth of disease
    GROWTH_LOW("daily growth of severity, weather against it", "1/d", .05, .01, .08, Support.ASSUMPTION),
    GROWTH_FAVOURABLE("daily growth of severity, favourable weather", "1/d", .12, .08, .15, Support.ASSUMPTION),
    GROWTH_VERY("daily growth of severity, very favourable weather", "1/d", .18, .12, .25, Support.ASSUMPTION),
    GROWTH_SUSCEPTIBLE("growth on a susceptible hybrid, scale", "share", 1.15, 1, 1.5, Support.ASSUMPTION),
    GROWTH_RESISTANT("growth on a resistant hybrid, scale", "share", .6, .3, 1, Support.ASSUMPTION),
    GROWTH_DOUBT("how far growth may lie off either way", "share", .25, 0, .5, Support.ASSUMPTION),
    RISK_FAVOURABLE("mean daily infection index that is favourable", "share", .2, .05, .4, Support.ASSUMPTION),
    RISK_VERY("mean daily infection index that is very favourable", "share", .5, .3, .9, Support.ASSUMPTION),
    DRY_DAY_NIGHT("weight of a humid night beside a dry day, gray leaf spot", "share", .33, .2, 1, Support.DERIVED),
    // fungicide
    EFFICACY("cut of disease growth by a fungicide in full effect", "share", .6, .4, .8, Support.ASSUMPTION),
    FULL_EFFECT("days of full effect", "d", 14, 7, 21, Support.PRACTICE),
    NO_EFFECT("days until no effect is left", "d", 28, 14, 35, Support.PRACTICE),
    SEVERE("final severity from which the higher response holds", "share", .05, .02, .1, Support.PUBLISHED),
    BLEND("weight of the disease model beside the trials, once scouted", "share", .5, 0, 1, Support.ASSUMPTION),
    SAVED_MOST("largest gain by one pass seen in trials of a disease", "kg/ha", 1650, 500, 3200, Support.PUBLISHED),
    LOSS_CAP("largest yield loss to disease", "share", .6, .3, .8, Support.ASSUMPTION),
    LATE_PLANTING("day of the year from which planting is late", "d", 140, 110, 170, Support.PRACTICE),
    SEVERE_LOW("chance of a severe end, low site score", "share", .1, 0, 1, Support.ASSUMPTION),
    SEVERE_MODERATE("chance of a severe end, moderate site score", "share", .3, 0, 1, Support.ASSUMPTION),
    SEVERE_HIGH("chance of a severe end, high site score", "share", .6, 0, 1, Support.ASSUMPTION),
    BEFORE_TASSEL("share of futures that may still lie before tassel", "share", .1, 0, .5, Support.ASSUMPTION),
    // aphids
    APHID_GROWTH("daily growth of corn leaf aphids at 20 to 27 °C", "1/d", .2, .1, .25, Support.ASSUMPTION),
    APHID_FALL("fastest daily fall", "1/d", -.2, -.4, 0, Support.ASSUMPTION),
    APHID_RISE("fastest daily growth", "1/d", .25, .2, .35, Support.ASSUMPTION),
    APHID_CAP("aphids a plant can carry", "a plant", 2000, 500, 5000, Support.ASSUMPTION),
    ENEMY_EFFECT("growth taken by one natural enemy a plant", "1/d", .15, .05, .3, Support.ASSUMPTION),
    ENEMIES_LEFT("natural enemies left by a pyrethroid", "share", .2, .05, .5, Support.ASSUMPTION),
    FUNGUS_EFFECT("growth taken by fungi on a humid day", "1/d", .05, 0, .1, Support.ASSUMPTION),
    FUNGUS_OFF("days without those fungi after a fungicide", "d", 14, 7, 28, Support.ASSUMPTION),
    HUMID_DAYS("share of humid days where no hours are given", "share", .3, 0, 1, Support.ASSUMPTION),
    APHID_LOSS("yield lost by 10,000 aphid-days a plant", "bu/ac", 5, 0, 15, Support.ASSUMPTION),
    APHID_STAGE_R2("weight of an aphid-day at R2", "share", .5, 0, 1, Support.ASSUMPTION),
    APHID_STAGE_R3("weight of an aphid-day at R3", "share", .25, 0, 1, Support.ASSUMPTION),
    APHID_HORIZON("days that aphids are followed", "d", 21, 14, 35, Support.ASSUMPTION),
    APHICIDE("aphids killed by an insecticide", "share", .85, .5, .98, Support.ASSUMPTION),
    DRY_CROP("mean water factor of a week below which the crop is dry", "share", .7, .4, .9, Support.ASSUMPTION),
    APHIDS_UNSEEN("chance of aphids where nobody looked", "share", .1, 0, 1, Support.ASSUMPTION),
    APHIDS_NONE("chance of aphids where none were found", "share", .02, 0, .2, Support.ASSUMPTION),
    APHIDS_START("aphids a plant where they were not counted", "a plant", 20, 1, 100, Support.ASSUMPTION),
    // the rig
    TYRE_WIDTH("width of a tyre that crushes headland rows", "m", .46, .3, .8, Support.ASSUMPTION),
    HEADLAND_SWATHS("headland, in boom widths", "", 2, 1, 4, Support.ASSUMPTION),
    BELLY_WIDTH("width of the machine's belly over the rows", "m", 3.05, 2, 4, Support.ASSUMPTION),
    LOST_PER_HURT("yield lost with each plant hurt", "share", .6, .15, .9, Support.ASSUMPTION);

    private final String meaning;
    private final String unit;
    private final double usual;
    private final double low;
    private final double high;
    private final Support support;

    ProtectionAssumption(String meaning, String unit, double usual, double low, double high, Support support) {
        this.meaning = meaning;
        this.unit = unit;
        this.usual = usual;
        this.low = low;
        this.high = high;
        this.support = support;
    }

    public String meaning() {
        return meaning;
    }

    public String unit() {
        return unit;
    }

    /** Value taken when the farm sets none. */
    public double usual() {
        return usual;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    public Support support() {
        return support;
    }
}
