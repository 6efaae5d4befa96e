// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.WeatherSeries;

/**
 * Dry grain by rate of nitrogen as the season model has it, for one season or as the mean over many.
 *
 * @param grain_kgHa by rate of {@link #RATES_KGHA}
 */
record Modelled(double[] grain_kgHa) {
    static final double[] RATES_KGHA = {0, 20, 40, 60, 80, 100, 120, 140, 160, 180, 200, 220, 240, 260, 280};
    private static final double STEP_KGHA = 20;

    /** The season known to its end, all nitrogen at planting, one set of parameters. */
    static Modelled known(SiteYear at, ParameterSet parameters) {
        WeatherSeries year = at.farm().weather().between(at.farm().weather().first(), at.last());
        ZoneSeason season = ZoneSeason.of(at.farmKnowing(year, 0), at.zone(), year, at.planted());
        Forcing weather = Forcing.of(
                at.farm().weather().between(season.setup().first(), at.last()),
                at.farm().site());
        int n = RATES_KGHA.length;
        SeasonRun run =
                SeasonRun.start(season.setup(), Collections.nCopies(n, parameters), List.of(weather), new int[n]);
        season.advance(run, at.planted());
        for (int k = 0; k < n; k++) {
            run.apply(k, uan(RATES_KGHA[k], Placement.INCORPORATED));
        }
        season.finish(run, at.last());
        double[] grain = new double[n];
        Arrays.setAll(grain, k -> run.yield(k).grain_kgHa());
        return new Modelled(grain);
    }

    /** Every member of the field's ensemble on a day of advice, weather ahead not known, the rest by one rate then. */
    static double[][] members(SiteYear at, Situation when) {
        LocalDate on = when.on(at);
        WeatherSeries known = at.farm().known(on);
        ZoneEnsemble ensemble = ZoneEnsemble.of(at.farmKnowing(known, when.given_kgHa()), at.zone(), on, false);
        double[][] grain = new double[ZoneEnsemble.MEMBERS][RATES_KGHA.length];
        for (int k = 0; k < RATES_KGHA.length; k++) {
            SeasonRun run = ensemble.members();
            run.applyAll(uan(RATES_KGHA[k], when.placement()));
            ensemble.finish(run);
            for (int m = 0; m < grain.length; m++) {
                grain[m][k] = run.yield(m).grain_kgHa();
            }
        }
        return grain;
    }

    static Modelled mean(double[][] members) {
        double[] mean = new double[RATES_KGHA.length];
        for (double[] member : members) {
            for (int k = 0; k < mean.length; k++) {
                mean[k] += member[k] / members.length;
            }
        }
        return new Modelled(mean);
    }

    private static NitrogenPass uan(double kgHa, Placement placement) {
        return new NitrogenPass(kgHa, .5, .25, .25, placement, Inhibitor.NONE);
    }

    /** Straight between the rates that were run. */
    double at(double rate_kgHa) {
        int k = Math.min(RATES_KGHA.length - 2, (int) (rate_kgHa / STEP_KGHA));
        double part = (rate_kgHa - RATES_KGHA[k]) / STEP_KGHA;
        return grain_kgHa[k] + part * (grain_kgHa[k + 1] - grain_kgHa[k]);
    }
}
