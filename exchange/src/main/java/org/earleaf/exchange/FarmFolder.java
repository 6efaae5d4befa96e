// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.FieldsCsv.FieldRow;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Stock;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Boundary;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.label.LabelBook;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;

/**
 * A farm as plain files in a folder (docs/farm-folder.md is their reference). Reading collects every problem of every file
 * before it refuses the folder, so that a person mends it once.
 */
public final class FarmFolder {
    private final Findings findings = new Findings();
    private final FolderFiles files;
    private final Names names = new Names();
    private final Shelf shelf = new Shelf();

    private FarmFolder(Path dir) {
        files = new FolderFiles(dir, findings);
    }

    /**
     * Reads the whole folder.
     *
     * @throws EarleafException with every problem found
     */
    public static Farm read(Path dir) {
        return new FarmFolder(dir).farm();
    }

    /**
     * Reads only the weather files (weather.csv, weather/*.txt, forecast.csv, hours.csv) of a folder, all of which may be
     * missing, without filling holes: for a repeated import that brings yesterday's weather and today's forecast.
     *
     * @throws EarleafException with every problem found
     */
    public static FolderWeather readWeather(Path dir) {
        FarmFolder folder = new FarmFolder(dir);
        FolderWeather weather = FolderWeather.read(folder.files, folder.findings, false);
        folder.findings.refuseIfAny();
        return new FolderWeather(
                weather.source(),
                weather.observed(),
                weather.forecast(),
                weather.rainChance(),
                weather.hours(),
                folder.findings.flags());
    }

    private Farm farm() {
        Optional<FarmCsv.Head> head = files.required("farm.csv").flatMap(FarmCsv::read);
        List<FieldRow> rows =
                files.required("fields.csv").map(s -> FieldsCsv.read(s, names)).orElse(List.of());
        Optional<SoilCsv> soil = files.required("soil.csv").map(s -> SoilCsv.read(s, names));
        List<Zone> zones = zones(rows, soil);
        List<Boundary> boundaries = files.find("boundaries.geojson")
                .map(file -> Boundaries.read(file, findings, rows, head))
                .orElse(List.of());
        files.optional("products.csv").ifPresent(s -> ProductsCsv.read(s, shelf));
        LabelBook labels = files.optional("labels.csv")
                .map(s -> LabelsCsv.read(
                        s, shelf, head.<ZoneId>map(FarmCsv.Head::timeZone).orElse(ZoneOffset.UTC)))
                .orElse(LabelBook.EMPTY);
        List<Pass> passes = optional("passes.csv", s -> PassesCsv.read(s, names, shelf));
        List<Reading> readings = optional("readings.csv", s -> ReadingsCsv.read(s, names));
        List<Irrigation> irrigation = optional("irrigation.csv", s -> GivenCsv.irrigation(s, names));
        List<Manure> manure = optional("manure.csv", s -> GivenCsv.manure(s, names));
        List<PastYear> past = optional("yields.csv", s -> YieldsCsv.read(s, names));
        List<Rig> rigs = optional("rigs.csv", RigsCsv::read);
        List<Recipe> recipes = optional("recipes.csv", s -> MixCsv.recipes(s, shelf));
        List<Stock> stock = optional("stock.csv", s -> MixCsv.stock(s, shelf));
        FolderWeather weather = FolderWeather.read(files, findings, true);
        findings.refuseIfAny();

        FarmCsv.Head h = head.orElseThrow();
        WeatherBook book = weather.filled(h.site());
        List<Flag> flags = new ArrayList<>(findings.flags());
        flags.addAll(book.flags());
        return new Farm(
                h.name(),
                h.site(),
                h.timeZone(),
                new Farm.Ground(zones, boundaries),
                new Farm.Work(passes, readings, irrigation, manure, past),
                new Farm.Shelf(shelf.nitrogen(), shelf.products(), rigs, recipes, stock),
                book,
                new Farm.Rules(prices(h.prices()), h.settings(), labels),
                flags);
    }

    private <T> List<T> optional(String name, java.util.function.Function<Sheet, List<T>> read) {
        return files.optional(name).map(read).orElse(List.of());
    }

    private List<Zone> zones(List<FieldRow> rows, Optional<SoilCsv> soil) {
        List<Zone> zones = new ArrayList<>();
        for (FieldRow row : rows) {
            Optional<SoilProfile> profile = soil.flatMap(s -> s.find(row.field(), row.zone(), findings));
            profile.ifPresent(p -> zones.add(row.with().apply(p)));
            if (profile.isEmpty() && soil.isPresent() && soil.get().isWhole()) {
                findings.problem(
                        "soil.missing",
                        new Place("fields.csv", row.line(), "field"),
                        row.zone().isEmpty()
                                ? Said.of("found.field-without-soil", "field", row.field())
                                : Said.of("found.zone-without-soil", "field", row.field(), "zone", row.zone()));
            }
        }
        names.setSoils((f, z) -> soilOf(zones, f, z));
        return zones;
    }

    private static Optional<SoilProfile> soilOf(List<Zone> zones, String field, String zone) {
        return zones.stream()
                .filter(z ->
                        z.field().equals(field) && (zone.isEmpty() || z.zone().equals(zone)))
                .map(Zone::soil)
                .findFirst();
    }

    /** Prices of products.csv stand before those of farm.csv. */
    private Prices prices(Prices of) {
        Map<String, Double> nitrogen = new HashMap<>(of.nitrogenOf_usdKg());
        nitrogen.putAll(shelf.nitrogenPrices_usdKg());
        return new Prices(of.corn_usdBu(), of.harvestCost_usdBu(), of.nitrogen_usdKg(), nitrogen);
    }
}
