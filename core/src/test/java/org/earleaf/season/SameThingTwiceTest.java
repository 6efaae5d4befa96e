// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** What must come to the same, and what must not happen at all. Definitions; they need no source. */
class SameThingTwiceTest {
    private static final double SAME = 1e-9;

    private static void same(double a, double b, String what) {
        assertThat(a).as(what).isCloseTo(b, within(SAME * Math.max(1, Math.abs(b))));
    }

    private static void sameState(SeasonRun a, SeasonRun b, String what) {
        for (int k = 0; k < a.state().carried().size(); k++) {
            for (int n = 0; n < a.state().carried().get(k).length; n++) {
                same(a.state().carried().get(k)[n], b.state().carried().get(k)[n], what + ", array " + k);
            }
        }
    }

    private static NitrogenPass part(NitrogenPass whole, double share) {
        return new NitrogenPass(
                share * whole.nitrogen_kgHa(),
                whole.urea(),
                whole.ammonium(),
                whole.nitrate(),
                whole.placement(),
                whole.inhibitor());
    }

    @Test
    void two_passes_of_a_day_are_one_of_their_sum() {
        for (Placement placement : Placement.values()) {
            for (Inhibitor inhibitor : Inhibitor.values()) {
                NitrogenPass whole = new NitrogenPass(130, .5, .3, .2, placement, inhibitor);
                SeasonRun one = SyntheticSeason.zone().start(SyntheticSeason.weather());
                SeasonRun two = SyntheticSeason.zone().start(SyntheticSeason.weather());
                for (int d = 0; d < 120; d++) {
                    if (d == 40 || d == 43 || d == 47) {
                        one.applyAll(whole);
                        two.applyAll(part(whole, .3));
                        two.applyAll(part(whole, .7));
                    }
                    one.step();
                    two.step();
                }
                sameState(one, two, placement + " " + inhibitor);
            }
        }
    }

    /** The columns of a field whose rows are 1.02 m apart, and of one where they are 0.508 m apart, as one column each. */
    @Test
    void two_equal_columns_stay_equal_and_are_one_column() {
        EqualColumns narrow = new EqualColumns(.508);
        EqualColumns wide = new EqualColumns(1.02);
        for (int d = 0; d < narrow.days(); d++) {
            narrow.step(d);
            wide.step(d);
            for (int k = 0; k < SeasonState.LAYERS; k++) {
                for (EqualColumns field : List.of(narrow, wide)) {
                    for (double[] cells : field.cells()) {
                        same(cells[2 * k], cells[2 * k + 1], "day " + d + ", layer " + k);
                    }
                }
                for (int c = 0; c < narrow.cells().size(); c++) {
                    same(narrow.cells().get(c)[2 * k], wide.cells().get(c)[2 * k], "day " + d + ", layer " + k);
                }
            }
            same(narrow.state.shoot[0], wide.state.shoot[0], "shoot");
            same(narrow.state.shootN[0], wide.state.shootN[0], "shoot nitrogen");
            for (Ledger line : Ledger.values()) {
                same(narrow.state.ledger[line.ordinal()][0], wide.state.ledger[line.ordinal()][0], line.name());
            }
        }
        assertThat(narrow.state.shoot[0]).isGreaterThan(5000);
        assertThat(narrow.state.ledger[Ledger.VOLATILISED.ordinal()][0]).isPositive();
    }

    /** A season whose row and middle get the same water and hold the same roots, phase by phase as a run steps. */
    private static final class EqualColumns {
        private final SeasonSite site;
        final SeasonState state;
        private final Today today;
        private final Forcing weather = SyntheticSeason.weather();
        private final Phenology phenology;
        private final SoilTemperature temperature;
        private final Roots roots;
        private final Rainfall rainfall;
        private final SoilWaterFlow flow;
        private final SurfaceNitrogen surface;
        private final Residue residue;
        private final SoilNitrogen soil;
        private final Evapotranspiration evapotranspiration;
        private final Growth growth;
        private final CropNitrogen crop;

