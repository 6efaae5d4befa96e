// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.earleaf.app.store.FarmHead.Remark;
import org.earleaf.app.store.GroundTables.Layer;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.app.store.ShelfTables.Price;
import org.earleaf.app.store.ShelfTables.RecipeHead;
import org.earleaf.app.store.ShelfTables.RecipeLine;
import org.earleaf.app.store.WeatherTables.Ahead;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Stock;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Brings a farm as read from a folder into the store; runs inside one transaction.
 *
 * <p>What happened (weather, passes, readings, irrigation, manure, past years, label entries) is added to and never removed; what is so (fields,
 * soil, prices, products, rigs, recipes, stock) is replaced where the folder gives it; the forecast is replaced always.
 */
final class FarmImport {
    private final JdbcTemplate sql;
    private Merge merge;
    private final Set<String> filedPasses;
    private final ImportReport.Counts counts = new ImportReport.Counts();

    FarmImport(JdbcTemplate sql) {
        this.sql = sql;
        merge = new Merge(sql);
        filedPasses = new HashSet<>(sql.queryForList("select pass from application_record", String.class));
    }

    /**
     * The whole folder.
     *
     * @param written its observed weather as written, holes and all
     */
    ImportReport farm(Farm farm, List<WeatherDay> written) {
        boolean first = merge.all(FarmHead.TABLE).isEmpty();
        refuseAnotherFarm(farm);
        List<Difference> renamed = new Things(sql).learn(farm);
        // What the folder called otherwise is called so from here on.
        merge = new Merge(sql);
        merge.tell(renamed);
        whatIsSo(farm);
        whatHappened(farm);
        observed(written);
        ahead(farm.weather());
        remarks(without(farm.flags(), farm.weather().flags()), onForecast(farm.weather(), written, farm.site()));
        return report(farm.name(), first, farm.flags());
    }

    /** Two farms in one file would be a mess that no one asked for: most likely a folder or file was misnamed. */
    private void refuseAnotherFarm(Farm farm) {
        List<Layer> soil = merge.all(GroundTables.SOIL);
        boolean common =
                soil.stream().anyMatch(l -> !farm.zonesOf(l.at().field()).isEmpty());
        for (FarmHead stored : merge.all(FarmHead.TABLE)) {
            if (!stored.name().equals(farm.name()) && !soil.isEmpty() && !common) {
                throw new EarleafException(Problem.of(
                        "farm.another",
                        Said.text("farm.csv"),
                        Said.of("found.another-farm", "name", farm.name(), "stored", stored.name())));
            }
        }
    }

    /** A folder of weather alone, for the farm that is stored; an older forecast does not outlive it. */
    ImportReport weather(FarmHead head, List<WeatherDay> written, WeatherBook ahead) {
        observed(written);
        ahead(ahead);
        List<Flag> farm = merge.all(FarmHead.REMARKS).stream()
                .filter(r -> r.about().equals(Remark.FARM))
                .map(Remark::flag)
                .toList();
        remarks(farm, onForecast(ahead, written, head.site()));
        return report(head.name(), false, ahead.flags());
    }

    private ImportReport report(String name, boolean first, List<Flag> flags) {
        List<WeatherDay> days = merge.all(WeatherTables.OBSERVED);
        return new ImportReport(
                name,
                first,
                counts.asMap(),
                days.get(0).date(),
                days.get(days.size() - 1).date(),
                merge.differences(),
                flags.stream().distinct().toList());
    }

    private void whatIsSo(Farm farm) {
        merge.replace(FarmHead.TABLE, List.of(FarmHead.of(farm)));
        merge.replace(ShelfTables.PRICES, Price.of(farm.prices().nitrogenOf_usdKg()));
        // A setting that is no longer in farm.csv is as usual again.
        List<FarmHead.Chosen> settings = FarmHead.Chosen.of(farm.settings());
        merge.tell(FarmHead.SETTINGS, merge.all(FarmHead.SETTINGS), settings);
        merge.replaceQuietly(FarmHead.SETTINGS, settings);
        List<Layer> soil =
                farm.zones().stream().flatMap(z -> Layer.of(z).stream()).toList();
        List<Layer> soilBefore = merge.all(GroundTables.SOIL);
        merge.replace(GroundTables.zones(soilBefore), farm.zones());
        // The zones' own rows went with the layers below them, so the layers are compared with what was read before.
        merge.tell(GroundTables.SOIL, soilBefore, soil);
        merge.insert(GroundTables.SOIL, soil);
        merge.replace(GroundTables.BOUNDARIES, farm.ground().boundaries());
        merge.replace(ShelfTables.NITROGEN, farm.shelf().nitrogen());
        merge.replace(ShelfTables.PRODUCTS, farm.products());
        merge.replace(ShelfTables.RIGS, farm.rigs());
        merge.replace(
                ShelfTables.RECIPES,
                farm.shelf().recipes().stream()
                        .map(r -> new RecipeHead(r.name(), r.carrier_LHa()))
                        .toList());
        if (!farm.shelf().recipes().isEmpty()) {
            List<RecipeLine> lines = farm.shelf().recipes().stream()
                    .flatMap(r -> RecipeLine.of(r).stream())
                    .toList();
            merge.tell(ShelfTables.LINES, merge.all(ShelfTables.LINES), lines);
            merge.replaceQuietly(ShelfTables.LINES, lines);
        }
        merge.tell(new LabelRows(sql).take(farm.labels()));
        settleCounted(farm.shelf().stock());
        merge.replace(ShelfTables.STOCK, farm.shelf().stock());
    }

