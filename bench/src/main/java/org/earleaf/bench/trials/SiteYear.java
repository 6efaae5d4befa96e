// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Settings;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.label.LabelBook;
import org.earleaf.outlook.PastYields;
import org.earleaf.weather.WeatherSeries;

/**
 * Corn of one farm in one year after one crop: what was measured, and the field as a grower would enter it.
 *
 * @param grew yields of years before that are given to the model
 */
record SiteYear(TrialFarm farm, Sowing sown, PreviousCrop after, Measured measured, List<PastYear> grew) {
    /** Hybrids of about 103 to 112 days, later ones further south (common practice, no source). */
    private static final double DAYS_AT_42_NORTH = 108;

    private static final double DAYS_A_DEGREE = 3;
    /** Crops of corn before, for which a plot is said to have had its rate. */
    private static final int KEPT = 5;

    SiteYear(TrialFarm farm, int year, PreviousCrop after, Measured measured) {
        this(farm, Sowing.usual(year), after, measured);
    }

    SiteYear(TrialFarm farm, Sowing sown, PreviousCrop after, Measured measured) {
        this(farm, sown, after, measured, List.of());
    }

    /** The same where the yields with nitrogen to spare of the years before, on this farm and rotation, are given. */
    SiteYear knowingItsPast(List<SiteYear> all) {
        List<PastYear> before = all.stream()
                .filter(other ->
                        other.farm().name().equals(farm.name()) && other.after() == after && other.year() < year())
                .map(other -> other.harvested(FieldPart.of(zone())))
                .toList();
        return new SiteYear(farm, sown, after, measured, before);
    }

    private PastYear harvested(FieldPart plot) {
        return new PastYear(plot, year(), PreviousCrop.CORN, measured.at(Money.MOST_KGHA), Money.MOST_KGHA);
    }

    static List<SiteYear> readAll(Path folder) {
        Map<String, TrialFarm> farms =
                TrialFarm.readAll(folder).stream().collect(Collectors.toMap(TrialFarm::name, Function.identity()));
        return Rows.read(folder, "iowa-response.tsv").stream()
                .map(row -> new SiteYear(
                        Objects.requireNonNull(farms.get(row.text("site"))),
                        row.whole("year"),
                        row.text("after").equals("corn") ? PreviousCrop.CORN : PreviousCrop.SOYBEAN,
                        Measured.of(row)))
                .toList();
    }

    boolean isAfterCorn() {
        return after == PreviousCrop.CORN;
    }

    int year() {
        return sown.day().getYear();
    }

    LocalDate planted() {
        return sown.day();
    }

    LocalDate last() {
        return LocalDate.of(year(), 10, 31);
    }

    Zone zone() {
        double unknown = Double.NaN;
        double days = DAYS_AT_42_NORTH - DAYS_A_DEGREE * (farm.site().latitude_deg() - 42);
        return new Zone(
                ZoneName.of(farm.name() + " " + year() + " " + after, ""),
                30,
                new Zone.Planting("corn", planted(), Hybrid.ofMaturity(days), sown.plants_m2(), .762, unknown),
                new Zone.Land(farm.soil(), Drainage.TILED, unknown),
                new Zone.Seedbed(after, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    /** A farm of this field alone, with the weather that is known and what went on at planting. */
    Farm farmKnowing(WeatherSeries weather, double given_kgHa) {
        List<Pass> passes = given_kgHa > 0
                ? List.of(new Pass(
                        "p1",
                        FieldPart.of(zone()),
                        planted(),
                        "UAN 32",
                        new Pass.Rate(given_kgHa, "kg N/ha", given_kgHa),
                        Placement.INCORPORATED,
                        Inhibitor.NONE,
                        Pass.State.MADE))
                : List.of();
        return farm(weather, new Farm.Work(passes, List.of(), List.of(), List.of()));
    }

    /** The same of a plot that keeps its rate and is yet to get this year's. */
    Farm farmKeeping(WeatherSeries weather, double rate_kgHa) {
        return farm(weather, new Farm.Work(List.of(), List.of(), List.of(), List.of(), kept(rate_kgHa)));
    }

    /**
     * What the yields that are given say of the field's level, by a record of weather. They were made on plots that got
     * as much nitrogen every year, and are held against such; the field itself need not have had it.
     */
    PastYields pastYields(WeatherSeries weather) {
        return PastYields.of(farm(weather, new Farm.Work(List.of(), List.of(), List.of(), List.of(), grew)), zone());
    }

    /** The years before of a plot that keeps its rate: corn every year, or every other one where soybean goes before. */
    List<PastYear> kept(double rate_kgHa) {
        FieldPart plot = FieldPart.of(zone());
        return IntStream.rangeClosed(1, KEPT)
                .map(crop -> year() - crop * (isAfterCorn() ? 1 : 2))
                .mapToObj(before -> new PastYear(plot, before, PreviousCrop.CORN, Double.NaN, rate_kgHa))
                .toList();
    }

    private Farm farm(WeatherSeries weather, Farm.Work work) {
        return new Farm(
                farm.name(),
                farm.site(),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone()), List.of()),
                work,
                new Farm.Shelf(List.of(), List.of(), List.of(), List.of(), List.of()),
                new WeatherBook(weather, List.of(), List.of(), List.of(), List.of(), List.of()),
                new Farm.Rules(
                        new Prices(Money.CORN_USD_BU, 0, Money.NITROGEN_USD_KG, Map.of()),
                        Settings.USUAL,
                        LabelBook.EMPTY),
                List.of());
    }
}
