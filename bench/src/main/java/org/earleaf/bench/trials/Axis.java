// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Locale;
import org.earleaf.bench.trials.Svg.Place;
import org.earleaf.units.Units;

/**
 * The two units a drawing is read in: US along its left and lower edge, SI along the others; both from zero.
 *
 * @param usOf one kilogram a hectare in the US unit
 * @param siOf the same in the SI unit
 * @param usStep between two marks
 * @param siStep the same
 */
record Axis(String us, double usOf, double usStep, String si, double siOf, double siStep) {
    static final Axis GRAIN = new Axis("bu/ac", Units.buAc(1), 50, "t/ha", .001, 2);
    static final Axis NITROGEN = new Axis("lb/ac", Units.lbAc(1), 50, "kg/ha", 1, 50);

    static final double LEFT = 56;
    static final double TOP = 104;
    static final double SIZE = 420;

    /** The end of the axis for values up to some [kg/ha]. */
    double end(double most_kgHa) {
        return Math.ceil(most_kgHa * usOf / usStep - 1e-9) * usStep / usOf;
    }

    /** Up the drawing. */
    static double up(double share) {
        return TOP + SIZE * (1 - share);
    }

    static double across(double share) {
        return LEFT + SIZE * share;
    }

    /** The frame with what is read upwards. */
    void drawUp(Svg svg, double end_kgHa, String what) {
        svg.words(4, TOP - 14, "start", what + ", " + us);
        for (double mark = 0; mark <= end_kgHa * usOf + 1e-6; mark += usStep) {
            double y = up(mark / usOf / end_kgHa);
            svg.line("grid", new Place(LEFT, y), new Place(LEFT + SIZE, y)).words(LEFT - 6, y + 5, "end", word(mark));
        }
        svg.words(LEFT + SIZE + 52, TOP - 14, "end", si);
        for (double mark = 0; mark <= end_kgHa * siOf; mark += siStep) {
            svg.words(LEFT + SIZE + 6, up(mark / siOf / end_kgHa) + 5, "start", word(mark));
        }
        frame(svg);
    }

    /** The same measure read across. */
    void drawAcross(Svg svg, double end_kgHa, String what) {
        svg.words(LEFT + SIZE / 2, TOP + SIZE + 44, "middle", what + ", " + us);
        for (double mark = 0; mark <= end_kgHa * usOf + 1e-6; mark += usStep) {
            double x = across(mark / usOf / end_kgHa);
            svg.line("grid", new Place(x, TOP), new Place(x, TOP + SIZE))
                    .words(x, TOP + SIZE + 20, "middle", word(mark));
        }
        for (double mark = siStep; mark <= end_kgHa * siOf; mark += siStep) {
            svg.words(across(mark / siOf / end_kgHa), TOP - 4, "middle", word(mark));
        }
    }

    static void frame(Svg svg) {
        Place corner = new Place(LEFT, TOP + SIZE);
        svg.line("axis", new Place(LEFT, TOP), corner).line("axis", corner, new Place(LEFT + SIZE, TOP + SIZE));
    }

    private static String word(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
