// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;

/** The soil cut-away small enough to stand beside a line of text: two rows, 5 ft deep, one dot a pound. */
public final class Thumbnail {
    private static final double WIDTH = 120;
    private static final double GROUND = 46;
    private static final double DEEP = 120;
    private static final double UP_PER_CM = .17;
    private static final double LEAF_SCALE = .5;

    private Thumbnail() {}

    /** @param label what it shows, for those who cannot see it */
    public static Markup of(Zone zone, SeasonTrace trace, int day, Format format, String label) {
        Ground ground = Ground.of(trace, zone.rowSpacing_m());
        Scatter.Frame frame = new Scatter.Frame(0, GROUND, WIDTH / ground.width_in(), DEEP / SoilCutaway.DEPTH_IN);
        Ink ink = new Ink()
                .put("<svg class=\"thumb\" viewBox=\"-1 0 122 167\" role=\"img\" aria-label=\"")
                .text(label)
                .put("\">");
        StringBuilder dots = new StringBuilder();
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            List<Ground.Piece> pieces = ground.pieces(column);
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                int shade = Wetness.of(trace, zone.soil(), day, column, layer).shade();
                double nitrate = trace.field(day, Cell.NITRATE, column, layer);
                double y = frame.y(Ground.top_in(layer));
                for (int j = 0; j < pieces.size(); j++) {
                    Ground.Piece p = pieces.get(j);
                    ink.rect(
                            frame.x(p.from_in()),
                            y,
                            p.width_in() * frame.perInchX(),
                            frame.y(Ground.bottom_in(layer)) - y,
                            "w" + shade);
                    int count = (int) Math.round(nitrate * p.share() / format.perNitrogenUnit_kgHa());
                    Scatter.marks(
                            dots, new Scatter.Cell(p, layer), count, Scatter.dotSeed(column, layer, j), frame, "h0");
                }
            }
        }
        double tall = Math.min(GROUND - 2, UP_PER_CM * trace.at(day, Daily.HEIGHT_CM));
        for (int row = 0; row < 2; row++) {
            double x = frame.x(ground.row_in(row));
            Roots.paths(trace, day, ground, ground.row_in(row), frame).forEach(d -> ink.path(d, "rt rt0"));
            ink.path(
                    Corn.plant(x, GROUND, tall, LEAF_SCALE, trace.at(day, Daily.COLLARS), trace.at(day, Daily.REP) > 0),
                    "pl");
        }
        ink.path(dots, "no3").rect(0, GROUND, WIDTH, DEEP, "k2f");
        return ink.close("svg").done();
    }
}