        EqualColumns(double rowSpacing_m) {
            site = new SeasonSite(SyntheticSeason.zone().rows(rowSpacing_m).setup(), List.of(ParameterSet.usual()));
            state = new SeasonState(1);
            today = new Today(1);
            phenology = new Phenology(site, state, today);
            temperature = new SoilTemperature(site, state, today);
            roots = new Roots(site, state, today);
            rainfall = new Rainfall(site, state, today);
            flow = new SoilWaterFlow(site, state, today);
            surface = new SurfaceNitrogen(site, state, today);
            residue = new Residue(site, state, today);
            soil = new SoilNitrogen(site, state, today);
            evapotranspiration = new Evapotranspiration(site, state, today);
            growth = new Growth(site, state, today);
            crop = new CropNitrogen(site, state, today);
            new Balance(site, state).start(0);
        }

        int days() {
            return weather.days();
        }

        List<double[]> cells() {
            return List.of(state.water, state.nitrate, state.ammonium, state.urea, state.organic);
        }

        void step(int d) {
            if (d == 0 || d == 50) {
                new Applying(site, state).nitrogen(0, SyntheticSeason.uan(80, Placement.BROADCAST));
            }
            today.tmax[0] = weather.tmax_C()[d];
            today.tmin[0] = weather.tmin_C()[d];
            today.tmean[0] = (today.tmax[0] + today.tmin[0]) / 2;
            today.rain[0] = weather.rain_mm()[d];
            today.solar[0] = weather.solar_MJm2()[d];
            today.et0[0] = weather.et0_mm()[d];
            phenology.step(d);
            temperature.step();
            roots.step();
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                double reach = (state.rootDepth[0] - org.earleaf.soil.SoilProfile.top_mm(i)) / site.dz[i];
                today.roots[2 * i] = Lanes.clamp(reach, 0, 1);
                today.roots[2 * i + 1] = today.roots[2 * i];
            }
            rainfall.step();
            double mean = site.share[0] * today.reaching[0] + site.share[1] * today.reaching[1];
            today.reaching[0] = mean;
            today.reaching[1] = mean;
            flow.enter();
            surface.wash();
            flow.step();
            surface.transform();
            residue.step();
            soil.step();
            evapotranspiration.step();
            growth.step(d);
            crop.step(d);
        }
    }

    @Test
    void in_frozen_dry_ground_no_nitrogen_changes_its_form() {
        List<WeatherDay> days = new ArrayList<>();
        for (int j = SyntheticSeason.FIRST; j < SyntheticSeason.FIRST + 60; j++) {
            days.add(WeatherDay.of(SyntheticSeason.date(j), -8, -20, 0));
        }
        Forcing frost = Forcing.of(new WeatherSeries(days), new Site(41.5, -93, 300));
        ParameterSet still = SyntheticSeason.PROTOTYPE;
        SeasonRun run =
                SeasonRun.start(SyntheticSeason.zone().soilTemperature(-1).setup(), still, frost);
        run.applyAll(new NitrogenPass(90, .5, .3, .2, Placement.BROADCAST, Inhibitor.NONE));
        run.applyAll(new NitrogenPass(90, .5, .3, .2, Placement.MID_INJECT, Inhibitor.BOTH));
        run.applyAll(new NitrogenPass(90, 0, 1, 0, Placement.AMMONIA, Inhibitor.NONE));
        double[] before = forms(run);
        for (int d = 0; d < 60; d++) {
            run.step();
            double[] now = forms(run);
            for (int k = 0; k < now.length; k++) {
                // Urea may sink in from the surface, which adds the same numbers in another order.
                assertThat(now[k]).as("form %d", k).isCloseTo(before[k], within(1e-11 * before[k]));
            }
        }
        for (Ledger line : List.of(
                Ledger.MINERALISED,
                Ledger.TAKEN_BACK,
                Ledger.RESIDUE_TAKEN,
                Ledger.RESIDUE_RELEASED,
                Ledger.DENITRIFIED,
                Ledger.VOLATILISED,
                Ledger.LEACHED)) {
            assertThat(run.ledger(line, 0)).as(line.name()).isEqualTo(0);
        }
    }

    /** Field sums of urea, alkaline, ammonium, nitrate, organic, residue and microbial nitrogen, wherever they lie. */
    private static double[] forms(SeasonRun run) {
        SeasonState s = run.state();
        double[] sum = new double[7];
        for (int k = 0; k < SeasonState.CELLS; k++) {
            double share = run.site().share[k & 1];
            sum[0] += share * s.urea[k];
            sum[2] += share * s.ammonium[k];
            sum[3] += share * s.nitrate[k];
            sum[4] += share * s.organic[k];
        }
        for (int c = 0; c < 2; c++) {
            sum[5] += run.site().share[c] * s.residueN[c];
            sum[6] += run.site().share[c] * s.microbes[c];
        }
        for (int p = 0; p < s.pools.length; p++) {
            double share = run.site().share[p / SeasonState.POOLS];
            sum[0] += share * s.pools[p].urea[0];
            sum[1] += share * s.pools[p].alkaline[0];
            sum[2] += share * s.pools[p].ammonium[0];
            sum[3] += share * s.pools[p].nitrate[0];
        }
        return sum;
    }

    @Test
    void what_lies_in_the_ground_or_is_nitrate_gives_no_ammonia() {
        for (long seed = 0; seed < 60; seed++) {
            RandomSeason season = new RandomSeason(seed);
            season.events.removeIf(e -> e instanceof Event.Nitrogen || e instanceof Event.Manured);
            SeasonRun run = SeasonRun.start(season.setup, season.parameters(1).get(0), season.weather());
            for (int d = 0; d < season.days; d++) {
                season.applyEvents(run);
                if (d % 25 == 5) {
                    NitrogenPass pass = season.pass();
                    boolean surface = !List.of(
                                    Placement.MID_INJECT,
                                    Placement.ROW_INJECT,
                                    Placement.INCORPORATED,
                                    Placement.AMMONIA)
                            .contains(pass.placement());
                    run.applyAll(surface ? new NitrogenPass(80, 0, 0, 1, pass.placement(), pass.inhibitor()) : pass);
                }
                run.step();
            }
            assertThat(run.ledger(Ledger.VOLATILISED, 0)).as("seed %d", seed).isEqualTo(0);
        }
    }

    /** 90 kg/ha dribbled at the row base of 30-in rows is 270 on the third of the ground that is the row. */
    @Test
    void an_amount_laid_in_one_column_is_larger_there_and_the_same_on_the_field() {
        for (Placement placement : Placement.values()) {
            SeasonRun run = SyntheticSeason.zone().start(SyntheticSeason.weather());
            double before = run.nitrogen_kgHa(0);
            double row = column(run, 0);
            run.applyAll(SyntheticSeason.uan(90, placement));
            assertThat(run.nitrogen_kgHa(0) - before).as(placement.word()).isCloseTo(90, within(1e-9));
            if (placement == Placement.ROW_BASE) {
                assertThat(column(run, 0) - row).isCloseTo(270, within(1e-9));
            }
        }
    }

    private static double column(SeasonRun run, int c) {
        double sum = run.balance().surface_kgHa(c, 0);
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            int k = run.state().at(c, i);
            sum += run.state().nitrate[k] + run.state().ammonium[k] + run.state().urea[k];
        }
        return sum;
    }

    @Test
    void a_trace_adds_its_columns_up_to_the_field() {
        SeasonRun run = SyntheticSeason.zone().start(SyntheticSeason.weather());
        SeasonTrace trace = new SeasonTrace(run.date(), 153, run.setup().rowShare());
        run.applyAll(SyntheticSeason.uan(120, Placement.ROW_BASE));
        for (int d = 0; d < 153; d++) {
            run.step();
            Tracing.record(run, 0, trace);
            double water = 0;
            for (int c = 0; c < SeasonTrace.COLUMNS; c++) {
                for (int i = 0; i < SeasonState.LAYERS; i++) {
                    water += trace.field(d, SeasonTrace.Cell.WATER, c, i);
                }
            }
            assertThat(water).isCloseTo(run.water_mm(0), within(1e-12 * water));
        }
        assertThat(trace.share(SeasonTrace.ROW) + trace.share(SeasonTrace.MIDDLE))
                .isCloseTo(1, within(1e-12));
        assertThat(Collections.max(List.of(trace.surface(0, 0), trace.surface(0, 1))))
                .isPositive();
    }
}
