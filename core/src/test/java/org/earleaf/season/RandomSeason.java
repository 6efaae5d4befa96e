// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/**
 * A season drawn from a seed, far wilder than any field: frosts in July, 42 °C, floods, droughts, every placement and
 * inhibitor, manure, irrigation, tillage, a standing water table, any soil, spacing and maturity within range.
 */
final class RandomSeason {
    private static final LocalDate NEW_YEAR = LocalDate.of(2023, 1, 1);

    private final SplittableRandom random;
    final long seed;
    final SeasonSetup setup;
    final List<Event> events = new ArrayList<>();
    final int days;

    RandomSeason(long seed) {
        this.seed = seed;
        random = new SplittableRandom(seed);
        int first = between(55, 125);
        int planted = Math.min(180, first + between(0, 70));
        setup = setup(date(first), date(Math.max(85, planted)));
        days = between(120, 245);
        events();
    }

    private static LocalDate date(int doy) {
        return NEW_YEAR.plusDays(doy - 1);
    }

    private int between(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private SeasonSetup setup(LocalDate first, LocalDate planted) {
        boolean rated = chance(.2);
        double silk = between(1050, 1450);
        // Drawn one after the other: the order belongs to the seed.
        double maturity = between(75.0, 120.0);
        double population = between(5.0, 10.5);
        double rows = between(.38, 1.02);
        double black = rated ? silk + between(1000.0, 1350.0) : Double.NaN;
        var hybrid = new Hybrid("", maturity, rated ? silk : Double.NaN, black);
        var crop =
                new SeasonSetup.Crop(planted.isBefore(first) ? first : planted, hybrid, population, rows, chance(.5));
        SoilProfile soil = soil();
        double drain = List.of(3.0, 13.0, 25.0, 60.0).get(between(0, 3));
        double curve = between(55.0, 90.0);
        var lastCrop =
                new SeasonSetup.LastCrop(between(0.0, 1.0), between(0.0, 16000.0), between(10.0, 90.0), chance(.4));
        var start = new SeasonSetup.Start(layers(0, 60), layers(0, 30), between(-5.0, 18.0));
        double table = chance(.15) ? between(300.0, 1600.0) : Double.NaN;
        return new SeasonSetup(first, crop, new SeasonSetup.Ground(soil, drain, curve, table), lastCrop, start);
    }

    private List<Double> layers(double low, double high) {
        List<Double> list = new ArrayList<>();
        for (int i = 0; i < SoilProfile.LAYERS; i++) {
            list.add(between(low, high));
        }
        return list;
    }

    private SoilProfile soil() {
        List<Horizon> horizons = new ArrayList<>();
        double top = 0;
        double om = between(.1, 8);
        double ph = between(4.5, 8.5);
        while (top < 1524) {
            double bottom = top + between(100, 700);
            double clay = between(3.0, 60);
            double sand = between(0, Math.min(95, 100 - clay));
            double cec = chance(.5) ? Double.NaN : between(2, 50);
            double density = chance(.7) ? Double.NaN : between(.9, 1.9);
            horizons.add(new Horizon(
                    top, bottom, sand, clay, om, ph, cec, new Horizon.Measured(density, Double.NaN, Double.NaN)));
            om = Math.max(.1, om * between(.3, 1));
            top = bottom;
        }
        return SoilProfile.of(horizons, "random", new ArrayList<>());
    }

    /** Weather of a climate and its accidents; another one at every call. */
    Forcing weather() {
        double mean = between(4.0, 16.0);
        double swing = between(8.0, 18.0);
        double wetness = between(.05, .6);
        double storm = between(2.0, 25.0);
        boolean dewKnown = chance(.5);
        boolean sunKnown = chance(.5);
        double nan = Double.NaN;
        List<WeatherDay> list = new ArrayList<>();
        double warm = 0;
        boolean dry = false;
        for (int k = 0; k < days; k++) {
            LocalDate day = setup.first().plusDays(k);
            warm = .7 * warm + between(-4.0, 4.0);
            double accident = chance(.01) ? between(-25.0, 15.0) : 0;
            double tm = mean - swing * Math.cos(2 * Math.PI * (day.getDayOfYear() - 22) / 365) + warm + accident;
            double half = between(.25, 12.0);
            dry = chance(.03) != dry;
            double rain = !dry && chance(wetness) ? -storm * Math.log(1 - random.nextDouble()) : 0;
            rain += chance(.004) ? between(50.0, 300.0) : 0;
            double sun = sunKnown ? between(.5, 32.0) : nan;
            double wind = chance(.5) ? nan : between(0.0, 12.0);
            double dew = dewKnown ? tm - half + between(-8.0, 3.0) : nan;
            list.add(new WeatherDay(
                    day,
                    Math.min(50, tm + half),
                    Math.max(-50, Math.min(49, tm - half)),
                    rain,
                    sun,
                    wind,
                    nan,
                    nan,
                    dew));
        }
        return Forcing.of(new WeatherSeries(list), new Site(between(25.0, 55.0), -90, between(-50.0, 2500.0)));
    }

    /** Every parameter anywhere in its range; those on which members must agree drawn once. */
    List<ParameterSet> parameters(int members) {
        ParameterSet common = ParameterSet.usual();
        for (Parameter p : Parameter.values()) {
            if (!p.isPerMember() && chance(.5)) {
                boolean onOff = p.unit().equals("on/off");
                common = common.with(p, onOff ? between(0, 1) : between(p.low(), p.high()));
            }
        }
        List<ParameterSet> sets = new ArrayList<>();
        for (int m = 0; m < members; m++) {
            ParameterSet set = common;
            for (Parameter p : Parameter.values()) {
                if (p.isPerMember()) {
                    set = set.with(p, chance(.3) ? p.usual() : between(p.low(), p.high()));
                }
            }
            sets.add(set);
        }
        return sets;
    }

    private void events() {
        for (int n = between(0, 7); n > 0; n--) {
            events.add(new Event.Nitrogen(anyDay(), pass()));
        }
        for (int n = chance(.3) ? between(1, 20) : 0; n > 0; n--) {
            events.add(new Event.Water(anyDay(), between(1.0, 60.0)));
        }
        if (chance(.3)) {
            Placement where =
                    chance(.5) ? Placement.BROADCAST : chance(.5) ? Placement.INCORPORATED : Placement.MID_INJECT;
            NitrogenPass ammonium = new NitrogenPass(between(0.0, 150.0), 0, 1, 0, where, Inhibitor.NONE);
            events.add(new Event.Manured(anyDay(), between(0.0, 300.0), ammonium));
        }
        if (chance(.3)) {
            events.add(new Event.Tilled(anyDay(), between(0.0, 1.0)));
        }
    }

    private LocalDate anyDay() {
        return setup.first().plusDays(between(0, days - 1));
    }

    NitrogenPass pass() {
        Placement[] all = Placement.values();
        Inhibitor[] inhibitors = Inhibitor.values();
        double urea = chance(.3) ? 0 : random.nextDouble();
        double ammonium = (1 - urea) * (chance(.2) ? 0 : random.nextDouble());
        return new NitrogenPass(
                between(0.0, 300.0),
                urea,
                ammonium,
                1 - urea - ammonium,
                all[between(0, all.length - 1)],
                inhibitors[between(0, inhibitors.length - 1)]);
    }

    void applyEvents(SeasonRun run) {
        LocalDate day = run.date();
        for (Event e : events) {
            if (e.date().equals(day)) {
                e.applyTo(run);
            }
        }
    }

    void step(SeasonRun run) {
        applyEvents(run);
        run.step();
    }

    void toEnd(SeasonRun run) {
        while (run.day() < days) {
            step(run);
        }
    }

    SplittableRandom random() {
        return random;
    }
}
