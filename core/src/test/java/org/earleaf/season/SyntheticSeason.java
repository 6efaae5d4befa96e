// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.soil.Texture;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** A made-up season of days 121 to 273 with smooth weather, on which a prototype of the same equations was run. */
final class SyntheticSeason {
    static final int FIRST = 121;
    static final int LAST = 273;
    static final int YEAR = 2025;
    static final List<Double> OM = List.of(3.5, 3.5, 2.8, 1.5, .8, .4);
    static final List<Double> LOW_OM = List.of(2.2, 2.2, 1.6, .8, .5, .3);
    /** The prototype ran without what strikes now and then, without deposition, and warmed bare soil under residue. */
    static final ParameterSet PROTOTYPE = ParameterSet.usual()
            .with(Parameter.FROST, 0)
            .with(Parameter.HEAT, 0)
            .with(Parameter.WATERLOGGING, 0)
            .with(Parameter.DEPOSIT_NITRATE, 0)
            .with(Parameter.DEPOSIT_AMMONIUM, 0)
            .with(Parameter.BARE_COVER, 1);

    private SyntheticSeason() {}

    static LocalDate date(int doy) {
        return LocalDate.ofYearDay(YEAR, doy);
    }

    static double usualRain(int doy) {
        if ((doy - FIRST) % 4 != 2) {
            return 0;
        }
        return (doy - FIRST) / 4 % 3 == 0 ? 14 : 9;
    }

    /** Radiation follows the usual rain; the rain itself may be another. */
    static Forcing weather(IntToDoubleFunction rain, double dew) {
        List<WeatherDay> days = new ArrayList<>();
        for (int j = FIRST; j <= LAST; j++) {
            double tm = 11.0 - 14.0 * Math.cos(2 * Math.PI * (j - 22) / 365);
            double rs = 14.5 - 9.0 * Math.cos(2 * Math.PI * (j + 8) / 365);
            double p = rain.applyAsDouble(j);
            double nan = Double.NaN;
            // Dew 0.15 is what an unknown dew point gives; none is a dew point at the night's low.
            days.add(new WeatherDay(
                    date(j), tm + 6, tm - 6, p, p > 0 ? 0.6 * rs : rs, 2, nan, nan, dew > 0 ? nan : tm - 6));
        }
        return Forcing.of(new WeatherSeries(days), new Site(41.5, -93, 300));
    }

    static Forcing weather() {
        return weather(SyntheticSeason::usualRain, 0.15);
    }

    static SoilProfile soil(double sand, double clay, List<Double> om, double ph, double cec) {
        List<SoilWater> water = new ArrayList<>();
        List<Double> bd = new ArrayList<>();
        for (double o : om) {
            SoilWater w = SoilWater.ofTexture(sand * 100, clay * 100, o);
            water.add(w);
            bd.add(w.bulkDensity_gcm3());
        }
        return new SoilProfile(water, bd, om, Collections.nCopies(6, ph), Collections.nCopies(6, cec), Texture.LOAM);
    }

    static Builder zone() {
        return new Builder();
    }

    static NitrogenPass uan(double kgHa, Placement placement) {
        return new NitrogenPass(kgHa, .5, .25, .25, placement, Inhibitor.NONE);
    }

    /** A pass on a day of the year. */
    record On(int doy, NitrogenPass pass) {}

    static On pre(double kgHa) {
        return new On(FIRST, uan(kgHa, Placement.INCORPORATED));
    }

    static On on(int doy, double kgHa, Placement placement) {
        return new On(doy, uan(kgHa, placement));
    }

    static final class Builder {
        SoilProfile soil = SyntheticSeason.soil(.20, .24, OM, 6.5, 18);
        double drainMax = 13;
        double curve = 75;
        double cover = .5;
        double residue = 6000;
        double residueCn = 60;
        int planted = FIRST;
        double rm = 110;
        boolean late;
        double rowSpacing_m = 0.762;
        double soilTemperature_C = 9;
        double waterTable_mm = Double.NaN;
        boolean buried;

        Builder soil(SoilProfile s, double dMax, double cn) {
            soil = s;
            drainMax = dMax;
            curve = cn;
            return this;
        }

        Builder lowOm() {
            soil = SyntheticSeason.soil(.20, .24, LOW_OM, 6.5, 18);
            return this;
        }

        Builder residue(double c, double kg) {
            cover = c;
            residue = kg;
            return this;
        }

        Builder planted(int doy) {
            planted = doy;
            return this;
        }

        Builder rm(double d) {
            rm = d;
            return this;
        }

        Builder late() {
            late = true;
            return this;
        }

        Builder rows(double spacing_m) {
            rowSpacing_m = spacing_m;
            return this;
        }

        Builder soilTemperature(double t_C) {
            soilTemperature_C = t_C;
            return this;
        }

        Builder waterTable(double depth_mm) {
            waterTable_mm = depth_mm;
            return this;
        }

        Builder buried() {
            buried = true;
            return this;
        }

        SeasonSetup setup() {
            return new SeasonSetup(
                    date(FIRST),
                    new SeasonSetup.Crop(date(planted), Hybrid.ofMaturity(rm), 8, rowSpacing_m, late),
                    new SeasonSetup.Ground(soil, drainMax, curve, waterTable_mm),
                    new SeasonSetup.LastCrop(cover, residue, residueCn, buried),
                    new SeasonSetup.Start(
                            List.of(6., 5., 4., 3., 2., 1.5), Collections.nCopies(6, 2.0), soilTemperature_C));
        }

        SeasonRun start(Forcing weather) {
            return SeasonRun.start(setup(), PROTOTYPE, weather);
        }

        SeasonRun run(Forcing weather, On... passes) {
            return until(LAST + 1, weather, passes);
        }

        SeasonRun until(int doy, Forcing weather, On... passes) {
            SeasonRun run = start(weather);
            for (int j = FIRST; j < doy; j++) {
                int today = j;
                Arrays.stream(passes).filter(p -> p.doy() == today).forEach(p -> run.applyAll(p.pass()));
                run.step();
            }
            return run;
        }
    }
}
