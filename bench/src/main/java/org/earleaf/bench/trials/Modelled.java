// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;
import java.util.function.DoubleFunction;
import org.earleaf.bench.response.MonotoneCubic;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonRun;
import org.earleaf.weather.WeatherSeries;

/** Dry grain by rate of nitrogen as the season model has it, for one season or as the mean over many. */
final class Modelled {
    static final double[] RATES_KGHA = {0, 20, 40, 60, 80, 100, 120, 140, 160, 180, 200, 220, 240, 260, 280};

    private final MonotoneCubic grain_kgHa;

    /** @param grain_kgHa by rate, equally far apart from none to {@link Money#MOST_KGHA} */
    Modelled(double[] grain_kgHa) {
        this.grain_kgHa = new MonotoneCubic((double) Money.MOST_KGHA / (grain_kgHa.length - 1), grain_kgHa);
    }

    /** The season known to its end, on plots that keep their rate. */
    static Modelled known(SiteYear at) {
        return new Modelled(Plots.of(at, RATES_KGHA).grain_kgHa());
    }

    /**
     * Every member of the field's ensemble on a day of advice, weather ahead not known, the rest by one rate then. A
     * farmer asks, whose field was given the usual nitrogen in the years before.
     */
    static double[][] members(SiteYear at, Situation when) {
        LocalDate on = when.on(at);
        WeatherSeries known = at.farm().known(on);
        ZoneEnsemble ensemble =
                ZoneEnsemble.of(at.farmKnowing(known, when.given_kgHa()), at.zone(), on, false, at.pastYields(known));
        return byRate(when, rate -> ensemble);
    }

    /** The same at planting where each rate is a plot's that has had it for years, as in the trials. */
    static double[][] membersOfPlots(SiteYear at) {
        LocalDate on = Situation.PLANTING.on(at);
        WeatherSeries known = at.farm().known(on);
        return byRate(Situation.PLANTING, rate -> ZoneEnsemble.of(at.farmKeeping(known, rate), at.zone(), on, false));
    }

    private static double[][] byRate(Situation when, DoubleFunction<ZoneEnsemble> field) {
        double[][] grain = new double[ZoneEnsemble.MEMBERS][RATES_KGHA.length];
        for (int k = 0; k < RATES_KGHA.length; k++) {
            ZoneEnsemble ensemble = field.apply(RATES_KGHA[k]);
            SeasonRun run = ensemble.members();
            run.applyAll(Plots.uan(RATES_KGHA[k], when.placement()));
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

    /** Smooth between the rates that were run, and never beyond them. */
    double at(double rate_kgHa) {
        return grain_kgHa.at(rate_kgHa);
    }
}
