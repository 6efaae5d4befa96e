// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.junit.jupiter.api.Test;

/** Rates in soil against incubations and the Kentucky extension table of nitrate after 3 and 6 weeks. */
class SoilNitrogenTest {

    private static final double[] SILT_LOAM = {.110, .305, .479};

    private static double fw(double theta, double[] soil) {
        return SoilNitrogen.moisture(theta, soil[0], 1 / soil[0], 1 / (soil[1] - soil[0]), 1 / soil[2]);
    }

    @Test
    void microbes_work_best_near_field_capacity_and_less_when_air_runs_short() {
        double[][] expected = {{.055, .200}, {.110, .400}, {.20, .708}, {.2855, 1}, {.305, 1}, {.40, .685}};
        for (double[] e : expected) {
            assertThat(fw(e[0], SILT_LOAM)).isCloseTo(e[1], within(.001));
        }
        assertThat(fw(.103, new double[] {.050, .103, .462})).isCloseTo(1, within(.001));
    }

    private static OneDay ground(double ph, ParameterSet set) {
        return new OneDay(SyntheticSeason.soil(.20, .24, SyntheticSeason.OM, ph, 18), set).bare();
    }

    private static final ParameterSet NO_TAKE_BACK = SyntheticSeason.PROTOTYPE.with(Parameter.TAKE_BACK, 0);

    /** 5000 kg of organic nitrogen in the top layer of both columns, at field capacity. */
    private static double mineralised(double ph, double t_C) {
        OneDay day = ground(ph, SyntheticSeason.PROTOTYPE).warm(t_C);
        day.state.organic[0] = 5000;
        day.state.organic[1] = 5000;
        day.soilNitrogen().step();
        return day.ledger(Ledger.MINERALISED);
    }

    /** Half of it at pH 5.0, and half of it 10 °C colder; the size fitted to measured corn (bench/trials). */
    @Test
    void organic_matter_gives_by_warmth_and_acidity() {
        double usual = 5000 * Parameter.MINERALISATION.usual();
        assertThat(usual).isBetween(.3, .75);
        assertThat(mineralised(6.5, 25)).isCloseTo(usual, within(1e-9));
        assertThat(mineralised(5.0, 25)).isCloseTo(.5 * usual, within(1e-9));
        assertThat(mineralised(6.5, 15)).isCloseTo(.5 * usual, within(1e-9));
    }

    @Test
    void half_of_urea_in_warm_moist_soil_is_hydrolysed_in_two_days() {
        OneDay day = ground(6.5, SyntheticSeason.PROTOTYPE);
        int second = day.state.at(0, 1);
        day.state.urea[second] = 100;
        day.state.anyUrea = true;
        day.soilNitrogen().step();
        day.soilNitrogen().step();
        assertThat(100 - day.state.urea[second]).isCloseTo(50.3, within(.1));
    }

    /** 10 kg/ha above the background at 25 °C: .375 of it to soil organic matter (Stevens et al. 2005 for the size). */
    @Test
    void soil_takes_its_share_before_nitrate_forms() {
        OneDay day = ground(6.5, SyntheticSeason.PROTOTYPE);
        day.state.ammonium[0] += 10;
        double before = day.state.ammonium[0];
        day.soilNitrogen().step();
        assertThat(before - day.state.ammonium[0]).isCloseTo(1.219, within(.002));
        assertThat(day.state.organic[0]).isCloseTo(.375, within(.002));
        assertThat(day.state.nitrate[0]).isCloseTo(.844, within(.002));
    }

    /** The two steps in one another's wake within the day, as the closed form has them; take-back off. */
    @Test
    void nitrate_after_three_and_six_weeks_at_16_degrees_follows_the_closed_form() {
        double[][] cases = {
            // urea share, ammonium share, inhibitor, ammonia band, nitrate at 21 and 42 d
            {1, 0, 0, 0, 48.9, 79.6},
            {.5, .25, 0, 0, 64.6, 85.9},
            {0, 1, 0, 0, 60.5, 84.4},
            {0, 1, 1, 0, 37.5, 71.3},
            {0, 1, 0, 1, 24.6, 68.2},
            {0, 1, 1, 1, 14.1, 58.6},
        };
        for (double[] e : cases) {
            assertThat(closedForm(e, 21)).isCloseTo(e[4], within(.3));
            assertThat(closedForm(e, 42)).isCloseTo(e[5], within(.3));
        }
    }

