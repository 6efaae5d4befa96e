// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.earleaf.app.store.FarmHead.Remark;
import org.earleaf.app.store.GroundTables.Layer;
import org.earleaf.app.store.ShelfTables.Price;
import org.earleaf.app.store.ShelfTables.RecipeHead;
import org.earleaf.app.store.ShelfTables.RecipeLine;
import org.earleaf.app.store.WeatherTables.Ahead;
import org.earleaf.farm.Farm;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Pass;
import org.earleaf.units.Flag;
import org.earleaf.weather.WeatherGap;
import org.earleaf.weather.WeatherSeries;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Brings a farm as read from a folder into the store; runs inside one transaction.
 *
 * <p>What happened (weather, passes, readings, irrigation, manure) is added to and never removed; what is so (fields,
 * soil, prices, products, rigs, recipes, stock) is replaced where the folder gives it; the forecast is replaced always.
 */
final class FarmImport {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    private final Merge merge;
    private final Set<String> filedPasses;
    private final ImportReport.Counts counts = new ImportReport.Counts();

    FarmImport(JdbcTemplate sql) {
        merge = new Merge(sql);
        filedPasses = new HashSet<>(sql.queryForList("select pass from application_record", String.class));
    }

    ImportReport run(Farm farm) {
        boolean first = merge.all(FarmHead.TABLE).isEmpty();
        whatIsSo(farm);
        whatHappened(farm);
        weather(farm.weather());
        remarks(farm);
        WeatherSeries observed = new WeatherSeries(merge.all(WeatherTables.OBSERVED));
        return new ImportReport(
                farm.name(),
                first,
                counts.asMap(),
                observed.first(),
                observed.last(),
                merge.differences(),
                allFlags(farm));
    }

    private void whatIsSo(Farm farm) {
        merge.replace(FarmHead.TABLE, List.of(FarmHead.of(farm)));
        merge.replace(ShelfTables.PRICES, Price.of(farm.prices().nitrogenOf_usdKg()));
        List<Layer> soil =
                farm.zones().stream().flatMap(z -> Layer.of(z).stream()).toList();
        List<Layer> soilBefore = merge.all(GroundTables.SOIL);
        merge.replace(GroundTables.zones(soilBefore), farm.zones());
        // The zones' own rows went with the layers below them, so the layers are compared with what was read before.
        merge.tell(GroundTables.SOIL, soilBefore, soil);
        merge.insert(GroundTables.SOIL, soil);
        merge.replace(GroundTables.BOUNDARIES, farm.boundaries());
        merge.replace(ShelfTables.NITROGEN, farm.nitrogen());
        merge.replace(ShelfTables.PRODUCTS, farm.products());
        merge.replace(ShelfTables.RIGS, farm.rigs());
        merge.replace(
                ShelfTables.RECIPES,
                farm.recipes().stream()
                        .map(r -> new RecipeHead(r.name(), r.carrier_LHa()))
                        .toList());
        merge.replace(
                ShelfTables.LINES,
                farm.recipes().stream().flatMap(r -> RecipeLine.of(r).stream()).toList());
        merge.replace(ShelfTables.STOCK, farm.stock());
        merge.replace(WeatherTables.HOURS, farm.weather().hours());
    }

    private void whatHappened(Farm farm) {
        var passes = merge.update(
                WorkTables.PASSES, farm.passes(), this::beside, stored -> filedPasses.contains(stored.id()));
        add(
                "passes",
                WorkTables.PASSES,
                withFreeIds(WorkTables.PASSES, passes.unknown(), Pass::id, WorkTables::withId));
        var readings = merge.update(
                WorkTables.READINGS, farm.readings(), (was, now) -> WorkTables.withId(was.id(), now), stored -> false);
        add(
                "readings",
                WorkTables.READINGS,
                withFreeIds(WorkTables.READINGS, readings.unknown(), r -> r.id(), WorkTables::withId));
        append("irrigations", WorkTables.IRRIGATION, farm.irrigation());
        append("manure", WorkTables.MANURE, farm.manure());
    }

    /** A pass keeps its id, and stays made when its record is filed whatever the folder still plans. */
    private Pass beside(Pass stored, Pass newer) {
        Pass now = WorkTables.withId(stored.id(), newer);
        return filedPasses.contains(stored.id()) ? WorkTables.inState(stored.state(), now) : now;
    }

    private void weather(WeatherBook book) {
        append("weather days", WeatherTables.OBSERVED, book.observed().days());
        merge.replaceQuietly(WeatherTables.FORECAST, Ahead.of(book));
        List<WeatherGap> gaps = new ArrayList<>();
        for (WeatherGap gap : merge.all(WeatherTables.GAPS)) {
            gaps.addAll(outside(gap, book.observed()));
        }
        gaps.addAll(book.gaps());
        merge.replaceQuietly(WeatherTables.GAPS, gaps);
    }

    /** What is left of a gap beside the days that are given anew. */
    private static List<WeatherGap> outside(WeatherGap gap, WeatherSeries anew) {
        if (!gap.touches(anew.first(), anew.last())) {
            return List.of(gap);
        }
        return Stream.of(
                        new WeatherGap(gap.first(), anew.first().minusDays(1)),
                        new WeatherGap(anew.last().plusDays(1), gap.last()))
                .filter(g -> !g.last().isBefore(g.first()))
                .toList();
    }

    private void remarks(Farm farm) {
        WeatherSeries anew = farm.weather().observed();
        List<Remark> remarks = new ArrayList<>();
        farm.flags().forEach(f -> remarks.add(new Remark(Remark.FARM, f)));
        for (Remark old : merge.all(FarmHead.REMARKS)) {
            if (old.about().equals(Remark.WEATHER)
                    && !isAbout(old.flag(), anew)
                    && !farm.weather().flags().contains(old.flag())) {
                remarks.add(old);
            }
        }
        farm.weather().flags().forEach(f -> remarks.add(new Remark(Remark.WEATHER, f)));
        merge.replaceQuietly(FarmHead.REMARKS, remarks);
    }

    /** Whether a remark names days that are all given anew, so that it no longer tells of what is stored. */
    private static boolean isAbout(Flag flag, WeatherSeries anew) {
        Matcher dates = DATE.matcher(flag.where() + " " + flag.what());
        boolean any = false;
        while (dates.find()) {
            LocalDate date = LocalDate.parse(dates.group());
            if (!anew.covers(date, date)) {
                return false;
            }
            any = true;
        }
        return any;
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

    private static List<Flag> allFlags(Farm farm) {
        return Stream.concat(farm.flags().stream(), farm.weather().flags().stream())
                .toList();
    }
}
