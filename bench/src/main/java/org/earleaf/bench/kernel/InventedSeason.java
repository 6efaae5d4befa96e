// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.kernel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonSetup;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.soil.Texture;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** A season from 1 March to 30 September on a silt loam with two passes; weather and members from a seed. */
final class InventedSeason {
    static final int DAYS = 214;
    private static final LocalDate FIRST = LocalDate.of(2025, 3, 1);
    private static final LocalDate PLANTED = LocalDate.of(2025, 5, 5);
    private static final LocalDate SIDEDRESSED = LocalDate.of(2025, 6, 20);
    private static final int WEATHERS = 30;

    private final List<Forcing> weather = new ArrayList<>();
    private final List<ParameterSet> sets = new ArrayList<>();
    private final SeasonSetup setup;

    InventedSeason(long seed, int members) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int k = 0; k < WEATHERS; k++) {
            weather.add(weather(random.split()));
        }
        for (int m = 0; m < members; m++) {
            sets.add(parameters(random.split()));
        }
        setup = setup();
    }

    int members() {
        return sets.size();
    }

    private static Forcing weather(SplittableRandom random) {
        List<WeatherDay> days = new ArrayList<>();
        for (int k = 0; k < DAYS; k++) {
            LocalDate day = FIRST.plusDays(k);
            double mean = 11 - 14 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 22) / 365) + random.nextDouble(-5, 5);
            double half = random.nextDouble(3, 9);
            double rain = random.nextDouble() < .3 ? -10 * Math.log(1 - random.nextDouble()) : 0;
            days.add(WeatherDay.of(day, mean + half, mean - half, rain));
        }
        return Forcing.of(new WeatherSeries(days), new Site(41.5, -93, 300));
    }

    /** Every parameter that an ensemble perturbs, somewhere in the middle half of its range. */
    private static ParameterSet parameters(SplittableRandom random) {
        ParameterSet set = ParameterSet.usual();
        for (Parameter p : Parameter.values()) {
            if (p.isPerMember()) {
                double reach = .5 * Math.min(p.usual() - p.low(), p.high() - p.usual());
                set = set.clamped(p, p.usual() + reach * (2 * random.nextDouble() - 1));
            }
        }
        return set;
    }

    private static SeasonSetup setup() {
        List<SoilWater> water = new ArrayList<>();
        List<Double> density = new ArrayList<>();
        List<Double> om = List.of(3.5, 3.5, 2.8, 1.5, .8, .4);
        for (double o : om) {
            SoilWater w = SoilWater.ofTexture(20, 24, o);
            water.add(w);
            density.add(w.bulkDensity_gcm3());
        }
        int n = SoilProfile.LAYERS;
        SoilProfile soil = new SoilProfile(
                water, density, om, Collections.nCopies(n, 6.5), Collections.nCopies(n, 18.0), Texture.SILT_LOAM);
        List<Double> nitrate = List.of(6., 5., 4., 3., 2., 1.5);
        return new SeasonSetup(
                FIRST,
                new SeasonSetup.Crop(PLANTED, Hybrid.ofMaturity(110), 8, .762, true),
                new SeasonSetup.Ground(soil, 13, 75, Double.NaN),
                new SeasonSetup.LastCrop(.5, 9000, 60, false),
                new SeasonSetup.Start(nitrate, Collections.nCopies(n, 2.0), 2));
    }

    /** All members side by side. */
    SeasonRun together() {
        int[] weatherOf = new int[members()];
        for (int m = 0; m < weatherOf.length; m++) {
            weatherOf[m] = m % WEATHERS;
        }
        return finish(SeasonRun.start(setup, sets, weather, weatherOf));
    }

    /** One member by itself. */
    SeasonRun alone(int m) {
        return finish(SeasonRun.start(setup, sets.get(m), weather.get(m % WEATHERS)));
    }

    private static SeasonRun finish(SeasonRun run) {
        run.stepTo(PLANTED);
        run.applyAll(new NitrogenPass(45, .5, .25, .25, Placement.INCORPORATED, Inhibitor.NONE));
        run.stepTo(SIDEDRESSED);
        run.applyAll(new NitrogenPass(120, .5, .25, .25, Placement.ROW_BASE, Inhibitor.NONE));
        run.stepTo(FIRST.plusDays(DAYS));
        return run;
    }
}
