// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonSetup;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Forcing;

/**
 * Members of one zone with their weather and passes: what all contenders compute.
 *
 * @param weatherOf index into {@code weather} by member
 * @param days length of the season
 */
record SeasonCase(
        SeasonSetup setup,
        List<ParameterSet> sets,
        List<Forcing> weather,
        int[] weatherOf,
        int days,
        List<PassOfDay> passes) {
    /** A pass before the weather of a day, on one member or (-1) on all. */
    record PassOfDay(int day, int member, NitrogenPass pass) {}

    /** Names of {@link #results}, for messages. */
    static final List<String> RESULTS = List.of(
            "yield",
            "shoot",
            "shoot nitrogen",
            "root nitrogen",
            "nitrate left",
            "ammonium left",
            "water left",
            "transpiration",
            "evaporation",
            "on leaves",
            "runoff",
            "drainage",
            "leached",
            "denitrified",
            "volatilised",
            "mineralised",
            "taken back",
            "residue",
            "height",
            "day of silk",
            "day short of nitrogen");

    int members() {
        return sets.size();
    }

    /** All members side by side, before the first day. */
    SeasonRun start() {
        return SeasonRun.start(setup, sets, weather, weatherOf);
    }

    /** All members side by side, at the end of the season. */
    SeasonRun together() {
        SeasonRun run = start();
        for (int day = 0; day < days; day++) {
            step(run, day);
        }
        return run;
    }

    /** One day of all members: passes, then weather. */
    void step(SeasonRun run, int day) {
        applyPasses(run, day);
        run.step();
    }

    void applyPasses(SeasonRun run, int day) {
        for (PassOfDay p : passes) {
            if (p.day() == day && p.member() < 0) {
                run.applyAll(p.pass());
            } else if (p.day() == day) {
                run.apply(p.member(), p.pass());
            }
        }
    }

    SeasonRun startAlone(int m) {
        return SeasonRun.start(setup, sets.get(m), weather.get(weatherOf[m]));
    }

    /** Member {@code m} by itself. */
    SeasonRun alone(int m) {
        SeasonRun run = startAlone(m);
        for (int day = 0; day < days; day++) {
            for (PassOfDay p : passes) {
                if (p.day() == day && (p.member() < 0 || p.member() == m)) {
                    run.applyAll(p.pass());
                }
            }
            run.step();
        }
        return run;
    }

    /** What is compared, in the order of {@link #RESULTS}. */
    static double[] results(SeasonRun run, int m) {
        List<Double> all = new ArrayList<>();
        all.add(run.yield(m).grain_kgHa());
        all.add(run.shoot_kgHa(m));
        all.add(run.shootN_kgHa(m));
        all.add(run.now(m, Daily.ROOT_N));
        all.add(field(run, m, Cell.NITRATE));
        all.add(field(run, m, Cell.AMMONIUM));
        all.add(run.water_mm(m));
        for (Daily sum : List.of(
                Daily.TRANSPIRATION,
                Daily.EVAPORATION,
                Daily.INTERCEPTION,
                Daily.RUNOFF,
                Daily.DRAINAGE,
                Daily.LEACHED,
                Daily.DENITRIFIED,
                Daily.VOLATILISED,
                Daily.MINERALISED,
                Daily.TAKEN_BACK,
                Daily.RESIDUE_NET)) {
            all.add(run.now(m, sum));
        }
        all.add(run.height_cm(m));
        all.add((double) run.silkDay(m));
        all.add((double) run.shortDay(m));
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double field(SeasonRun run, int m, Cell what) {
        double row = run.setup().rowShare();
        double sum = 0;
        for (int i = 0; i < SoilProfile.LAYERS; i++) {
            sum += row * run.now(m, what, 0, i) + (1 - row) * run.now(m, what, 1, i);
        }
        return sum;
    }
}
