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
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.label.LabelBook;
import org.earleaf.weather.WeatherSeries;

/** Corn of one farm in one year after one crop: what was measured, and the field as a grower would enter it. */
record SiteYear(TrialFarm farm, int year, PreviousCrop after, Measured measured) {
    /**
     * Not told by the source: planted there from 25 April to 15 May (common practice, no source), 2 May stands for it as
     * in the evidence that this bench repeats.
     */
    private static final int PLANTED_MONTH = 5;

    private static final int PLANTED_DAY = 2;
    /** Hybrids of about 103 to 112 days, later ones further south (common practice, no source). */
    private static final double DAYS_AT_42_NORTH = 108;

    private static final double DAYS_A_DEGREE = 3;

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

    LocalDate planted() {
        return LocalDate.of(year, PLANTED_MONTH, PLANTED_DAY);
    }

    LocalDate last() {
        return LocalDate.of(year, 10, 31);
    }

    Zone zone() {
        return zone(planted());
    }

    Zone zone(LocalDate planted) {
        double unknown = Double.NaN;
        double days = DAYS_AT_42_NORTH - DAYS_A_DEGREE * (farm.site().latitude_deg() - 42);
        return new Zone(
                ZoneName.of(farm.name() + " " + year + " " + after, ""),
                30,
                new Zone.Planting("corn", planted, Hybrid.ofMaturity(days), 8, .762, unknown),
                new Zone.Land(farm.soil(), Drainage.TILED, unknown),
                new Zone.Seedbed(after, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    /** A farm of this field alone, with the weather that is known and what went on at planting. */
    Farm farmKnowing(WeatherSeries weather, double given_kgHa) {
        List<Pass> passes = given_kgHa > 0
                ? List.of(new Pass(
                        "p1",
                        new FieldPart(zone().field(), ""),
                        planted(),
                        "UAN 32",
                        new Pass.Rate(given_kgHa, "kg N/ha", given_kgHa),
                        Placement.INCORPORATED,
                        Inhibitor.NONE,
                        Pass.State.MADE))
                : List.of();
        return new Farm(
                farm.name(),
                farm.site(),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(zone()), List.of()),
                new Farm.Work(passes, List.of(), List.of(), List.of()),
                new Farm.Shelf(List.of(), List.of(), List.of(), List.of(), List.of()),
                new WeatherBook(weather, List.of(), List.of(), List.of(), List.of(), List.of()),
                new Farm.Rules(
                        new Prices(Money.CORN_USD_BU, 0, Money.NITROGEN_USD_KG, Map.of()),
                        Settings.USUAL,
                        LabelBook.EMPTY),
                List.of());
    }
}
