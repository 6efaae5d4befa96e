// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.FarmHead.Remark;
import org.earleaf.app.store.WeatherTables.Ahead;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.label.LabelBook;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;

/**
 * The farm's facts and filed records in one file. Safe for several threads and, within the file's patience of 5 s, for
 * several programs; reading waits for nobody. Each method is one transaction.
 */
public final class FarmStore implements AutoCloseable {
    /** What observed weather is called in remarks. */
    static final String WEATHER = "weather";

    private final Database db;
    private final RecordBook book;
    private final LoadStore loads;
    private final LoadJobs jobs;
    private final Catches catches;
    private final Waters waters;
    private final PastYears past;

    private FarmStore(Database db) {
        this.db = db;
        this.book = new RecordBook(db.sql());
        this.loads = new LoadStore(db, book, this::changed);
        this.jobs = new LoadJobs(db);
        this.catches = new Catches(db);
        this.waters = new Waters(db);
        this.past = new PastYears(db, this::changed);
    }

    /** Loads and label entries of the farm. */
    public LoadStore loads() {
        return loads;
    }

    /** What the loads of each job are of. */
    public LoadJobs jobs() {
        return jobs;
    }

    /** The morning page as it was last shown. */
    public KeptBriefs kept() {
        return new KeptBriefs(db);
    }

    /** Plans as they were handed to the drivers. */
    public HandedPlans handed() {
        return new HandedPlans(db);
    }

    /** Catch tests of the rigs. */
    public Catches catches() {
        return catches;
    }

    public Waters waters() {
        return waters;
    }

    public PastYears past() {
        return past;
    }

    /** Opens the file; makes it where there is none. */
    public static FarmStore create(Path file) {
        return new FarmStore(Database.create(file));
    }

    /** Opens an existing file. */
    public static FarmStore open(Path file) {
        return new FarmStore(Database.open(file));
    }

    public Path file() {
        return db.file();
    }

    /** Why nothing can be written down; empty where it can, as far as can be told without trying. */
    public Optional<StoreTrouble> findWhyOnlyRead() {
        return db.findWhyOnlyRead();
    }

    /** The farm; refused while nothing has been imported. */
    public Farm farm() {
        return findFarm()
                .orElseThrow(() -> new EarleafException(Problem.of(
                        "store.no-farm",
                        Said.text(db.file().toString()),
                        Said.of("found.no-farm"),
                        "file",
                        db.file().toString())));
    }

    /** Empty while nothing has been imported; a file of which any row is not what was written is refused. */
    public Optional<Farm> findFarm() {
        return db.reading(() -> {
            db.requireAsWritten();
            Merge tables = new Merge(db.sql());
            return tables.all(FarmHead.TABLE).stream()
                    .findFirst()
                    .map(head -> farm(head, tables, readings(tables), new LabelRows(db.sql()).book()));
        });
    }

    private List<Reading> readings(Merge tables) {
        return new WithdrawnTable(db.sql()).counting(tables.all(WorkTables.READINGS));
    }

    private static Farm farm(FarmHead head, Merge tables, List<Reading> readings, LabelBook labels) {
        TreeMap<String, Double> prices = new TreeMap<>();
        tables.all(ShelfTables.PRICES).forEach(p -> prices.put(p.product(), p.nitrogen_usdKg()));
        WeatherFill.Filled past = WeatherFill.fill(tables.all(WeatherTables.OBSERVED), head.site(), WEATHER);
        WeatherBook weather = weather(past, tables);
        return new Farm(
                head.name(),
                head.site(),
                head.timeZone(),
                new Farm.Ground(
                        tables.all(GroundTables.zones(tables.all(GroundTables.SOIL))),
                        tables.all(GroundTables.BOUNDARIES)),
                new Farm.Work(
                        tables.all(WorkTables.PASSES),
                        readings,
                        tables.all(WorkTables.IRRIGATION),
                        tables.all(WorkTables.MANURE),
                        tables.all(WorkTables.PAST)),
                new Farm.Shelf(
                        tables.all(ShelfTables.NITROGEN),
                        tables.all(ShelfTables.PRODUCTS),
                        tables.all(ShelfTables.RIGS),
                        ShelfTables.recipes(tables.all(ShelfTables.RECIPES), tables.all(ShelfTables.LINES)),
                        tables.all(ShelfTables.STOCK)),
                weather,
                new Farm.Rules(
                        new Prices(head.corn_usdBu(), head.harvestCost_usdBu(), head.nitrogen_usdKg(), prices),
                        FarmHead.settings(tables.all(FarmHead.SETTINGS)),
                        labels),
                joined(flags(tables, Remark.FARM), weather.flags()));
    }

    private static WeatherBook weather(WeatherFill.Filled past, Merge tables) {
        List<Ahead> ahead = tables.all(WeatherTables.FORECAST);
        return new WeatherBook(
                past.series(),
                ahead.stream().map(Ahead::day).toList(),
                ahead.stream().map(Ahead::rainChance).toList(),
                tables.all(WeatherTables.HOURS),
                past.gaps(),
                joined(past.flags(), flags(tables, Remark.FORECAST)));
    }

