// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;

/**
 * Measured plants of the Marsden farm near Ames beside the model's: corn after soybean in 2013, 2018 and 2019, planting
 * dates as noted there. Nitrogen at planting is from memory (112 kg/ha after soybean), the soil that of the Ames trials.
 */
final class Plants {
    private static final double AT_PLANTING_KGHA = 112;
    private static final double PLANTS_M2 = 8;
    private static final double FOOT_MM = 304.8;

    private final Path folder;
    private final Map<Integer, SiteYear> years = new TreeMap<>();
    private final Map<Integer, LocalDate> planted;

    Plants(Path folder) {
        this.folder = folder;
        TrialFarm ames = TrialFarm.readAll(folder).stream()
                .filter(farm -> farm.name().equals("ames"))
                .findFirst()
                .orElseThrow();
        TrialFarm marsden =
                new TrialFarm("marsden", ames.site(), ames.soil(), TrialFarm.weather(folder, "marsden-weather.tsv"));
        planted = Rows.read(folder, "marsden-plantings.tsv").stream()
                .collect(Collectors.toMap(row -> row.whole("year"), row -> row.day("planted")));
        Measured none = new Measured(0, 0, 0, 0, 0);
        planted.keySet().forEach(year -> years.put(year, new SiteYear(marsden, year, PreviousCrop.SOYBEAN, none)));
    }

    /** Measured and modelled on a day. */
    private record Pair(LocalDate date, double measured, double modelled) {}

    void print() {
        show("F7 shoot nitrogen [kg/ha]", shootNitrogen());
        show(
                "F7 leaf area [m2/m2]",
                pairs(
                        "marsden-leaf-area.tsv",
                        row -> row.number("leaf_area_cm2_plant") * PLANTS_M2 / 1e4,
                        run -> run.now(0, Daily.LAI)));
        show("F7 collars", pairs("marsden-stage.tsv", row -> row.number("mean_v_stage"), run -> run.collars(0)));
        show(
                "F7 height, measured to the top collar [cm]",
                pairs("marsden-stage.tsv", row -> row.number("height_cm"), run -> run.height_cm(0)));
        show(
                "F7 root depth [cm]",
                pairs("marsden-root-depth.tsv", row -> row.number("depth_cm"), run -> run.now(0, Daily.ROOT_MM) / 10));
        show(
                "F7 nitrate of the top foot [ppm]",
                pairs(
                        "marsden-soil-nitrogen.tsv",
                        row -> row.text("depth_cm").equals("0-30") ? row.number("nitrate_ppm") : Double.NaN,
                        Plants::nitrate_ppm));
    }

    private static double nitrate_ppm(SeasonRun run) {
        return Observing.of(
                run,
                0,
                new Reading(
                        "",
                        new FieldPart("", ""),
                        run.date(),
                        Reading.Kind.NITRATE,
                        0,
                        "",
                        new Reading.Sampled(0, FOOT_MM, Reading.Position.RANDOM),
                        "",
                        Scouted.NOTHING));
    }

    private List<Pair> shootNitrogen() {
        Map<LocalDate, Double> byDay = new TreeMap<>();
        for (Rows row : afterSoybean("marsden-shoot-nitrogen.tsv")) {
            double nitrogen = row.number("dry_g_plant") * row.number("n_pct") / 100 * PLANTS_M2 * 10;
            if (!row.text("organ").equals("plant") && !Double.isNaN(nitrogen)) {
                byDay.merge(row.day("date"), nitrogen, Double::sum);
            }
        }
        List<Pair> all = new ArrayList<>();
        byDay.forEach((date, measured) -> all.add(new Pair(date, measured, on(date, run -> run.shootN_kgHa(0)))));
        return all;
    }

    private List<Rows> afterSoybean(String file) {
        return Rows.read(folder, file).stream()
                .filter(row -> row.text("after").equals("soybean"))
                .filter(row -> planted.containsKey(row.day("date").getYear()))
                .toList();
    }

    private List<Pair> pairs(String file, ToDoubleFunction<Rows> measured, ToDoubleFunction<SeasonRun> modelled) {
        return afterSoybean(file).stream()
                .filter(row -> !Double.isNaN(measured.applyAsDouble(row)))
                .map(row -> new Pair(row.day("date"), measured.applyAsDouble(row), on(row.day("date"), modelled)))
                .toList();
    }

    /** The model in the evening of a day. */
    private double on(LocalDate date, ToDoubleFunction<SeasonRun> what) {
        SiteYear at = Objects.requireNonNull(years.get(date.getYear()));
        LocalDate sown = Objects.requireNonNull(planted.get(date.getYear()));
        ZoneSeason season = ZoneSeason.of(
                at.farmKnowing(at.farm().weather().between(at.farm().weather().first(), at.last()), 0),
                at.zone(sown),
                at.farm().weather(),
                sown);
        Forcing weather = Forcing.of(
                at.farm().weather().between(season.setup().first(), at.last()),
                at.farm().site());
        SeasonRun run = SeasonRun.start(season.setup(), ParameterSet.usual(), weather);
        season.advance(run, sown);
        run.applyAll(new NitrogenPass(AT_PLANTING_KGHA, .5, .25, .25, Placement.INCORPORATED, Inhibitor.NONE));
        season.advance(run, date.plusDays(1));
        return what.applyAsDouble(run);
    }

    private static void show(String what, List<Pair> pairs) {
        System.out.printf("  %s%n", what);
        for (Pair pair : pairs) {
            System.out.printf(
                    Locale.ROOT,
                    "    %s  measured %7.2f  model %7.2f%n",
                    pair.date(),
                    pair.measured(),
                    pair.modelled());
        }
    }
}
