// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;

/**
 * A season stepped phase by phase with a clock between, for measuring where the time goes; the kernel itself carries no
 * clock. The order of the phases is stated a second time here, so whoever uses this must hold its order to that
 * of {@link SeasonRun}. No water table, no irrigation.
 */
public final class PhaseClock {
    /** What is done by day, until the next mark. */
    private interface Phase {
        void step(int day);
    }

    private final SeasonRun run;
    private final Today today;
    private final List<Forcing> weather;
    private final int[] weatherOf;
    private final List<String> names = new ArrayList<>();
    private final List<Phase> phases = new ArrayList<>();
    private int day;

    /** Time of each phase on the day stepped last [ns], in the order of {@link #names}. */
    private final long[] spent;

    public PhaseClock(SeasonSetup setup, List<ParameterSet> sets, List<Forcing> weather, int[] weatherOf) {
        this.weather = weather;
        this.weatherOf = weatherOf;
        run = SeasonRun.start(setup, sets, weather, weatherOf);
        SeasonSite site = run.site();
        SeasonState s = run.state();
        today = run.today();
        Phenology phenology = new Phenology(site, s, today);
        SoilTemperature temperature = new SoilTemperature(site, s, today);
        Roots roots = new Roots(site, s, today);
        Rainfall rainfall = new Rainfall(site, s, today);
        SoilWaterFlow flow = new SoilWaterFlow(site, s, today);
        SurfaceNitrogen surface = new SurfaceNitrogen(site, s, today);
        Residue residue = new Residue(site, s, today);
        SoilNitrogen soil = new SoilNitrogen(site, s, today);
        Evapotranspiration evapotranspiration = new Evapotranspiration(site, s, today);
        Growth growth = new Growth(site, s, today);
        CropNitrogen crop = new CropNitrogen(site, s, today);
        phase("reading the weather", this::readWeather);
        phase("stage and leaf", phenology::step);
        phase("soil temperature", d -> temperature.step());
        phase("roots", d -> roots.step());
        phase("rain on leaves and ground", d -> rainfall.step());
        phase("flow of water and solutes", d -> flow.enter());
        phase("surface nitrogen", d -> surface.wash());
        phase("flow of water and solutes", d -> flow.step());
        phase("roots", d -> roots.countWetDays());
        phase("surface nitrogen", d -> surface.transform());
        phase("residue", d -> residue.step());
        phase("soil nitrogen", d -> soil.step());
        phase("evaporation, transpiration", d -> evapotranspiration.step());
        phase("growth", d -> ifUp(growth::step, d));
        phase("uptake", d -> ifUp(crop::step, d));
        spent = new long[phases.size()];
    }

    private void phase(String name, Phase phase) {
        names.add(name);
        phases.add(phase);
    }

    private void ifUp(Phase phase, int d) {
        if (today.anyUp) {
            phase.step(d);
        }
    }

    /** As a season run reads it. */
    private void readWeather(int d) {
        for (int m = 0; m < weatherOf.length; m++) {
            today.read(m, weather.get(weatherOf[m]), d);
        }
    }

    /** To put passes on; it is stepped here and not by itself. */
    public SeasonRun run() {
        return run;
    }

    /** One day. */
    public void step() {
        long before = System.nanoTime();
        for (int k = 0; k < spent.length; k++) {
            phases.get(k).step(day);
            long after = System.nanoTime();
            spent[k] = after - before;
            before = after;
        }
        day++;
    }

    /** How many pieces are timed; a phase may be of several. */
    public int pieces() {
        return spent.length;
    }

    /** Time of a piece on the day stepped last [ns], the price of a clock with it. */
    public long spent_ns(int piece) {
        return spent[piece];
    }

    /** What pieces took, added up by phase in the order of the day. */
    public Map<String, Double> byPhase(double[] ofPieces) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (int k = 0; k < ofPieces.length; k++) {
            all.merge(names.get(k), ofPieces[k], Double::sum);
        }
        return all;
    }

    /** All that is carried from day to day. */
    public boolean isAs(SeasonRun other) {
        return Arrays.equals(run.state().snapshot(day), other.snapshot());
    }
}
