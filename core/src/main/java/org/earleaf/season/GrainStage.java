// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/** R1 to R6 by the share of the time from silk to black layer that is over. */
public final class GrainStage {
    private static final double[] ONSET = {0.20, 0.33, 0.43, 0.63, 1.00};

    private GrainStage() {}

    /** 1 from silk on, to 6 at black layer. */
    public static int of(double rep) {
        int stage = 1;
        for (double onset : ONSET) {
            if (rep >= onset) {
                stage++;
            }
        }
        return stage;
    }

    /** Share at which a stage begins, 2 to 6. */
    public static double onset(int stage) {
        return ONSET[stage - 2];
    }
}
