// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.List;
import java.util.Set;
import org.earleaf.units.BundledTable;

/**
 * Cleaning a tank before another mix or crop. The clean-out section of the label decides on steps, cleaner, strength and
 * rinses; the dilution is a plausibility beside it.
 *
 * @param heel_m3 what does not drain
 * @param rinse_m3 clean water each time, a tenth of the tank
 * @param rinses how many bring the rest below the aim; three at least
 * @param left share of the mix that is left after them
 * @param aim share to come below (assumption: a thousandth, a ten-thousandth after what hurts other crops in traces)
 * @param steps what the hand does
 */
public record Cleanout(double heel_m3, double rinse_m3, int rinses, double left, double aim, List<Step> steps) {
    private static final double TENTH = .1;
    private static final int LEAST = 3;
    /** A tank that does not drain to this is not cleaned by rinsing. */
    private static final int MOST = 12;

    private static final double USUAL_AIM = 1e-3;
    private static final double STRONG_AIM = 1e-4;
    /** Groups that hurt other crops in traces (assumption; labels say more). */
    private static final Set<String> STRONG = Set.of("hrac 1", "hrac 2", "hrac 4");

    /** What the hand does, in order. */
    public enum Step {
        LABEL,
        SPRAY_OUT,
        RINSE,
        CLEANER,
        /** The one that can kill. */
        NO_BLEACH,
        SCREENS,
        RINSE_AGAIN,
        RESIDUES
    }

    public Cleanout {
        steps = List.copyOf(steps);
    }

    /** @param words of what was in the tank, in lower case */
    public static Cleanout of(double heel_m3, double tank_m3, Set<String> words) {
        double aim = words.stream().anyMatch(STRONG::contains) ? STRONG_AIM : USUAL_AIM;
        double rinse_m3 = TENTH * tank_m3;
        double once = Rinse.inTurns(heel_m3, rinse_m3);
        int rinses = LEAST;
        while (Math.pow(once, rinses) > aim && rinses < MOST) {
            rinses++;
        }
        List<Step> steps = BundledTable.rows("cleanout.csv").stream()
                .map(row -> Step.valueOf(row.text("step")))
                .toList();
        return new Cleanout(heel_m3, rinse_m3, rinses, Math.pow(once, rinses), aim, steps);
    }

    /** Whether so many rinses bring it below the aim. */
    public boolean isEnough() {
        return left <= aim;
    }
}
