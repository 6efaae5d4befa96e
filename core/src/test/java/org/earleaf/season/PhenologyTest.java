// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Stage, leaf area and height against extension tables and their own worked examples. */
class PhenologyTest {

    private static double gddOfFahrenheit(double tmax, double tmin) {
        return Phenology.gdd(Units.celsius(tmax), Units.celsius(tmin));
    }

    /** Growing degree days 86/50: worked examples of Purdue and Ohio State extension. */
    @Test
    void growing_degree_days_clamp_both_temperatures() {
        assertThat(gddOfFahrenheit(80, 60)).isCloseTo(20.0, within(1e-9));
        assertThat(gddOfFahrenheit(90, 48)).isCloseTo(18.0, within(1e-9));
        assertThat(gddOfFahrenheit(48, 40)).isCloseTo(0, within(1e-9));
    }

    /** R. L. Nielsen's own example: 785 °F d with emergence at 120 is V8.1. */
    @Test
    void leaf_collars_follow_thermal_time() {
        assertThat(Phenology.collarsAt(785, 120, 82, 50, 18.5)).isCloseTo(8.1, within(.05));
        assertThat(Phenology.collarsAt(1200, 115, 82, 50, 18.5)).isCloseTo(15.3, within(.05));
        assertThat(Phenology.collarsAt(935, 115, 82, 50, 18.5)).isCloseTo(10.0, within(1e-9));
    }

    /** Regressions of silking and black layer on maturity (eastern Corn Belt, from memory), RM 110. */
    @Test
    void maturity_gives_silk_black_layer_and_leaf_number() {
        SeasonSetup.Calendar marks = SyntheticSeason.zone().setup().calendar();
        assertThat(marks.silk()).isCloseTo(1360.8, within(.1));
        assertThat(marks.blackLayer()).isCloseTo(2642.2, within(.1));
        assertThat(marks.collarsAtTassel()).isCloseTo(18.5, within(.1));
    }

    /** Purdue, quoting Nielsen et al. 2002: a 2700 rating planted on 31 May needs "less than 2500". */
    @Test
    void late_planting_brings_black_layer_forward() {
        double rm = (2700 + 15.388) / 24.16;
        SeasonSetup late = SyntheticSeason.zone().rm(rm).planted(151).late().setup();
        assertThat(late.calendar().blackLayer()).isCloseTo(2496, within(1.0));
    }

    /** Wisconsin and High Plains stage tables for maturity near 100 d: VT and R6 within 100, R2 to R5 within 230. */
    @Test
    void stages_of_a_100_day_hybrid_lie_between_two_published_tables() {
        SeasonSetup.Calendar marks = SyntheticSeason.zone().rm(100).setup().calendar();
        double span = marks.blackLayer() - marks.silk();
        assertThat(marks.silk() - 25).isCloseTo(1200, within(100.0));
        assertThat(marks.blackLayer()).isCloseTo(2400, within(100.0));
        assertThat(marks.silk() + .33 * span).isCloseTo(1550, within(230.0));
        assertThat(marks.silk() + .43 * span).isCloseTo(1680, within(230.0));
        assertThat(marks.silk() + .63 * span).isCloseTo(1920, within(230.0));
    }

    /** Mississippi State: V6 14 to 20 in; above V8 common practice, no source. */
    @Test
    void height_follows_collars() {
        assertThat(Phenology.height_cm(6, 18.5)).isCloseTo(43, within(1.0));
        assertThat(Phenology.height_cm(11, 18.5)).isCloseTo(119, within(1.0));
        assertThat(Phenology.height_cm(18.5, 18.5)).isEqualTo(260);
        assertThat(Units.inches(10 * Phenology.height_cm(5, 18.5))).isBetween(10.0, 14.0);
    }

    @Test
    void height_never_falls_with_collars_whatever_the_hybrid() {
        for (double tassel = 11.5; tassel < 20; tassel += .5) {
            double last = -1;
            for (double v = 0; v <= 20; v += .05) {
                double h = Phenology.height_cm(v, tassel);
                assertThat(h).isGreaterThanOrEqualTo(last);
                last = h;
            }
        }
    }

    /** Own construct inside the peak of 5 to 6 measured by Suyker & Verma in irrigated Nebraska maize. */
    @Test
    void leaf_area_peaks_at_silk_and_fades() {
        double[][] expected = {{600, .463}, {887, 2.56}, {935, 3.04}, {1360.76, 5.00}};
        for (double[] e : expected) {
            assertThat(Phenology.leafArea(e[0], 0, 115, 1360.76, 5)).isCloseTo(e[1], within(.01));
        }
        assertThat(Phenology.leafArea(2700, 1, 115, 1360.76, 5)).isCloseTo(1.25, within(.01));
        assertThat(Phenology.leafArea(100, 0, 115, 1360.76, 5)).isEqualTo(0);
    }
}
