// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.LotStock;
import org.earleaf.load.MixGate;
import org.earleaf.load.Overridden;
import org.earleaf.load.Residue;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.Amount;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.MixRules;
import org.earleaf.record.Chain;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;

/**
 * Loads and label entries of the farm. Every change is one transaction that holds the write lock from its first read:
 * two loads that are each within a season's most, a lot or a tank and together above it are never both let through.
 * A change names the version it was made on; on another one it is refused with both.
 */
public final class LoadStore {
    private static final double EPS = 1e-9;
    /** Passes that were made by loads are counted with the loads. */
    static final String OF_LOAD = "load ";

    private final Database db;
    private final LoadRows rows;
    private final LabelRows labels;
    private final MixNotes notes;
    private final RecordBook book;
    private final LoadLooks looks;
    private final Runnable changed;

    LoadStore(Database db, RecordBook book, Runnable changed) {
        this.db = db;
        this.book = book;
        this.labels = new LabelRows(db.sql());
        this.notes = new MixNotes(db.sql());
        this.rows = new LoadRows(db.sql());
        this.looks = new LoadLooks(db.sql(), labels, rows, notes);
        this.changed = changed;
    }

    /**
     * A load as it stands.
     *
     * @param filed number of its record
     */
    public record Kept(TankLoad load, long version, OptionalLong filed) {
        /** Names this version to those who change it. */
        public String tag() {
            return "\"" + version + "\"";
        }
    }

    public List<Kept> all() {
        return db.reading(rows::all);
    }

    public Kept get(String id) {
        return db.reading(() -> kept(id));
    }

    public Optional<Kept> find(String id) {
        return db.reading(() -> rows.find(id));
    }

    public Optional<TankLoad> findVersion(String id, long version) {
        return db.reading(() -> rows.findVersion(id, version));
    }

    public LabelBook labels() {
        return db.reading(labels::book);
    }

    /** Keeps a label entry behind those before it; none is ever changed. */
    public void keep(LabelEntry entry) {
        write(() -> {
            labels.add(entry);
            changed.run();
            return entry;
        });
    }

    /** What is free of every lot. */
    public List<LotStock> free() {
        return db.reading(this::freeNow);
    }

    private List<LotStock> freeNow() {
        return rows.free(new Merge(db.sql()).all(ShelfTables.STOCK));
    }

    public List<LotStock.Draw> drawn(String id) {
        return db.reading(() -> rows.drawn(id));
    }

    public Kept add(TankLoad planned) {
        return write(() -> rows.add(planned));
    }

    /** Takes another plan for an open load; its reservation goes back. */
    public Kept edit(String id, long version, TankLoad plan, String person, Instant at) {
        return change(id, version, (load, was) -> {
            rows.giveBack(id);
            return load.edited(plan, person, at);
        });
    }

    /** What labels say to a load today, over everything made and reserved. */
    public List<LabelFinding> findings(TankLoad load) {
        return db.reading(() -> looks.findings(load));
    }

    public Kept reserve(String id, long version, String person, Instant at) {
        return change(id, version, (load, was) -> {
            TankLoad reserved = load.reserved(looks.findings(load), person, at);
            fitsTank(load);
            draw(load, LoadLine::planned);
            return reserved;
        });
    }

    /** Takes what each line needs out of what the lines before it left of the lots. */
    private void draw(TankLoad load, Function<LoadLine, Amount> needed) {
        for (LoadLine line : load.lines()) {
            rows.draw(load.id(), LotStock.draw(freeNow(), line.product(), needed.apply(line)));
        }
    }

    private void fitsTank(TankLoad load) {
        for (Rig rig : new Merge(db.sql()).all(ShelfTables.RIGS)) {
            boolean same = rig.name().equalsIgnoreCase(load.rig());
            if (same && rig.tank_m3() > 0 && load.volume_m3() > rig.tank_m3() * (1 + EPS)) {
                throw EarleafException.of(
                        "load " + load.id(),
                        TankLoad.gallons(load.volume_m3()),
                        "at most the " + TankLoad.gallons(rig.tank_m3()) + " of the " + rig.name(),
                        "Part it into more loads.");
            }
        }
    }

    /** Begins to mix on a rig whose calibration holds. */
    public Kept mixing(String id, long version, String person, Instant at) {
        return mixing(id, version, "", "", person, at);
    }

    /**
     * Begins to mix; refused while the tank holds the rest of something else or a jar test of the mix failed.
     *
     * @param lapsed why the rig's calibration does not hold; empty: it does
     * @param reason why the rig goes out all the same
     */
    public Kept mixing(String id, long version, String lapsed, String reason, String person, Instant at) {
        return change(id, version, (load, was) -> {
            jarOf(load);
            tankFree(load.rig(), id);
            looks.residue(load).ifPresent(LoadStore::refuse);
            return load.mixing(lapsed, reason, person, at);
        });
    }

    private static void refuse(Residue residue) {
        throw EarleafException.of(
                "tank of the " + residue.last().rig(),
                residue.sentence(),
                "a tank cleaned out as the label of " + String.join(", ", residue.products()) + " says",
                "Clean it out, and note who did it and how.");
    }

    /** A mix that failed in the jar goes no further. */
    private void jarOf(TankLoad load) {
        Optional<JarResult> jar = notes.findJar(looks.strengths(load));
        if (!JarResult.allows(jar, false)) {
            throw EarleafException.of(
                    "load " + load.id(),
                    jar.map(JarResult::sentence).orElse(""),
                    "a mix that stays mixed in the jar",
                    "Do not pour it: change the mix, or test again with other water and note that it passed.");
        }
    }

