// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * How high flat fans must hang to overlap. Heights are above the target (canopy top for leaves, soil before
 * emergence), not above the ground.
 *
 * <pre>
 * W = 2 h tan(a/2),  o = W/s - 1,  h = s (1 + o) / (2 tan(a/2))
 *
 * W      width of the pattern at height h   [m]
 * a      fan angle                          [degrees]
 * s      outlet spacing                     [m]
 * o      overlap, share of the spacing; 1 aimed at for tapered fans, 0.3 at least
 * Range  angle 15 to 150 degrees
 * Source geometry; the aims are common practice of spray specialists. True angles shrink at low pressure: the careful
 *        setting takes 10 degrees off (common practice, no source).
 * Check  FanHeightTest
 * </pre>
 */
public final class FanHeight {
    public static final double AIM_OVERLAP = 1.0;
    public static final double LEAST_OVERLAP = 0.3;
    public static final double CAREFUL_LESS_DEG = 10;
    public static final double LEAST_DEG = 15;
    public static final double MOST_DEG = 150;

    private FanHeight() {}

    public static double pattern_m(double height_m, double angle_deg) {
        return 2 * height_m * Math.tan(Math.toRadians(angle_deg) / 2);
    }

    public static double height_m(double overlap, double angle_deg, double spacing_m) {
        return spacing_m * (1 + overlap) / (2 * Math.tan(Math.toRadians(angle_deg) / 2));
    }

    /** Heights that may be used: from the least overlap to a foot above the wanted one, or the label's height. */
    public record Window(double low_m, double high_m) {
        /** Room for the boom to sway: 8 in at least (assumption); with less, slow down. */
        public boolean holdsSway() {
            return high_m - low_m >= 8 * 0.0254;
        }
    }

    /** The window of heights; {@code label_m} is the label's greatest release height; infinite where it states none. */
    public static Window window(double angle_deg, double spacing_m, double label_m) {
        double aim_m = height_m(AIM_OVERLAP, angle_deg, spacing_m);
        return new Window(height_m(LEAST_OVERLAP, angle_deg, spacing_m), Math.min(label_m, aim_m + 0.3048));
    }
}
