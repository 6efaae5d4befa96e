// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.earleaf.field.PreviousCrop;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ScatterTest {
    private static final double BUSHEL = Units.KGHA_PER_BUAC * Units.DRY_SHARE_OF_TRADE_CORN;
    private static final TrialFarm FARM = new TrialFarm(
            "made up",
            new Site(42, -93, 300),
            SoilProfile.of(List.of(new TrialFarm.Earth(30, 20, 4, 1.3).between(0, 1500)), "made up", new ArrayList<>()),
            new WeatherSeries(List.of()));

    /** Corn after corn on a farm made up. */
    static SiteYear siteYear(Measured measured) {
        return new SiteYear(FARM, 2010, PreviousCrop.CORN, measured);
    }

    private static Held held(PreviousCrop after, double measured_buAc, double modelled_buAc) {
        double modelled = modelled_buAc * BUSHEL;
        return new Held(
                new SiteYear(FARM, 2010, after, Measured.flat(measured_buAc * BUSHEL)),
                new Modelled(new double[] {modelled, modelled, modelled}),
                Map.of(),
                Map.of(),
                0,
                0);
    }

    private static final Scatter YIELD = new Scatter(
            "Yield & more", "model", Axis.GRAIN, h -> h.at().measured().at(0), h -> h.known()
                    .at(0));

    private static Document drawn(Held... held) throws Exception {
        byte[] svg = YIELD.drawn(new Sample(List.of(held))).getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    /** The axis ends at 200: half of it across, three quarters upwards. */
    @Test
    void a_point_stands_where_the_axes_say() throws Exception {
        Document svg = drawn(held(PreviousCrop.SOYBEAN, 200, 200), held(PreviousCrop.CORN, 100, 150));
        Element point = (Element) svg.getElementsByTagName("circle").item(1);
        assertThat(point.getAttribute("cx")).isEqualTo(String.valueOf(Axis.LEFT + Axis.SIZE / 2));
        assertThat(point.getAttribute("cy")).isEqualTo(String.valueOf(Axis.TOP + Axis.SIZE / 4));
    }

    /** One of each stands in the legend. */
    @Test
    void rotations_differ_in_shape() throws Exception {
        Document svg = drawn(
                held(PreviousCrop.CORN, 90, 100),
                held(PreviousCrop.CORN, 80, 90),
                held(PreviousCrop.SOYBEAN, 150, 140));
        assertThat(svg.getElementsByTagName("circle").getLength()).isEqualTo(3);
        assertThat(svg.getElementsByTagName("path").getLength()).isEqualTo(2);
    }

    @Test
    void who_cannot_see_it_is_told_the_averages() throws Exception {
        Document svg = drawn(held(PreviousCrop.CORN, 100, 120), held(PreviousCrop.SOYBEAN, 200, 180));
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Yield & more");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                .contains("2 site-years", "150 bu/ac measured and 150 by the model", "correlation 1.00");
    }
}