    /** A lot counted anew has what was poured before out of it already; what is only reserved still stands there. */
    private void settleCounted(List<Stock> counted) {
        Names names = merge.names();
        List<Stock> before = merge.all(ShelfTables.STOCK);
        for (Stock s : counted) {
            if (!before.contains(s.called(names.today(Kind.PRODUCT, s.product())))) {
                sql.update(
                        "update lot_draw set settled = 1 where lower(product) = lower(?) and lot = ? and load in"
                                + " (select id from tank_load where state in ('mixed', 'applied'))",
                        names.id(Kind.PRODUCT, s.product()),
                        s.lot());
            }
        }
    }

    private void whatHappened(Farm farm) {
        var passes = merge.update(
                WorkTables.PASSES, farm.passes(), this::beside, stored -> filedPasses.contains(stored.id()));
        add(
                "passes",
                WorkTables.PASSES,
                withFreeIds(WorkTables.PASSES, passes.unknown(), Pass::id, (id, p) -> p.withId(id)));
        var readings =
                merge.update(WorkTables.READINGS, farm.readings(), (was, now) -> now.withId(was.id()), stored -> false);
        add(
                "readings",
                WorkTables.READINGS,
                withFreeIds(WorkTables.READINGS, readings.unknown(), Reading::id, (id, r) -> r.withId(id)));
        append("irrigations", WorkTables.IRRIGATION, farm.work().irrigation());
        append("manure", WorkTables.MANURE, farm.work().manure());
        append("past years", WorkTables.PAST, farm.work().past());
    }

    /** A pass keeps its id, and stays made when its record is filed whatever the folder still plans. */
    private Pass beside(Pass stored, Pass newer) {
        Pass now = newer.withId(stored.id());
        return filedPasses.contains(stored.id()) ? now.in(stored.state()) : now;
    }

    /** Newer values win, but an unknown one never stands before one that was observed. */
    private void observed(List<WeatherDay> written) {
        var days = merge.update(WeatherTables.OBSERVED, written, WeatherTables::over, stored -> false);
        add("weather days", WeatherTables.OBSERVED, days.unknown());
    }

    private void ahead(WeatherBook book) {
        merge.replaceQuietly(WeatherTables.FORECAST, Ahead.of(book));
        if (!book.hours().isEmpty()) {
            merge.replaceQuietly(WeatherTables.HOURS, book.hours());
        }
    }

    private void remarks(List<Flag> farm, List<Flag> forecast) {
        List<Remark> remarks = new ArrayList<>();
        farm.forEach(f -> remarks.add(new Remark(Remark.FARM, f)));
        forecast.forEach(f -> remarks.add(new Remark(Remark.FORECAST, f)));
        merge.replaceQuietly(FarmHead.REMARKS, remarks);
    }

    /** Remarks on a book that are not on its observed weather, which are made anew at every reading. */
    private static List<Flag> onForecast(WeatherBook book, List<WeatherDay> written, Site site) {
        return without(
                book.flags(), WeatherFill.fill(written, site, FarmStore.WEATHER).flags());
    }

    private static List<Flag> without(List<Flag> all, List<Flag> known) {
        return all.stream().filter(f -> !known.contains(f)).toList();
    }

    private <T> void append(String what, Table<T> table, List<T> incoming) {
        add(
                what,
                table,
                merge.update(table, incoming, (was, now) -> now, stored -> false)
                        .unknown());
    }

    private <T> void add(String what, Table<T> table, List<T> facts) {
        merge.insert(table, facts);
        counts.add(what, facts.size());
    }

    /** Ids of a folder come from rows, which move; a new fact must not take the id of a stored one. */
    private <T> List<T> withFreeIds(
            Table<T> table, List<T> facts, Function<T, String> id, BiFunction<String, T, T> renamed) {
        Set<String> taken = new HashSet<>();
        merge.all(table).forEach(f -> taken.add(id.apply(f)));
        List<T> free = new ArrayList<>();
        for (T fact : facts) {
            String name = id.apply(fact);
            for (int k = 2; !taken.add(name); k++) {
                name = id.apply(fact) + " (" + k + ")";
            }
            free.add(renamed.apply(name, fact));
        }
        return free;
    }
}
