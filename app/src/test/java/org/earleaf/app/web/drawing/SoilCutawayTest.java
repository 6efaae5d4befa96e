// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.ToySeason;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Facts of geometry that must hold on any day of a season. */
class SoilCutawayTest {
    private static final Zone ZONE = Fixture.MILL;
    private static final LocalDate PASS = LocalDate.of(2026, 4, 29);
    private static final SeasonTrace TRACE = ToySeason.run(ZONE, PASS, 70, 55);
    private static final SoilCutaway CUT = new SoilCutaway(ZONE, TRACE, 1, Format.US);
    private static final int[] DAYS = {0, 40, 59, 80, 121, 150, 214};
    private static final Pattern MARK = Pattern.compile("M(-?[0-9.]+) (-?[0-9.]+)h(\\d)");
    /** Half of a row column in each of its two bands; a quarter, a half and a quarter of the middle. */
    private static final double[][] SHARES = {{.5, .5}, {.25, .5, .25}};

    private record Place(double x, double y) {}

    private static String draw(int day) {
        return CUT.draw(day, "says", List.of(new SoilCutaway.Clearance("highboy clears 72 in", 183)))
                .html();
    }

    private static Element parsed(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(svg, e);
        }
    }

    private static List<Place> marks(String svg, String cls) {
        List<Place> marks = new ArrayList<>();
        NodeList paths = parsed(svg).getElementsByTagName("path");
        for (int k = 0; k < paths.getLength(); k++) {
            Element path = (Element) paths.item(k);
            if (path.getAttribute("class").equals(cls)) {
                Matcher m = MARK.matcher(path.getAttribute("d"));
                while (m.find()) {
                    marks.add(new Place(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
                }
            }
        }
        return marks;
    }

    private static List<Place> inTheGround(int day) {
        return marks(draw(day), "no3").stream()
                .filter(p -> p.y() > SoilCutaway.TOP)
                .toList();
    }

    @Test
    void a_dot_stands_for_a_quarter_pound_of_nitrate_an_acre() {
        assertThat(CUT.quantum_kgHa()).isCloseTo(Units.kgHa(.25), within(1e-12));
        for (int day : DAYS) {
            long due = 0;
            for (int column = 0; column < 2; column++) {
                for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                    double lbAc = Units.lbAc(TRACE.field(day, Cell.NITRATE, column, layer));
                    for (double share : SHARES[column]) {
                        due += Math.round(lbAc * share / .25);
                    }
                }
            }
            assertThat(inTheGround(day)).as("day %d", day).hasSize((int) due);
        }
    }

    @Test
    void dots_lie_in_the_layer_and_column_that_hold_the_nitrate() {
        int day = 121;
        List<Place> dots = inTheGround(day);
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            double top = SoilCutaway.TOP + 6 * Units.inches(SoilProfile.top_mm(layer));
            double bottom = SoilCutaway.TOP + 6 * Units.inches(SoilProfile.bottom_mm(layer));
            List<Place> here =
                    dots.stream().filter(p -> p.y() > top && p.y() < bottom).toList();
            // Rows at 15 and 45 in of 60, each with a band of 10 in: 10 to 20 and 40 to 50 in.
            long atRow = here.stream()
                    .map(p -> (p.x() - SoilCutaway.LEFT) / 6)
                    .filter(in -> in > 10 && in < 20 || in > 40 && in < 50)
                    .count();
            double row = Units.lbAc(TRACE.field(day, Cell.NITRATE, SeasonTrace.ROW, layer)) * 4;
            double middle = Units.lbAc(TRACE.field(day, Cell.NITRATE, SeasonTrace.MIDDLE, layer)) * 4;
            // Half a dot for each drawn piece: two at the row, three between.
            assertThat((double) atRow).as("row, layer %d", layer).isCloseTo(row, within(1.0));
            assertThat((double) (here.size() - atRow))
                    .as("middle, layer %d", layer)
                    .isCloseTo(middle, within(1.5));
        }
    }

    @Test
    void figures_by_foot_add_up_to_all_the_nitrate() {
        for (int day : DAYS) {
            double all = 0;
            double byFoot = 0;
            for (int column = 0; column < 2; column++) {
                for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                    all += TRACE.field(day, Cell.NITRATE, column, layer);
                }
                for (SoilCutaway.Foot foot : SoilCutaway.FEET) {
                    byFoot += CUT.nitrate(day, column, foot);
                }
            }
            assertThat(byFoot).isCloseTo(all, within(1e-9));
        }
    }

    @Test
    void what_lies_on_the_ground_at_the_row_is_drawn_within_3_in_of_it() {
        int day = TRACE.day(PASS);
        List<Place> lying = marks(draw(day), "no3").stream()
                .filter(p -> p.y() <= SoilCutaway.TOP)
                .toList();
        assertThat((double) lying.size()).isCloseTo(Units.lbAc(TRACE.surface(day, SeasonTrace.ROW)) * 4, within(1.0));
        assertThat(lying).allSatisfy(p -> {
            double back = (SoilCutaway.TOP - p.y()) / 46 * 72;
            double in = (p.x() - back - SoilCutaway.LEFT) / 6;
            assertThat(Math.min(Math.abs(in - 15), Math.abs(in - 45))).isLessThanOrEqualTo(3.1);
        });
    }

    @Test
    void dots_only_appear_or_vanish_and_never_move() {
        for (int k = 1; k < 40; k++) {
            StringBuilder fewer = new StringBuilder();
            StringBuilder more = new StringBuilder();
            Ground.Piece piece = new Ground.Piece(10, 20, .5);
            Scatter.Frame frame = new Scatter.Frame(64, 236, 6, 6);
            Scatter.marks(fewer, new Scatter.Cell(piece, 2), k, .3, frame, "h0");
            Scatter.marks(more, new Scatter.Cell(piece, 2), k + 1, .3, frame, "h0");
            assertThat(more.toString()).startsWith(fewer.toString());
        }
    }

    @Test
    void every_day_gives_clean_svg_styled_by_class_alone() {
        for (int day = 0; day < TRACE.days(); day++) {
            String svg = draw(day);
            parsed(svg);
            assertThat(svg).doesNotContain("NaN", "Infinity", "style=", " id=", "fill=", "stroke=");
        }
    }

    @Test
    void a_heap_of_nitrogen_doubles_what_a_dot_stands_for_on_every_day_alike() {
        SeasonTrace heap = ToySeason.run(ZONE, PASS, 70, 900);
        SoilCutaway cut = new SoilCutaway(ZONE, heap, 1, Format.US);
        assertThat(cut.quantum_kgHa()).isCloseTo(Units.kgHa(.5), within(1e-12));
        assertThat(marks(cut.draw(0, "says", List.of()).html(), "no3")).hasSizeLessThanOrEqualTo(2000);
    }

    @Test
    void corn_stands_at_a_quarter_of_its_height_against_the_soil() {
        int day = 150;
        double height_in = TRACE.at(day, SeasonTrace.Daily.HEIGHT_CM) / 2.54;
        assertThat(draw(day)).contains(Math.round(height_in) + " in</text>");
        Matcher bar = Pattern.compile("M42 ([0-9.]+)h12m-6 0V236").matcher(draw(day));
        assertThat(bar.find()).isTrue();
        assertThat(236 - Double.parseDouble(bar.group(1))).isCloseTo(height_in * 6 / 3.75, within(.06));
    }

    @Test
    void narrow_rows_fill_the_same_block() {
        Ground ground = new Ground(20, 10);
        double width = 0;
        double share = 0;
        for (int column = 0; column < 2; column++) {
            for (Ground.Piece p : ground.pieces(column)) {
                width += p.width_in();
                share += p.share();
            }
        }
        assertThat(width).isEqualTo(40);
        assertThat(share).isEqualTo(2);
    }
}
