// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;

/**
 * The soil under two rows, cut open: one dot for each quantum of nitrate, one dash for ammonium, the wetter the darker,
 * roots and corn to scale (height at a quarter), what lies on the surface on the face behind.
 */
public final class SoilCutaway {
    static final double LEFT = 64;
    static final double TOP = 236;
    static final double FACE = 360;
    static final double DEPTH_IN = 60;
    private static final double DOWN = FACE / DEPTH_IN;
    private static final double BACK_X = 72;
    private static final double BACK_Y = -46;
    private static final double UP_PER_CM = 1.6 / 2.54;
    private static final double DRIBBLE_IN = 3;
    /** Depth as farmers count it: 0 to 1, 1 to 2, 2 to 3 and 3 to 5 ft. */
    public static final List<Foot> FEET = List.of(new Foot(0, 3), new Foot(3, 4), new Foot(4, 5), new Foot(5, 6));
    /** More marks than this are a grey mass: the quantum is doubled. */
    private static final int MOST_MARKS = 2000;

    private final Zone zone;
    private final SeasonTrace trace;
    private final Format format;
    private final double taller;
    private final Ground ground;
    private final Scatter.Frame frame;
    private final double quantum_kgHa;
    private final double head;

    /** @param taller how much taller the corn stands than in the run, 1 as in the run */
    public SoilCutaway(Zone zone, SeasonTrace trace, double taller, Format format) {
        this.zone = zone;
        this.trace = trace;
        this.format = format;
        this.taller = taller;
        this.ground = Ground.of(trace, zone.rowSpacing_m());
        this.frame = new Scatter.Frame(LEFT, TOP, FACE / ground.width_in(), DOWN);
        this.quantum_kgHa = Quantum.of(trace, .25 * format.perNitrogenUnit_kgHa(), MOST_MARKS);
        this.head = Math.min(56, TOP + BACK_Y - UP_PER_CM * taller * highest() - 26);
    }

    /** Layers from (inclusive) to (exclusive). */
    public record Foot(int from, int to) {}

    /** A line that corn must stay under. */
    public record Clearance(String words, double height_cm) {}

    /** Nitrogen that one dot stands for [kg/ha of field]. */
    public double quantum_kgHa() {
        return quantum_kgHa;
    }

    private double highest() {
        double most = 0;
        for (int day = 0; day < trace.days(); day++) {
            most = Math.max(most, trace.at(day, Daily.HEIGHT_CM));
        }
        return most;
    }

    /**
     * @param captionId id of the caption that tells the finding
     * @param lines clearances of the rigs in question
     */
    public Markup draw(int day, String captionId, List<Clearance> lines) {
        Ink ink = new Ink()
                .put("<svg class=\"cut\" viewBox=\"0 ")
                .put(head)
                .put(" 560 ")
                .put(640 - head);
        ink.put("\" role=\"img\" aria-labelledby=\"").text(captionId).put("\">");
        faces(ink);
        plants(ink, day, true);
        surface(ink, day);
        water(ink, day);
        roots(ink, day);
        marks(ink, day);
        edges(ink);
        plants(ink, day, false);
        height(ink, day);
        clearances(ink, lines);
        figures(ink, day);
        scale(ink);
        return ink.close("svg").done();
    }

    private void faces(Ink ink) {
        double right = LEFT + FACE;
        double bottom = TOP + FACE;
        ink.path(
                quad(at(LEFT, TOP), at(right, TOP), at(right + BACK_X, TOP + BACK_Y), at(LEFT + BACK_X, TOP + BACK_Y)),
                "side");
        ink.path(
                quad(
                        at(right, TOP),
                        at(right + BACK_X, TOP + BACK_Y),
                        at(right + BACK_X, bottom + BACK_Y),
                        at(right, bottom)),
                "side");
        StringBuilder carried = new StringBuilder();
        for (int layer = 0; layer < SoilProfile.LAYERS - 1; layer++) {
            double y = frame.y(Ground.bottom_in(layer));
            carried.append(segment(right, y, right + BACK_X, y + BACK_Y));
        }
        ink.path(carried, "hl");
    }