    private static double closedForm(double[] e, int days) {
        double urea = 100 * e[0];
        double ammonium = 100 * e[1];
        double nitrate = 100 - urea - ammonium;
        double kn = .09 * SoilTemperature.q10(16, SoilTemperature.LN_22, 25);
        double kh = .35 * SoilTemperature.q10(16, SoilTemperature.LN_2, 25);
        double heat = 0;
        int parts = 200;
        for (int d = 0; d < days; d++) {
            double slowed = (e[2] > 0 ? SoilNitrogen.inhibition(heat) : 1) * (e[3] > 0 ? SoilNitrogen.bandLag(d) : 1);
            for (int part = 0; part < parts; part++) {
                double h = urea * Lanes.lost(kh / parts);
                double n = ammonium * Lanes.lost(kn * slowed / parts);
                urea -= h;
                ammonium += h - n;
                nitrate += n;
            }
            heat += 16;
        }
        return nitrate;
    }

    /**
     * Kentucky extension table: per cent of fertiliser nitrogen that is nitrate after 3 and 6 weeks; within 9 points, 10
     * for urea under an inhibitor. The model day by day through its own steps, take-back off.
     */
    @Test
    void fertiliser_becomes_nitrate_as_the_kentucky_table_says() {
        assertNitrate(pass(1, 0, 0, Placement.MID_INJECT, Inhibitor.NONE), 50, 75, 9);
        assertNitrate(pass(.5, .25, .25, Placement.MID_INJECT, Inhibitor.NONE), 60, 80, 9);
        assertNitrate(pass(0, .5, .5, Placement.MID_INJECT, Inhibitor.NONE), 80, 90, 9);
        assertNitrate(pass(0, 1, 0, Placement.AMMONIA, Inhibitor.NONE), 20, 65, 9);
        assertNitrate(pass(0, 1, 0, Placement.AMMONIA, Inhibitor.NITRIFICATION), 10, 50, 9);
        assertNitrate(pass(1, 0, 0, Placement.MID_INJECT, Inhibitor.NITRIFICATION), 30, 70, 10);
    }

    private static NitrogenPass pass(double urea, double ammonium, double nitrate, Placement where, Inhibitor with) {
        return new NitrogenPass(100, urea, ammonium, nitrate, where, with);
    }

    private static void assertNitrate(NitrogenPass pass, double threeWeeks, double sixWeeks, double points) {
        OneDay day = ground(6.5, NO_TAKE_BACK).warm(16);
        new Applying(day.site, day.state).nitrogen(0, pass);
        SoilNitrogen soil = day.soilNitrogen();
        for (int d = 1; d <= 42; d++) {
            soil.step();
            double percent = 0;
            for (int k = 0; k < SeasonState.CELLS; k++) {
                percent += day.site.share[k & 1] * day.state.nitrate[k];
            }
            if (d == 21) {
                assertThat(percent).as("%s, 3 weeks", pass).isCloseTo(threeWeeks, within(points));
            } else if (d == 42) {
                assertThat(percent).as("%s, 6 weeks", pass).isCloseTo(sixWeeks, within(points));
            }
        }
    }

    /** By hand at 0.055 a day, with which it was 3 to 5 % a day in June. */
    @Test
    void saturated_soil_loses_nitrate_by_warmth() {
        double[][] warm = {{25, 5.35}, {20, 3.81}, {15, 2.71}};
        for (double[] e : warm) {
            double k = SoilNitrogen.denitrification(.055, 1, 4) * SoilTemperature.q10(e[0], SoilTemperature.LN_2, 25);
            assertThat(100 * Lanes.lost(k)).isCloseTo(e[1], within(.05));
        }
        assertThat(100 * Lanes.lost(SoilNitrogen.denitrification(.055, .75, 4))).isCloseTo(1.37, within(.05));
        assertThat(100 * Lanes.lost(SoilNitrogen.denitrification(.055, .80, 4))).isCloseTo(2.41, within(.05));
        assertThat(SoilNitrogen.denitrification(.055, .60, 4)).isEqualTo(0);
    }

    /**
     * Kentucky and Illinois extension: 3 to 5 % of nitrate a day in saturated June soil. Shortfall of the model since it was
     * fitted to measured corn: 2.8 % at 25 °C, 2.0 % at 20 °C, half of what is published.
     */
    @Test
    void saturated_june_soil_loses_no_more_than_published_and_at_least_a_third_of_it() {
        double most = 100 * Lanes.lost(Parameter.DENITRIFICATION.usual());
        double june =
                100 * Lanes.lost(Parameter.DENITRIFICATION.usual() * SoilTemperature.q10(20, SoilTemperature.LN_2, 25));
        assertThat(most).isLessThan(5);
        assertThat(june).isBetween(5 / 3., 5.);
    }
}