    /** Sets a stop of mixing aside, where its rule lets that person. */
    public Kept override(String id, long version, String rule, String person, String role, String reason, Instant at) {
        return change(
                id,
                version,
                (load, was) -> load.overriding(looks.quarrels(load).stream()
                        .filter(q -> q.id().equals(rule) && q.isStop())
                        .findFirst()
                        .map(q -> Overridden.of(q, person, role, reason, at))
                        .orElseThrow(() -> EarleafException.of(
                                "override", "rule " + rule, "a rule that stops this load", "Open the load again."))));
    }

    /** Rules of mixing that a load meets on its ground. */
    public List<MixRules.Found> quarrels(TankLoad load) {
        return db.reading(() -> looks.quarrels(load));
    }

    private void tankFree(String rig, String id) {
        for (Kept other : rows.ofRig(rig)) {
            LoadState state = other.load().state();
            if (!other.load().id().equals(id) && (state == LoadState.MIXING || state == LoadState.MIXED)) {
                throw EarleafException.of(
                        "tank of the " + rig,
                        "load " + other.load().id() + ", " + state.word(),
                        "an empty tank",
                        "Apply that load or hand it over first.");
            }
        }
    }

    public Kept key(String id, long version, int order, LoadLine.Key key) {
        return change(id, version, (load, was) -> {
            jarOf(load);
            return load.key(order, key);
        });
    }

    /** The conditions as the store sees them now. */
    public MixGate gate(TankLoad load, LocalDate today, boolean tankKnown) {
        return db.reading(() -> gateNow(load, today, tankKnown));
    }

    private MixGate gateNow(TankLoad load, LocalDate today, boolean tankKnown) {
        boolean jar = JarResult.allows(notes.findJar(looks.strengths(load)), load.asksForJar());
        boolean stock = freeNow().stream().allMatch(lot -> lot.free() >= -EPS);
        return MixGate.of(load, today, looks.findings(load), looks.residue(load).isEmpty(), jar, stock, tankKnown);
    }

    public Kept mixed(String id, long version, LocalDate today, boolean tankKnown, String person, Instant at) {
        return change(id, version, (load, was) -> {
            rows.giveBack(id);
            draw(load, LoadLine::measured);
            return load.mixed(gateNow(load, today, tankKnown), person, at);
        });
    }

    /** Hands a part of a mixed load to another rig; its tank must be empty and clean, or have held the same recipe. */
    public List<Kept> handOver(
            String id, long version, double moved_m3, String rig, String newId, String person, Instant at) {
        return write(() -> {
            Kept was = at(id, version);
            TankLoad.Parted parted = was.load().handOver(moved_m3, rig, newId, person, at);
            tankFree(rig, newId);
            fitsTank(parted.given());
            looks.residue(parted.given()).ifPresent(LoadStore::refuse);
            Kept kept = rows.put(parted.kept(), was);
            Kept given = rows.add(parted.given());
            List<LotStock.Draw> all = rows.drawn(id);
            rows.giveBack(id);
            double share = moved_m3 / was.load().volume_m3();
            rows.draw(id, all.stream().map(d -> times(d, 1 - share)).toList());
            rows.draw(newId, all.stream().map(d -> times(d, share)).toList());
            return List.of(kept, given);
        });
    }

    private static LotStock.Draw times(LotStock.Draw d, double share) {
        return new LotStock.Draw(d.product(), d.lot(), d.amount() * share, d.isMass());
    }

    public Kept applied(String id, long version, String person, Instant at) {
        return change(id, version, (load, was) -> load.applied(person, at));
    }

    public Kept cancel(String id, long version, String why, String person, Instant at) {
        return change(id, version, (load, was) -> {
            rows.giveBack(id);
            return load.cancelled(why, person, at);
        });
    }

    /**
     * Files an applied load: a record for each piece of its ground and a pass made for each product, all or nothing.
     *
     * @param told what only a person knows
     */
    public List<Chain.Entry> file(String id, Farm farm, Placement placement, Told told) {
        return write(() -> {
            List<Chain.Entry> entries =
                    new LoadFiling(farm, labels.book(), db.sql(), book).file(kept(id), rows, placement, told);
            changed.run();
            return entries;
        });
    }

    /** Notes that a rig was cleaned out, with how. */
    public void cleaned(String rig, String how, String person, Instant at) {
        write(() -> notes.note("clean", Names.of(db.sql()).id(Names.Kind.RIG, rig), how, person, at));
    }

    /** Keeps what a jar test of a load's mix showed. */
    public void jarTested(TankLoad load, JarResult result) {
        write(() -> notes.jar(looks.strengths(load), result));
    }

    public Optional<JarResult> findJar(TankLoad load) {
        return db.reading(() -> notes.findJar(looks.strengths(load)));
    }

    /** What the tank last held and was not cleaned of since; empty where a load may follow. */
    public Optional<Residue> findResidue(TankLoad load) {
        return db.reading(() -> looks.residue(load));
    }

    private Kept kept(String id) {
        return rows.find(id)
                .orElseThrow(() ->
                        EarleafException.of("load", "\"" + id + "\"", "a load of this farm", "See the page Loads."));
    }

    /** The load, where it still is the version that the caller saw. */
    private Kept at(String id, long version) {
        Kept now = kept(id);
        if (now.version() != version) {
            throw new StaleLoad(rows.findVersion(id, version).orElse(now.load()), now);
        }
        return now;
    }

    private Kept change(String id, long version, BiFunction<TankLoad, Kept, TankLoad> step) {
        return write(() -> {
            Kept was = at(id, version);
            return rows.put(step.apply(was.load(), was), was);
        });
    }

    /** Loads are no facts of the farm until they are filed: what is worked out for its fields stands until then. */
    private <T> T write(Supplier<T> work) {
        return db.inTransaction(work);
    }
}
