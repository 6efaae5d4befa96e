// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ReadingError;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Ranks;

/**
 * What a reading of the crop itself, its height or its stage, would be worth this morning: whether a rig still fits, and
 * on which day to go, is then decided by a crop that is known better.
 *
 * <pre>
 * VOI as of ReadingValue over the days to go;  R_d,m = gain of the best pass of day d in member m,
 *     -9 times its mean where the crop of m is too tall that day for the pass's first rig
 *
 * -9     the odds at which Reach lets a rig in: so that going pays just when nine in ten clear
 * days   those looked at, with the gains of the last on which a rig goes for nine in ten futures up to 6 more, and today
 *        by a rig that is kept out for fear of a crop that one of ten futures has low enough
 * s      ReadingError
 * Range  at least 0; days too wet to work are left out of account
 * Source preposterior analysis: Raiffa & Schlaifer 1961, from memory; the days: own construct
 * Check  CropReadingWorthTest
 * </pre>
 *
 * @param height_usdHa of a height
 * @param stage_usdHa of a stage
 * @param inDoubt the rig that may turn out to fit
 */
public record CropReadingWorth(double height_usdHa, double stage_usdHa, Optional<String> inDoubt) {
    private static final int MORE_D = 6;
    private static final double ODDS = 9;

    /** The best pass of a day: its gain by member, and by what rig and placement. */
    record DayPass(int ahead, double[] gains_usdHa, Rig rig, Placement placement) {}

    static CropReadingWorth of(SeasonRun morning, Baseline base, List<DayPass> passes, Optional<DayPass> inDoubt) {
        double[][] gains = byDay(morning, base, passes, inDoubt);
        double[] height = Baseline.each(morning, morning::height_cm);
        double[] stage = Baseline.each(morning, m -> morning.collars(m));
        double tall = ReadingError.height_cm(Ranks.mean(height));
        double late = ReadingError.stage(Ranks.mean(stage));
        return new CropReadingWorth(
                new ReadingValue(gains, height, tall).worth(),
                new ReadingValue(gains, stage, late).worth(),
                inDoubt.map(p -> p.rig().name()));
    }

    private static double[][] byDay(SeasonRun morning, Baseline base, List<DayPass> passes, Optional<DayPass> inDoubt) {
        List<double[]> all = new ArrayList<>();
        // The morning's own heights: tonight's are not what a rig meets today.
        inDoubt.ifPresent(p -> all.add(whereItFits(p, Baseline.each(morning, morning::height_cm))));
        passes.forEach(
                p -> all.add(whereItFits(p, base.heights_cm(morning.date().plusDays(p.ahead())))));
        if (!passes.isEmpty()) {
            DayPass last = passes.get(passes.size() - 1);
            for (int more = 1; more <= MORE_D; more++) {
                all.add(whereItFits(last, base.heights_cm(morning.date().plusDays(last.ahead() + more))));
            }
        }
        return all.toArray(double[][]::new);
    }

    private static double[] whereItFits(DayPass pass, double[] heights_cm) {
        double[] gains = new double[heights_cm.length];
        double tooTall = -ODDS * Math.max(0, Ranks.mean(pass.gains_usdHa()));
        Arrays.setAll(
                gains,
                m -> ClearanceFit.clears(pass.rig(), pass.placement(), heights_cm[m] / 100)
                        ? pass.gains_usdHa()[m]
                        : tooTall);
        return gains;
    }
}
