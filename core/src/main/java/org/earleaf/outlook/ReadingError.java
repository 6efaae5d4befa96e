// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

/** Standard errors of readings taken with care (own construct; nitrate samples near lognormal: see {@link Assimilation}). */
public final class ReadingError {
    /** Of the logarithm: fifteen to twenty cores at random from the top foot. */
    public static final double NITRATE = .30;
    /** The same where a band may lie in the soil. */
    static final double NITRATE_NEAR_BAND = .50;

    static final double NITRATE_BELOW_FOOT = .20;
    static final double AT_ONE_DISTANCE = .40;
    static final double AMMONIUM = .35;
    static final double COVER = .05;
    static final double MOISTURE = .03;

    private static final int LEAVES_EASY_TO_COUNT = 10;

    private ReadingError() {}

    /** Leaf collars of a stage: the lowest leaves are lost later. */
    public static double stage(double collars) {
        return collars <= LEAVES_EASY_TO_COUNT ? .4 : .7;
    }

    public static double height_cm(double height_cm) {
        return 4 + .04 * Math.max(height_cm, 1);
    }
}