    private static List<Flag> joined(List<Flag> first, List<Flag> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private static List<Flag> flags(Merge tables, String about) {
        return tables.all(FarmHead.REMARKS).stream()
                .filter(r -> r.about().equals(about))
                .map(Remark::flag)
                .toList();
    }

    /**
     * Brings in a farm as read from a folder: all of it, or nothing when anything is wrong.
     *
     * @param written its observed weather as written, holes and all
     */
    public ImportReport importFarm(Farm farm, List<WeatherDay> written) {
        return db.inTransaction(() -> {
            ImportReport report = new FarmImport(db.sql()).farm(farm, written);
            changed();
            return report;
        });
    }

    /**
     * Brings in weather alone.
     *
     * @param written observed, as written, holes and all
     * @param ahead its forecast and hours, if it has any
     */
    public ImportReport importWeather(List<WeatherDay> written, WeatherBook ahead) {
        FarmHead head = FarmHead.of(farm());
        return db.inTransaction(() -> {
            ImportReport report = new FarmImport(db.sql()).weather(head, written, ahead);
            changed();
            return report;
        });
    }

    /** Calls a field otherwise; everything that was stored of it goes with it, what was filed stays as filed. */
    public void renameField(String name, String other) {
        rename(Names.Kind.FIELD, name, other);
    }

    public void renameRig(String name, String other) {
        rename(Names.Kind.RIG, name, other);
    }

    public void renameProduct(String name, String other) {
        rename(Names.Kind.PRODUCT, name, other);
    }

    private void rename(Names.Kind kind, String name, String other) {
        db.inTransaction(() -> {
            new Things(db.sql()).rename(kind, name, other);
            changed();
            return true;
        });
    }

    /** Keeps a reading under an id of its own. */
    public Reading enter(Reading reading) {
        return enter(reading, Optional.empty());
    }

    /** Keeps a reading under an id of its own, and its photograph with it: both or neither. */
    public Reading enter(Reading reading, Optional<Photograph> photograph) {
        Reading kept = reading.withId(Ids.next());
        return db.inTransaction(() -> {
            new Merge(db.sql()).insert(WorkTables.READINGS, List.of(kept));
            photograph.ifPresent(p -> new PhotographTable(db.sql()).keep(kept.id(), p));
            changed();
            return kept;
        });
    }

    /**
     * Takes a reading back: it stays in the file and counts no longer.
     *
     * @return the reading; empty when there is none of this id that counts
     */
    public Optional<Reading> withdraw(String id, LocalDate on) {
        return db.inTransaction(() -> {
            Optional<Reading> reading = readings(new Merge(db.sql())).stream()
                    .filter(r -> r.id().equals(id))
                    .findFirst();
            reading.ifPresent(r -> {
                new WithdrawnTable(db.sql()).add(r, on);
                changed();
            });
            return reading;
        });
    }

    /** Every photograph, without its picture. */
    public List<Photograph.Note> photographs() {
        return db.reading(() -> new PhotographTable(db.sql()).notes());
    }

    public Optional<Photograph> findPhotograph(String id) {
        return db.reading(() -> new PhotographTable(db.sql()).find(id));
    }

    /**
     * Marks a pass made and files its record, both or neither.
     *
     * @param made the pass as it was made; with the id of a stored pass it takes that one's place, else it is new
     * @param account makes the record of the pass as it is kept
     */
    public Chain.Entry fileMade(Pass made, Function<Pass, FiledRecord> account) {
        return db.inTransaction(() -> {
            Chain.Entry entry = book.fileMade(made, account);
            changed();
            return entry;
        });
    }

    /** Files a correction of a record; the pass becomes what it says. */
    public Chain.Entry correct(FiledRecord correction, Pass pass) {
        return correct(correction, List.of(pass));
    }

    /** Files a correction of a record; its passes, one for each product, become what it says. */
    public Chain.Entry correct(FiledRecord correction, List<Pass> passes) {
        return db.inTransaction(() -> {
            Chain.Entry entry = book.correct(correction, passes);
            changed();
            return entry;
        });
    }

    /** Refuses a file that is damaged anywhere that matters, with where. */
    public void requireWhole() {
        db.requireWhole();
    }

    /** Every record in the order of filing. */
    public List<Chain.Entry> records() {
        return db.reading(book::all);
    }

    /** By its number or id. */
    public Optional<Chain.Entry> findRecord(String numberOrId) {
        return records().stream()
                .filter(e -> String.valueOf(e.number()).equals(numberOrId)
                        || e.record().id().equals(numberOrId))
                .findFirst();
    }

    /** Grows with every change; equal counts mean equal facts. */
    public long changes() {
        return db.reading(() -> {
            Long count = db.sql().queryForObject("select amount from state where name = 'changes'", Long.class);
            return count == null ? 0L : count;
        });
    }

    private void changed() {
        db.sql().update("update state set amount = amount + 1 where name = 'changes'");
    }

    @Override
    public void close() {
        db.close();
    }
}
