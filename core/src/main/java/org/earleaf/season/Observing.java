// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.field.Reading;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.soil.SoilProfile;

/**
 * What a reading would show in a member of a run, in the inside unit of its kind.
 *
 * <pre>
 * nitrate, ammonium  sum over layers in reach of the cores / sum of kg/ha a ppm; cores at random see both columns by area
 * stage              collars; VT 30; R1 to R6 as 31 to 36 by the onsets of the stages
 * height             cm          cover   1 - exp(-0.55 LAI)          moisture   share of volume
 *
 * Range  depth 0 to 60 in
 * Source kg/ha = ppm x bulk density x depth (cm) x 0.1: extension soil-test guides; what cores at random see: own
 *        construct
 * Check  ObservingTest
 * </pre>
 */
public final class Observing {
    private Observing() {}

    /** NaN when the kind is none that the model knows. */
    public static double of(SeasonRun run, int m, Reading reading) {
        SeasonState s = run.state();
        return switch (reading.kind()) {
            case NITRATE -> soil(run, m, reading, s.nitrate);
            case AMMONIUM -> soil(run, m, reading, s.ammonium);
            case MOISTURE -> moisture(run, m, reading);
            case STAGE -> stage(run, m);
            case HEIGHT -> s.height[m];
            case COVER -> 1 - Math.exp(-run.site().of(Parameter.LIGHT_EXTINCTION) * s.lai[m]);
            default -> Double.NaN;
        };
    }

    private static double soil(SeasonRun run, int m, Reading r, double[] pool) {
        double held = 0;
        double perPpm = 0;
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            double reach = reach(r, i);
            for (int c = 0; c < 2; c++) {
                held += reach * weight(run, r, c) * pool[run.state().at(c, i) + m];
            }
            perPpm += reach * run.site().ppm[i];
        }
        return perPpm > 0 ? held / perPpm : Double.NaN;
    }

    private static double moisture(SeasonRun run, int m, Reading r) {
        double held = 0;
        double depth = 0;
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            double reach = reach(r, i);
            for (int c = 0; c < 2; c++) {
                held += reach
                        * weight(run, r, c)
                        * run.state().water[run.state().at(c, i) + m];
            }
            depth += reach * run.site().dz[i];
        }
        return depth > 0 ? held / depth : Double.NaN;
    }

    /** Share of a layer between the depths of a reading; the top foot when it gives none. */
    static double reach(Reading r, int i) {
        double top = Double.isNaN(r.top_mm()) ? 0 : r.top_mm();
        double bottom = Double.isNaN(r.bottom_mm()) ? SoilProfile.FOOT_MM : r.bottom_mm();
        double overlap = Math.min(bottom, SoilProfile.bottom_mm(i)) - Math.max(top, SoilProfile.top_mm(i));
        return Math.max(0, overlap) / SoilProfile.thickness_mm(i);
    }

    static double weight(SeasonRun run, Reading r, int column) {
        return switch (r.position()) {
            case RANDOM -> run.site().share[column];
            case ROW -> column == 0 ? 1 : 0;
            case MIDDLE -> column == 1 ? 1 : 0;
        };
    }

    private static double stage(SeasonRun run, int m) {
        double rep = run.state().rep[m];
        if (rep <= 0) {
            return run.state().collars[m];
        }
        return 30 + GrainStage.of(rep);
    }
}
