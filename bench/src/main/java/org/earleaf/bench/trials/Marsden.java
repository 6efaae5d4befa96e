// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.earleaf.field.PreviousCrop;
import org.earleaf.season.SeasonRun;

/**
 * Plants and soil measured on the Marsden farm near Ames: corn after soybean in 2013, 2018 and 2019, planting dates as
 * noted there. Nitrogen at planting is from memory (112 kg/ha after soybean), the soil that of the Ames trials.
 */
final class Marsden {
    private static final double AT_PLANTING_KGHA = 112;
    private static final double PLANTS_M2 = 8;
    private static final double LEAST_G_PLANT = 10;
    /** So much a collar do leaves stand over the topmost one, up to so much. */
    private static final double OVER_COLLAR_CM = 4;

    private static final double MOST_OVER_COLLAR_CM = 50;

    /** Measured on a day. */
    record Seen(Trait trait, LocalDate date, double value) {}

    /** The same beside the model's. */
    record Pair(Seen seen, double modelled) {
        double error() {
            return seen.trait().error(seen.value(), modelled);
        }

        boolean isWithin() {
            return seen.trait().isWithin(error());
        }
    }

    private final Path folder;
    private final Map<Integer, Plots> years;
    private final Map<LocalDate, List<Seen>> seen;

    private Marsden(Path folder, Map<Integer, Plots> years) {
        this.folder = folder;
        this.years = years;
        seen = all().stream().collect(Collectors.groupingBy(Seen::date, TreeMap::new, Collectors.toList()));
    }

    static Marsden read(Path folder) {
        TrialFarm ames = TrialFarm.readAll(folder).stream()
                .filter(farm -> farm.name().equals("ames"))
                .findFirst()
                .orElseThrow();
        TrialFarm marsden =
                new TrialFarm("marsden", ames.site(), ames.soil(), TrialFarm.weather(folder, "marsden-weather.tsv"));
        Map<Integer, Plots> years = new TreeMap<>();
        for (Rows row : Rows.read(folder, "marsden-plantings.tsv")) {
            Sowing sown = new Sowing(row.day("planted"), PLANTS_M2);
            SiteYear at = new SiteYear(marsden, sown, PreviousCrop.SOYBEAN, Measured.flat(Double.NaN));
            years.put(row.whole("year"), Plots.of(at, AT_PLANTING_KGHA));
        }
        return new Marsden(folder, years);
    }

    private List<Seen> all() {
        List<Seen> all = new ArrayList<>();
        all.addAll(of(Trait.SHOOT, "shoot-nitrogen", Marsden::shoot_kgHa));
        all.addAll(of(Trait.SHOOT_NITROGEN, "shoot-nitrogen", row -> shoot_kgHa(row) * row.number("n_pct") / 100));
        all.addAll(of(Trait.LEAF_AREA, "leaf-area", row -> row.number("leaf_area_cm2_plant") * PLANTS_M2 / 1e4));
        all.addAll(of(Trait.ROOTS, "root-depth", row -> row.number("depth_cm")));
        all.addAll(of(Trait.COLLARS, "stage", row -> row.number("mean_v_stage")));
        all.addAll(of(Trait.HEIGHT, "stage", Marsden::canopy_cm));
        all.addAll(of(Trait.NITRATE, "soil-nitrogen", Marsden::topFoot_ppm));
        return all;
    }

    private List<Seen> of(Trait trait, String file, ToDoubleFunction<Rows> value) {
        return Rows.read(folder, "marsden-" + file + ".tsv").stream()
                .filter(row -> row.text("after").equals("soybean"))
                .map(row -> new Seen(trait, row.day("date"), value.applyAsDouble(row)))
                .filter(each -> each.value() > 0)
                .toList();
    }

    /**
     * Whole plants: the file's own sums, since it has no weight of cob and tassel alone; from ten grams a plant on, before
     * that a day more or less doubles them.
     */
    private static double shoot_kgHa(Rows row) {
        double plant_g = row.number("dry_g_plant");
        return row.text("organ").equals("plant") && plant_g >= LEAST_G_PLANT ? plant_g * PLANTS_M2 * 10 : Double.NaN;
    }

    private static double topFoot_ppm(Rows row) {
        return row.text("depth_cm").equals("0-30") ? row.number("nitrate_ppm") : Double.NaN;
    }

    /**
     * Arch of the uppermost leaves, which the model tells, from a height that was measured to the topmost collar until
     * tassel: plants of the published table stand 25 to 36 cm at V5 and 36 to 51 cm at V6 (Mississippi State), 15 to 33 cm
     * over the collars measured here, so 4 cm a collar; from V12 on 50 cm; as measured once the tassel is out, where the
     * last leaf is small. Own construct.
     */
    private static double canopy_cm(Rows row) {
        double height = row.number("height_cm");
        if (Double.isNaN(row.number("mean_v_stage"))) {
            return height;
        }
        return height + Math.min(MOST_OVER_COLLAR_CM, OVER_COLLAR_CM * row.number("leaves_with_collar"));
    }

    /** What was seen of a trait in a year. */
    List<Seen> seen(Trait trait, int year) {
        return seen.values().stream()
                .flatMap(List::stream)
                .filter(each -> each.trait() == trait && each.date().getYear() == year)
                .toList();
    }

    /** The model's of every day from planting to October. */
    SortedMap<LocalDate, Double> daily(Trait trait, int year) {
        Plots plots = Objects.requireNonNull(years.get(year));
        SortedMap<LocalDate, Double> byDay = new TreeMap<>();
        SeasonRun run = plots.planted();
        for (LocalDate day = plots.at().planted(); day.isBefore(plots.at().last()); day = day.plusDays(1)) {
            plots.through(run, day);
            byDay.put(day, trait.of(run));
        }
        return byDay;
    }

    /** All that was seen, beside the model's, with plots changed as asked for. */
    List<Pair> pairs(UnaryOperator<Plots> changed) {
        List<Pair> pairs = new ArrayList<>();
        years.forEach((year, plots) -> {
            Plots these = changed.apply(plots);
            SeasonRun run = these.planted();
            seen.forEach((date, each) -> {
                if (date.getYear() == year && !date.isBefore(plots.at().planted())) {
                    these.through(run, date);
                    each.forEach(one -> pairs.add(new Pair(one, one.trait().of(run))));
                }
            });
        });
        return pairs;
    }
}
