// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.Assumed;

/**
 * Every number of disease and insect pressure that a farm may set for itself: its unit, default and range, and what
 * stands behind it; the catalogue says what it is. Tables with published numbers lie among the resources;
 * docs/protection-assumptions.md and the page of assumptions are made from this list.
 */
public enum ProtectionAssumption implements Assumed {
    // scouting
    SCOUTED_PLANTS("plants", 50, 10, 200, Support.PRACTICE),
    SIGHTING_LASTS("d", 21, 5, 30, Support.ASSUMPTION),
    LESION_SHARE("share", .0004, .0001, .01, Support.ASSUMPTION),
    // growth of disease
    GROWTH_LOW("1/d", .05, .01, .08, Support.ASSUMPTION),
    GROWTH_FAVOURABLE("1/d", .12, .08, .15, Support.ASSUMPTION),
    GROWTH_VERY("1/d", .18, .12, .25, Support.ASSUMPTION),
    GROWTH_SUSCEPTIBLE("share", 1.15, 1, 1.5, Support.ASSUMPTION),
    GROWTH_RESISTANT("share", .6, .3, 1, Support.ASSUMPTION),
    GROWTH_DOUBT("share", .25, 0, .5, Support.ASSUMPTION),
    RISK_FAVOURABLE("share", .2, .05, .4, Support.ASSUMPTION),
    RISK_VERY("share", .5, .3, .9, Support.ASSUMPTION),
    DRY_DAY_NIGHT("share", .33, .2, 1, Support.DERIVED),
    // tar spot
    TAR_SPOT_GROWTH("1/d", .145, .08, .22, Support.DERIVED),
    TAR_SPOT_DOUBT("share", .35, 0, .5, Support.DERIVED),
    // fungicide
    EFFICACY("share", .6, .4, .8, Support.ASSUMPTION),
    FULL_EFFECT("d", 14, 7, 21, Support.PRACTICE),
    NO_EFFECT("d", 28, 14, 35, Support.PRACTICE),
    SEVERE("share", .05, .02, .1, Support.PUBLISHED),
    BLEND("share", .5, 0, 1, Support.ASSUMPTION),
    SAVED_MOST("kg/ha", 1650, 500, 3200, Support.PUBLISHED),
    LOSS_CAP("share", .6, .3, .8, Support.ASSUMPTION),
    LATE_PLANTING("d", 140, 110, 170, Support.PRACTICE),
    SEVERE_LOW("share", .1, 0, 1, Support.ASSUMPTION),
    SEVERE_MODERATE("share", .3, 0, 1, Support.ASSUMPTION),
    SEVERE_HIGH("share", .6, 0, 1, Support.ASSUMPTION),
    BEFORE_TASSEL("share", .1, 0, .5, Support.ASSUMPTION),
    // aphids
    APHID_GROWTH("1/d", .2, .1, .25, Support.ASSUMPTION),
    APHID_FALL("1/d", -.2, -.4, 0, Support.ASSUMPTION),
    APHID_RISE("1/d", .25, .2, .35, Support.ASSUMPTION),
    APHID_CAP("a plant", 2000, 500, 5000, Support.ASSUMPTION),
    ENEMY_EFFECT("1/d", .15, .05, .3, Support.ASSUMPTION),
    ENEMIES_LEFT("share", .2, .05, .5, Support.ASSUMPTION),
    FUNGUS_EFFECT("1/d", .05, 0, .1, Support.ASSUMPTION),
    FUNGUS_OFF("d", 14, 7, 28, Support.ASSUMPTION),
    HUMID_DAYS("share", .3, 0, 1, Support.ASSUMPTION),
    APHID_LOSS("bu/ac", 16, 0, 40, Support.DERIVED),
    APHID_WATERED("share", .2, 0, 1, Support.DERIVED),
    APHID_STAGE_R2("share", .5, 0, 1, Support.ASSUMPTION),
    APHID_STAGE_R3("share", .25, 0, 1, Support.ASSUMPTION),
    APHID_HORIZON("d", 21, 14, 35, Support.ASSUMPTION),
    APHICIDE("share", .85, .5, .98, Support.ASSUMPTION),
    DRY_CROP("share", .7, .4, .9, Support.ASSUMPTION),
    APHIDS_UNSEEN("share", .1, 0, 1, Support.ASSUMPTION),
    APHIDS_NONE("share", .02, 0, .2, Support.ASSUMPTION),
    APHIDS_START("a plant", 20, 1, 100, Support.ASSUMPTION),
    // the rig
    TYRE_WIDTH("m", .46, .3, .8, Support.ASSUMPTION),
    HEADLAND_SWATHS("", 2, 1, 4, Support.ASSUMPTION),
    BELLY_WIDTH("m", 3.05, 2, 4, Support.ASSUMPTION),
    LOST_PER_HURT("share", .6, .15, .9, Support.ASSUMPTION);

    private final Range range;
    private final Support support;

    ProtectionAssumption(String unit, double usual, double low, double high, Support support) {
        this.range = new Range(unit, usual, low, high);
        this.support = support;
    }

    @Override
    public Range range() {
        return range;
    }

    public Support support() {
        return support;
    }
}
