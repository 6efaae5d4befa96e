// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Locale;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;

/** What was measured of plants and their soil, how the model tells it, and how near it is to come. */
enum Trait {
    SHOOT("shoot", "kg/ha", Goal.SHARE, .2),
    SHOOT_NITROGEN("shoot nitrogen", "kg/ha", Goal.SHARE, .2),
    LEAF_AREA("leaf area", "m2/m2", Goal.SHARE, .2),
    ROOTS("root depth", "cm", Goal.OFF, 20),
    COLLARS("stage", "collars", Goal.OFF, .7),
    HEIGHT("height of the canopy", "cm", Goal.SHARE, .12),
    NITRATE("nitrate of the top foot", "ppm", Goal.FACTOR, 1.5);

    /** How a model's value is held against a measured one. */
    private enum Goal {
        SHARE,
        OFF,
        FACTOR
    }

    private final String word;
    private final String unit;
    private final Goal goal;
    private final double most;

    Trait(String word, String unit, Goal goal, double most) {
        this.word = word;
        this.unit = unit;
        this.goal = goal;
        this.most = most;
    }

    String label() {
        return word + " [" + unit + "]";
    }

    String key() {
        return word.replace(' ', '_');
    }

    /** As in "within 20 %". */
    String within() {
        return switch (goal) {
            case SHARE -> "within " + Math.round(100 * most) + " %";
            case OFF -> "within " + (most < 1 ? String.valueOf(most) : Math.round(most)) + " " + unit;
            case FACTOR -> "within a factor of " + most;
        };
    }

    /** How far off: a share, in the trait's unit, or a logarithm. */
    double error(double measured, double modelled) {
        return switch (goal) {
            case SHARE -> modelled / measured - 1;
            case OFF -> modelled - measured;
            case FACTOR -> Math.log(modelled / measured);
        };
    }

    boolean isWithin(double error) {
        return Math.abs(error) <= (goal == Goal.FACTOR ? Math.log(most) : most);
    }

    /** A mean of errors as people read it. */
    String told(double error) {
        return switch (goal) {
            case SHARE -> String.format(Locale.ROOT, "%+.0f %%", 100 * error);
            case OFF -> String.format(Locale.ROOT, "%+.1f %s", error, unit);
            case FACTOR -> String.format(Locale.ROOT, "times %.2f", Math.exp(error));
        };
    }

    /** Of the one member of a run, in the evening. */
    double of(SeasonRun run) {
        return switch (this) {
            case SHOOT -> run.now(0, Daily.SHOOT);
            case SHOOT_NITROGEN -> run.shootN_kgHa(0);
            case LEAF_AREA -> run.now(0, Daily.LAI);
            case ROOTS -> run.now(0, Daily.ROOT_MM) / 10;
            case COLLARS -> run.collars(0);
            case HEIGHT -> run.height_cm(0);
            case NITRATE -> nitrate_ppm(run);
        };
    }

    private static double nitrate_ppm(SeasonRun run) {
        Reading.Sampled foot = new Reading.Sampled(0, SoilProfile.FOOT_MM, Reading.Position.RANDOM);
        FieldPart field = new FieldPart("", "");
        return Observing.of(
                run, 0, new Reading("", field, run.date(), Reading.Kind.NITRATE, 0, "", foot, "", Scouted.NOTHING));
    }
}