    private void water(Ink ink, int day) {
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                int wet = Wetness.of(trace, zone.soil(), day, column, layer).shade();
                StringBuilder d = new StringBuilder();
                for (Ground.Piece p : ground.pieces(column)) {
                    double x0 = frame.x(p.from_in());
                    double x1 = frame.x(p.to_in());
                    double y0 = frame.y(Ground.top_in(layer));
                    double y1 = frame.y(Ground.bottom_in(layer));
                    d.append(quad(at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)));
                }
                ink.path(d, "w" + wet);
            }
        }
    }

    private void roots(Ink ink, int day) {
        for (int row = 0; row < 2; row++) {
            List<String> paths = Roots.paths(trace, day, ground, ground.row_in(row), frame);
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                ink.path(paths.get(layer), "rt rt" + Roots.width(trace, day, layer));
            }
        }
    }

    private void marks(Ink ink, int day) {
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            StringBuilder dots = new StringBuilder();
            StringBuilder dashes = new StringBuilder();
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                double nitrate = trace.field(day, Cell.NITRATE, column, layer);
                double ammonium =
                        trace.field(day, Cell.AMMONIUM, column, layer) + trace.field(day, Cell.UREA, column, layer);
                List<Ground.Piece> pieces = ground.pieces(column);
                for (int j = 0; j < pieces.size(); j++) {
                    Ground.Piece p = pieces.get(j);
                    Scatter.marks(
                            dots,
                            new Scatter.Cell(p, layer),
                            count(nitrate * p.share()),
                            Scatter.dotSeed(column, layer, j),
                            frame,
                            "h0");
                    Scatter.marks(
                            dashes,
                            new Scatter.Cell(p, layer),
                            count(ammonium * p.share()),
                            Scatter.dashSeed(column, layer, j),
                            frame,
                            "h5");
                }
            }
            ink.path(dots, "no3").path(dashes, "nh4");
        }
    }

    private int count(double kgHa) {
        return (int) Math.round(Math.max(0, kgHa) / quantum_kgHa);
    }

    /** What lies on the surface, on the face behind: in a dribble's band when only one column carries it. */
    private void surface(Ink ink, int day) {
        StringBuilder d = new StringBuilder();
        double atRow = trace.surface(day, SeasonTrace.ROW);
        double between = trace.surface(day, SeasonTrace.MIDDLE);
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            double mine = column == SeasonTrace.ROW ? atRow : between;
            double other = column == SeasonTrace.ROW ? between : atRow;
            boolean dribbled = other < .02 * mine;
            List<Ground.Piece> pieces = ground.pieces(column);
            for (int j = 0; j < pieces.size(); j++) {
                Ground.Piece p = dribbled ? band(column, pieces.get(j), j) : pieces.get(j);
                double seed = .31 + .4 * column + .29 * j;
                for (int k = 1; k <= count(mine * pieces.get(j).share()); k++) {
                    double back = .06 + .88 * Scatter.y(k, seed);
                    d.append('M');
                    Ink.append(d, frame.x(p.from_in() + p.width_in() * Scatter.x(k, seed)) + BACK_X * back);
                    d.append(' ');
                    Ink.append(d, TOP + BACK_Y * back);
                    d.append("h0");
                }
            }
        }
        ink.path(d, "no3");
    }

    /** Both sides of the row, or the middle of the space between rows; a half middle is cut by the block's edge. */
    private Ground.Piece band(int column, Ground.Piece p, int j) {
        if (column == SeasonTrace.ROW || j == 1) {
            double middle = (p.from_in() + p.to_in()) / 2;
            return new Ground.Piece(middle - DRIBBLE_IN, middle + DRIBBLE_IN, p.share());
        }
        return j == 0
                ? new Ground.Piece(0, DRIBBLE_IN, p.share())
                : new Ground.Piece(ground.width_in() - DRIBBLE_IN, ground.width_in(), p.share());
    }

    private void edges(Ink ink) {
        StringBuilder layers = new StringBuilder();
        for (int layer = 0; layer < SoilProfile.LAYERS - 1; layer++) {
            double y = frame.y(Ground.bottom_in(layer));
            layers.append(segment(LEFT, y, LEFT + FACE, y));
        }
        StringBuilder columns = new StringBuilder();
        for (Ground.Piece p : ground.pieces(SeasonTrace.ROW)) {
            columns.append(segment(frame.x(p.from_in()), TOP, frame.x(p.from_in()), TOP + FACE));
            columns.append(segment(frame.x(p.to_in()), TOP, frame.x(p.to_in()), TOP + FACE));
        }
        ink.path(layers, "cell dot").path(columns, "cell");
        ink.path(quad(at(LEFT, TOP), at(LEFT + FACE, TOP), at(LEFT + FACE, TOP + FACE), at(LEFT, TOP + FACE)), "k2f");
    }

    private void plants(Ink ink, int day, boolean behind) {
        double tall = UP_PER_CM * taller * trace.at(day, Daily.HEIGHT_CM);
        double collars = trace.at(day, Daily.COLLARS);
        if (collars <= 0) {
            return;
        }
        boolean silked = trace.at(day, Daily.REP) > 0;
        double[] steps = behind ? new double[] {1, .5} : new double[] {0};
        for (double step : steps) {
            for (int row = 0; row < 2; row++) {
                double x = frame.x(ground.row_in(row)) + BACK_X * step;
                String d = Corn.plant(x, TOP + BACK_Y * step, tall * (1 - .06 * step), collars, silked);
                ink.path(d, behind ? "pl plb" : "pl");
            }
        }
    }

    private void height(Ink ink, int day) {
        double cm = taller * trace.at(day, Daily.HEIGHT_CM);
        if (cm < 1) {
            return;
        }
        double y = TOP - UP_PER_CM * cm;
        ink.path("M" + n(LEFT - 22) + " " + n(y) + "h12m-6 0V" + n(TOP), "kn");
        ink.label(LEFT - 28, y - 8, "halo bo", format.length(cm) + " " + format.lengthUnit());
    }

    private void clearances(Ink ink, List<Clearance> lines) {
        for (Clearance c : lines) {
            double y = TOP - UP_PER_CM * c.height_cm();
            ink.line(LEFT + 36, y, LEFT + FACE + BACK_X, y, "rr da");
            ink.label(LEFT + FACE + BACK_X, y - 7, "rd end halo", c.words());
        }
    }

    private void figures(Ink ink, int day) {
        ink.label(LEFT + FACE + BACK_X + 10, TOP + BACK_Y - 8, "so", format.isMetric() ? "kg/ha" : "lb/ac");
        Ground.Piece between = ground.pieces(SeasonTrace.MIDDLE).get(1);
        double middle = frame.x((between.from_in() + between.to_in()) / 2);
        for (Foot foot : FEET) {
            double y = frame.y((Ground.top_in(foot.from()) + Ground.bottom_in(foot.to() - 1)) / 2) + 7;
            double atRow = nitrate(day, SeasonTrace.ROW, foot);
            double mid = nitrate(day, SeasonTrace.MIDDLE, foot);
            ink.label(frame.x(ground.row_in(0)), y, "fig mid halo", format.nitrogen(atRow));
            ink.label(middle, y, "fig mid halo", format.nitrogen(mid));
            ink.label(LEFT + FACE + BACK_X + 12, y + BACK_Y, "fig", format.nitrogen(atRow + mid));
        }
    }

    /** Nitrate in a foot of one column [kg/ha of field]. */
    double nitrate(int day, int column, Foot foot) {
        double sum = 0;
        for (int layer = foot.from(); layer < foot.to(); layer++) {
            sum += trace.field(day, Cell.NITRATE, column, layer);
        }
        return sum;
    }

    private void scale(Ink ink) {
        String[] us = {
            "0",
            tell("page.soil-cutaway.6-in"),
            tell("page.soil-cutaway.1-ft"),
            tell("page.soil-cutaway.2-ft"),
            tell("page.soil-cutaway.3-ft"),
            tell("page.soil-cutaway.5-ft")
        };
        String[] metric = {"0", tell("page.soil-cutaway.15-cm"), "30", "61", "91", tell("page.soil-cutaway.152-cm")};
        double[] depth_in = {0, 6, 12, 24, 36, 60};
        for (int k = 0; k < depth_in.length; k++) {
            double y = frame.y(depth_in[k]);
            ink.line(LEFT - 6, y, LEFT, y, "kn");
            ink.label(LEFT - 10, y + 5, "end", (format.isMetric() ? metric : us)[k]);
        }
        double y = TOP + FACE + 10;
        for (Ground.Piece p : List.of(
                ground.pieces(SeasonTrace.ROW).get(0),
                ground.pieces(SeasonTrace.MIDDLE).get(1),
                ground.pieces(SeasonTrace.ROW).get(1))) {
            double a = frame.x(p.from_in()) + 2;
            double b = frame.x(p.to_in()) - 2;
            ink.path("M" + n(a) + " " + n(y - 5) + "v6H" + n(b) + "v-6", "kn");
        }
        ink.label(frame.x(ground.row_in(0)), y + 20, "mid", tell("page.soil-cutaway.row"));
        ink.put("<text class=\"mid\" x=\"")
                .put(frame.x(ground.spacing_in()))
                .put("\" y=\"")
                .put(y + 20);
        ink.put("\"><tspan class=\"only-n\">")
                .put(Markup.escape(tell("page.soil-cutaway.between")))
                .put("</tspan><tspan class=\"only-w\">")
                .put(Markup.escape(tell("page.soil-cutaway.between-rows")))
                .put("</tspan></text>");
        ink.label(frame.x(ground.row_in(1)), y + 20, "mid", tell("page.soil-cutaway.row"));
    }

    private static String n(double v) {
        StringBuilder b = new StringBuilder();
        Ink.append(b, v);
        return b.toString();
    }

    private static String segment(double x1, double y1, double x2, double y2) {
        return "M" + n(x1) + " " + n(y1) + "L" + n(x2) + " " + n(y2);
    }

    private static String quad(String a, String b, String c, String d) {
        return "M" + a + "L" + b + "L" + c + "L" + d + "z";
    }

    private static String at(double x, double y) {
        return n(x) + " " + n(y);
    }
}
