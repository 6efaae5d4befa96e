// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;

/** Eleven root lines under a plant, as deep as the root front and as thick in each layer as the roots are active. */
final class Roots {
    private static final int SIDE = 5;
    private static final int WIDTHS = 6;

    private Roots() {}

    /** How far the roots have spread sideways, 0 to 1, by leaf collars (own construct, for the drawing only). */
    static double spread(double collars) {
        return Ink.clamp((collars - 3) / 5, .12, 1);
    }

    /**
     * One path a layer; empty where no root reaches.
     *
     * @param row_in where the plant stands, from the left of the block
     */
    static List<String> paths(SeasonTrace trace, int day, Ground ground, double row_in, Scatter.Frame frame) {
        double depth_in = Units.inches(trace.at(day, Daily.ROOT_MM));
        double spread = spread(trace.at(day, Daily.COLLARS));
        List<StringBuilder> layers = new ArrayList<>();
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            layers.add(new StringBuilder());
        }
        double limit_in = ground.spacing_in() / 2;
        if (trace.at(day, Daily.COLLARS) > 0) {
            for (int k = -SIDE; k <= SIDE; k++) {
                double side_in = 3.1 * limit_in / 15 * k * spread;
                double reach_in = depth_in * (1 - .07 * Math.abs(k));
                line(layers, reach_in, d -> row_in + side(side_in, limit_in, d), frame);
            }
        }
        return layers.stream().map(StringBuilder::toString).toList();
    }

    /** Away from the plant at a depth, at most to the middle between the rows. */
    private static double side(double side_in, double limit_in, double depth_in) {
        return Ink.clamp(side_in * (1 - Math.exp(-depth_in / 9)), -limit_in, limit_in);
    }

    private static void line(
            List<StringBuilder> layers, double reach_in, DoubleUnaryOperator at_in, Scatter.Frame frame) {
        double x = frame.x(at_in.applyAsDouble(0));
        double y = frame.y(0);
        for (int layer = 0; layer < SoilProfile.LAYERS && Ground.top_in(layer) < reach_in; layer++) {
            double d = Math.min(reach_in, Ground.bottom_in(layer));
            StringBuilder path = layers.get(layer);
            path.append('M');
            Ink.append(path, x);
            path.append(' ');
            Ink.append(path, y);
            x = frame.x(at_in.applyAsDouble(d));
            y = frame.y(d);
            path.append('L');
            Ink.append(path, x);
            path.append(' ');
            Ink.append(path, y);
        }
    }

    /** Width class of a layer, 0 thinnest to 5: roots as active as this. */
    static int width(SeasonTrace trace, int day, int layer) {
        double active = trace.at(day, Cell.ROOTS, SeasonTrace.ROW, layer);
        return (int) Math.round(Ink.clamp(active, 0, 1) * (WIDTHS - 1));
    }
}
