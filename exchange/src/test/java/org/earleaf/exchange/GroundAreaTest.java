// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class GroundAreaTest {
    /**
     * Area of a cell of the ellipsoid between two parallels (Snyder 1987, p. 16 and 25, from memory): b^2/2 dlon
     * [sin/(1 - e2 sin2) + ln((1 + e sin)/(1 - e sin))/(2e)].
     */
    private static double exact_ha(double south, double north, double degreesWide) {
        double e2 = 0.00669437999014;
        double e = Math.sqrt(e2);
        double b2 = 6_378_137.0 * 6_378_137.0 * (1 - e2);
        return b2 / 2 * Math.toRadians(degreesWide) * (zone(north, e) - zone(south, e)) / 10_000;
    }

    private static double zone(double latitude, double e) {
        double s = Math.sin(Math.toRadians(latitude));
        return s / (1 - e * e * s * s) + Math.log((1 + e * s) / (1 - e * s)) / (2 * e);
    }

    private static double drawn_ha(double south, double north, double width) {
        Geometry cell = new GeometryFactory().toGeometry(new Envelope(-90.5, -90.5 + width, south, north));
        return GroundArea.of_ha(cell);
    }

    @Test
    void a_quarter_section_is_right_to_a_hundred_thousandth() {
        double exact = exact_ha(41.5, 41.5073, 0.0097);
        assertThat(exact).isBetween(60.0, 70.0);
        assertThat(drawn_ha(41.5, 41.5073, 0.0097)).isCloseTo(exact, within(1e-5 * exact));
    }

    @Test
    void a_township_is_right_to_a_thousandth() {
        double exact = exact_ha(30, 30.1, 0.1);
        assertThat(drawn_ha(30, 30.1, 0.1)).isCloseTo(exact, within(1e-3 * exact));
    }
}
