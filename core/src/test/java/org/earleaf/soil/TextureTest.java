// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** The classes against their limits in the texture triangle (USDA Soil Survey Manual, chapter 3, from memory). */
class TextureTest {
    /** Sand across, clay up [%]. */
    private static final Map<Texture, String> TRIANGLE = Map.ofEntries(
            Map.entry(Texture.SAND, "90 10, 85 0, 100 0, 90 10"),
            Map.entry(Texture.LOAMY_SAND, "85 15, 90 10, 85 0, 70 0, 85 15"),
            Map.entry(Texture.SANDY_LOAM, "80 20, 85 15, 70 0, 50 0, 43 7, 52 7, 52 20, 80 20"),
            Map.entry(Texture.LOAM, "45 27, 23 27, 43 7, 52 7, 52 20, 45 27"),
            Map.entry(Texture.SILT_LOAM, "0 27, 23 27, 50 0, 20 0, 8 12, 0 12, 0 27"),
            Map.entry(Texture.SILT, "20 0, 8 12, 0 12, 0 0, 20 0"),
            Map.entry(Texture.SANDY_CLAY_LOAM, "45 35, 65 35, 80 20, 52 20, 45 27, 45 35"),
            Map.entry(Texture.CLAY_LOAM, "20 40, 45 40, 45 27, 20 27, 20 40"),
            Map.entry(Texture.SILTY_CLAY_LOAM, "0 40, 20 40, 20 27, 0 27, 0 40"),
            Map.entry(Texture.SANDY_CLAY, "45 55, 45 35, 65 35, 45 55"),
            Map.entry(Texture.SILTY_CLAY, "0 60, 0 40, 20 40, 0 60"),
            Map.entry(Texture.CLAY, "0 100, 0 60, 20 40, 45 40, 45 55, 0 100"));

    private static Geometry ground(Texture of) throws ParseException {
        return new WKTReader().read("POLYGON((" + TRIANGLE.get(of) + "))");
    }

    @Test
    void each_stands_for_the_middle_of_its_part_of_the_triangle() throws ParseException {
        for (Texture each : Texture.values()) {
            Point middle = ground(each).getCentroid();
            assertThat(each.sand_pct()).as(each.word()).isCloseTo(middle.getX(), within(.051));
            assertThat(each.clay_pct()).as(each.word()).isCloseTo(middle.getY(), within(.051));
        }
    }

    @Test
    void the_twelve_parts_fill_the_triangle_and_do_not_overlap() throws ParseException {
        double all = 0;
        for (Texture one : Texture.values()) {
            all += ground(one).getArea();
            for (Texture other : Texture.values()) {
                double shared = one == other
                        ? 0
                        : ground(one).intersection(ground(other)).getArea();
                assertThat(shared).as(one.word() + ", " + other.word()).isCloseTo(0, within(1e-9));
            }
        }
        assertThat(all).isCloseTo(100 * 100 / 2.0, within(1e-9));
    }

    @Test
    void the_middle_of_a_class_is_of_that_class() {
        for (Texture each : Texture.values()) {
            Horizon middle = new Horizon(
                    0, 300, each.sand_pct(), each.clay_pct(), 3, 6.5, Double.NaN, Horizon.Measured.NOT_GIVEN);
            assertThat(Texture.of(middle)).isEqualTo(each);
        }
    }

    @Test
    void a_word_is_found_however_it_is_written() {
        assertThat(Texture.findByWord(" Silty-Clay  Loam ")).contains(Texture.SILTY_CLAY_LOAM);
        assertThat(Texture.findByWord("gumbo")).isEmpty();
    }
}
