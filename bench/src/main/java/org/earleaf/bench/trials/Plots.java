// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.FieldLevel;
import org.earleaf.season.parameter.FieldParameters;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.WeatherSeries;

/**
 * The plots of a trial side by side in a season that is known to its end: one member a rate, all nitrogen at planting,
 * and each plot with the past of having had that rate for years.
 */
record Plots(SiteYear at, double[] rates_kgHa, ZoneSeason season, List<ParameterSet> sets, Forcing weather) {
    static Plots of(SiteYear at, double... rates_kgHa) {
        List<ZoneSeason> each = new ArrayList<>();
        for (double rate : rates_kgHa) {
            WeatherSeries known =
                    at.farm().weather().between(at.farm().weather().first(), at.last());
            each.add(ZoneSeason.of(at.farmKeeping(known, rate), at.zone(), known, at.planted()));
        }
        ZoneSeason season = each.get(0);
        Forcing weather = Forcing.of(
                at.farm().weather().between(season.setup().first(), at.last()),
                at.farm().site());
        FieldLevel level = at.pastYields(at.farm().weather()).level();
        List<ParameterSet> sets =
                each.stream().map(plot -> level.applied(plot.parameters())).toList();
        return new Plots(at, rates_kgHa, season, sets, weather);
    }

    /** The same plots where other numbers than the usual ones hold for a field like any other. */
    Plots with(ParameterSet usual) {
        List<ParameterSet> each = Arrays.stream(rates_kgHa)
                .mapToObj(rate -> FieldParameters.of(usual, at.zone(), at.kept(rate)))
                .toList();
        return new Plots(at, rates_kgHa, season, each, weather);
    }

    /** A run about to step the day of planting, with the nitrogen on. */
    SeasonRun planted() {
        return given(Situation.PLANTING);
    }

    /** A run about to step the day that all nitrogen goes on, with it on. */
    private SeasonRun given(Situation when) {
        SeasonRun run = SeasonRun.start(season.setup(), sets, List.of(weather), new int[rates_kgHa.length]);
        season.advance(run, when.on(at));
        for (int k = 0; k < rates_kgHa.length; k++) {
            run.apply(k, uan(rates_kgHa[k], when.placement()));
        }
        return run;
    }

    /** Steps a run through the evening of a day. */
    void through(SeasonRun run, LocalDate day) {
        season.advance(run, day.plusDays(1));
    }

    /** Dry grain by plot [kg/ha], all nitrogen at planting. */
    double[] grain_kgHa() {
        return grain_kgHa(Situation.PLANTING);
    }

    /** The same with all of it given then. */
    double[] grain_kgHa(Situation when) {
        SeasonRun run = given(when);
        season.finish(run, at.last());
        double[] grain = new double[rates_kgHa.length];
        Arrays.setAll(grain, k -> run.yield(k).grain_kgHa());
        return grain;
    }

    static NitrogenPass uan(double kgHa, Placement placement) {
        return new NitrogenPass(kgHa, .5, .25, .25, placement, Inhibitor.NONE);
    }
}
