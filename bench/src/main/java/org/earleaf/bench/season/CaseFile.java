// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.earleaf.field.Placement;
import org.earleaf.season.SeasonSetup;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.weather.Forcing;

/** Writes a case for programs in other languages: lines of a name, how many numbers, and the numbers. */
final class CaseFile {
    /** Placements as the other programs number them. */
    private static final List<Placement> PLACEMENTS = List.of(
            Placement.BROADCAST,
            Placement.ROW_BASE,
            Placement.MID_DRIBBLE,
            Placement.MID_INJECT,
            Placement.ROW_INJECT,
            Placement.INCORPORATED,
            Placement.AMMONIA);

    private final StringBuilder text = new StringBuilder();

    private CaseFile() {}

    static void write(SeasonCase c, Path file) {
        CaseFile f = new CaseFile();
        f.ground(c.setup(), c);
        f.members(c);
        f.weather(c);
        f.passes(c);
        try {
            Files.writeString(file, f.text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void line(String name, DoubleStream values) {
        double[] all = values.toArray();
        text.append(name).append(' ').append(all.length);
        for (double v : all) {
            text.append(' ').append(v);
        }
        text.append('\n');
    }

    private void one(String name, double value) {
        line(name, DoubleStream.of(value));
    }

    private void layers(String name, Collection<Double> values) {
        line(name, values.stream().mapToDouble(Double::doubleValue));
    }

    private void water(String name, SoilProfile soil, ToDoubleFunction<SoilWater> what) {
        line(name, soil.water().stream().mapToDouble(what));
    }

    private void ground(SeasonSetup s, SeasonCase c) {
        one("days", c.days());
        one("planted", s.crop().planted().toEpochDay() - s.first().toEpochDay());
        one("row_share", s.rowShare());
        one("population", s.crop().population_m2());
        one("drain_max", s.ground().drainMax_mm());
        one("curve", s.ground().curveNumber());
        one("cover", s.lastCrop().cover());
        one("residue", s.lastCrop().residue_kgHa());
        one("residue_cn", s.lastCrop().residueCn());
        one("buried", s.lastCrop().buried() ? 1 : 0);
        one("soil_temperature", s.start().soilTemperature_C());
        SoilProfile soil = s.soil();
        water("wp", soil, SoilWater::wp);
        water("fc", soil, SoilWater::fc);
        water("sat", soil, SoilWater::sat);
        water("ksat", soil, SoilWater::ksat_mmh);
        layers("density", soil.bulkDensity_gcm3());
        layers("om", soil.om_pct());
        layers("ph", soil.ph());
        layers("cec", soil.cec_cmolKg());
        layers("nitrate", s.start().nitrate_ppm());
        layers("ammonium", s.start().ammonium_ppm());
        line("thickness", IntStream.range(0, SoilProfile.LAYERS).mapToDouble(SoilProfile::thickness_mm));
    }

    private void members(SeasonCase c) {
        one("members", c.members());
        line("weather_of", Arrays.stream(c.weatherOf()).asDoubleStream());
        for (Parameter p : Parameter.values()) {
            line(p.name(), c.sets().stream().mapToDouble(set -> set.of(p)));
        }
        SeasonSetup.Calendar marks = c.setup().calendar();
        line("silk", c.sets().stream().mapToDouble(set -> marks.silk() + set.of(Parameter.SILK_SHIFT)));
        line("black", c.sets().stream().mapToDouble(set -> marks.blackLayer() + set.of(Parameter.SILK_SHIFT)));
    }

    private void weather(SeasonCase c) {
        one("weathers", c.weather().size());
        series("tmax", c, Forcing::tmax_C);
        series("tmin", c, Forcing::tmin_C);
        series("rain", c, Forcing::rain_mm);
        series("solar", c, Forcing::solar_MJm2);
        series("et0", c, Forcing::et0_mm);
        series("dew", c, Forcing::dew_mm);
    }

    private void series(String name, SeasonCase c, Function<Forcing, double[]> what) {
        line(name, c.weather().stream().flatMapToDouble(f -> Arrays.stream(what.apply(f), 0, c.days())));
    }

    private void passes(SeasonCase c) {
        one("passes", c.passes().size());
        line(
                "pass",
                c.passes().stream()
                        .flatMapToDouble(p -> DoubleStream.of(
                                p.day(),
                                p.member(),
                                PLACEMENTS.indexOf(p.pass().placement()),
                                p.pass().nitrogen_kgHa(),
                                p.pass().urea(),
                                p.pass().ammonium(),
                                p.pass().nitrate(),
                                p.pass().inhibitor().slowsUrea() ? 1 : 0,
                                p.pass().inhibitor().slowsNitrification() ? 1 : 0)));
    }
}
