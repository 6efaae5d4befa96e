// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.bench.season.SeasonCase.PassOfDay;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.NitrogenPass;
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

/** The two cases: smooth made-up weather with a pass of every kind, to compare by; rough weather, to time by. */
final class Cases {
    private static final int YEAR = 2025;
    private static final Site SITE = new Site(41.5, -93, 300);
    private static final int WEATHERS = 30;

    private Cases() {}

    /**
     * The season on which the golden values of the season model are held: days 121 to 273, rain every fourth day. One
     * member for each placement and inhibitor, every third one on its own parameters.
     */
    static SeasonCase golden() {
        int first = 121;
        int days = 153;
        List<WeatherDay> weather = new ArrayList<>();
        for (int j = first; j < first + days; j++) {
            double mean = 11.0 - 14.0 * Math.cos(2 * Math.PI * (j - 22) / 365);
            double solar = 14.5 - 9.0 * Math.cos(2 * Math.PI * (j + 8) / 365);
            double rain = (j - first) % 4 != 2 ? 0 : (j - first) / 4 % 3 == 0 ? 14 : 9;
            double nan = Double.NaN;
            weather.add(new WeatherDay(
                    LocalDate.ofYearDay(YEAR, j),
                    mean + 6,
                    mean - 6,
                    rain,
                    rain > 0 ? 0.6 * solar : solar,
                    2,
                    nan,
                    nan,
                    nan));
        }
        SplittableRandom random = new SplittableRandom(3);
        List<ParameterSet> sets = new ArrayList<>();
        List<PassOfDay> passes = new ArrayList<>();
        for (Placement placement : Placement.values()) {
            for (Inhibitor inhibitor :
                    placement.ordinal() <= Placement.AMMONIA.ordinal() ? Inhibitor.values() : new Inhibitor[0]) {
                int m = sets.size();
                sets.add(m % 3 == 1 ? parameters(random) : ParameterSet.usual());
                passes.add(new PassOfDay(0, m, uan(10 + 5 * m, Placement.INCORPORATED, Inhibitor.NONE)));
                passes.add(new PassOfDay(50 + m % 7, m, uan(120 - 2 * m, placement, inhibitor)));
            }
        }
        Forcing forcing = Forcing.of(new WeatherSeries(weather), SITE);
        SeasonSetup setup = setup(LocalDate.ofYearDay(YEAR, first), LocalDate.ofYearDay(YEAR, first), 6000, 9);
        return new SeasonCase(setup, sets, List.of(forcing), new int[sets.size()], days, passes);
    }

    private static NitrogenPass uan(double nitrogen_kgHa, Placement placement, Inhibitor inhibitor) {
        return new NitrogenPass(nitrogen_kgHa, .5, .25, .25, placement, inhibitor);
    }

    /** 1 March to 30 September, 30 weathers from a seed, two passes. */
    static SeasonCase timed(int members) {
        LocalDate first = LocalDate.of(YEAR, 3, 1);
        int days = 214;
        SplittableRandom random = new SplittableRandom(1);
        List<Forcing> weather = new ArrayList<>();
        for (int k = 0; k < WEATHERS; k++) {
            weather.add(weather(first, days, random.split()));
        }
        List<ParameterSet> sets = new ArrayList<>();
        int[] weatherOf = new int[members];
        for (int m = 0; m < members; m++) {
            sets.add(parameters(random.split()));
            weatherOf[m] = m % WEATHERS;
        }
        List<PassOfDay> passes = List.of(
                new PassOfDay(65, -1, uan(45, Placement.INCORPORATED, Inhibitor.NONE)),
                new PassOfDay(111, -1, uan(120, Placement.ROW_BASE, Inhibitor.NONE)));
        return new SeasonCase(setup(first, first.plusDays(65), 9000, 2), sets, weather, weatherOf, days, passes);
    }

    private static Forcing weather(LocalDate first, int n, SplittableRandom random) {
        List<WeatherDay> days = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            LocalDate day = first.plusDays(k);
            double mean = 11 - 14 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 22) / 365) + random.nextDouble(-5, 5);
            double half = random.nextDouble(3, 9);
            double rain = random.nextDouble() < .3 ? -10 * Math.log(1 - random.nextDouble()) : 0;
            days.add(WeatherDay.of(day, mean + half, mean - half, rain));
        }
        return Forcing.of(new WeatherSeries(days), SITE);
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

    private static SeasonSetup setup(LocalDate first, LocalDate planted, double residue_kgHa, double soil_C) {
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
        return new SeasonSetup(
                first,
                new SeasonSetup.Crop(planted, Hybrid.ofMaturity(110), 8, .762, true),
                new SeasonSetup.Ground(soil, 13, 75, Double.NaN),
                new SeasonSetup.LastCrop(.5, residue_kgHa, 60, false),
                new SeasonSetup.Start(List.of(6., 5., 4., 3., 2., 1.5), Collections.nCopies(n, 2.0), soil_C));
    }
}
