// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.earleaf.farm.Farm;
import org.earleaf.farm.LabelBook;
import org.earleaf.farm.LabelEntry;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.load.Amount;
import org.earleaf.load.GroundUse;
import org.earleaf.load.LabelCheck;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.LotStock;
import org.earleaf.load.MixCheck;
import org.earleaf.load.MixGate;
import org.earleaf.load.TankLoad;
import org.earleaf.record.Chain;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;

/**
 * Loads and label entries of the farm. Every method is one transaction that holds the write lock from its first read:
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
    private final Runnable changed;

    LoadStore(Database db, RecordBook book, Runnable changed) {
        this.db = db;
        this.book = book;
        this.labels = new LabelRows(db.sql());
        this.notes = new MixNotes(db.sql());
        this.rows = new LoadRows(db.sql());
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
        return db.inTransaction(rows::all);
    }

    public Kept get(String id) {
        return db.inTransaction(() -> kept(id));
    }

    public Optional<Kept> find(String id) {
        return db.inTransaction(() -> rows.find(id));
    }

    public Optional<TankLoad> findVersion(String id, long version) {
        return db.inTransaction(() -> rows.findVersion(id, version));
    }

    public LabelBook labels() {
        return db.inTransaction(labels::book);
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
        return db.inTransaction(this::freeNow);
    }

    private List<LotStock> freeNow() {
        return rows.free(new Merge(db.sql()).all(ShelfTables.STOCK));
    }

    public List<LotStock.Draw> drawn(String id) {
        return db.inTransaction(() -> rows.drawn(id));
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
        return db.inTransaction(() -> findingsNow(load));
    }

    public Kept reserve(String id, long version, String person, Instant at) {
        return change(id, version, (load, was) -> {
            TankLoad reserved = load.reserved(findingsNow(load), person, at);
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

    public Kept mixing(String id, long version, String person, Instant at) {
        return change(id, version, (load, was) -> {
            tankFree(load.rig(), id);
            return load.mixing(person, at);
        });
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
        return change(id, version, (load, was) -> load.key(order, key));
    }

    /** The conditions as the store sees them now. */
    public MixGate gate(TankLoad load, LocalDate today, boolean tankKnown) {
        return db.inTransaction(() -> gateNow(load, today, tankKnown));
    }

    private MixGate gateNow(TankLoad load, LocalDate today, boolean tankKnown) {
        boolean jar = !load.nitrogenCarrier()
                || load.lines().stream().noneMatch(LoadLine::labelled)
                || notes.has("jar", recipe(load), Instant.MIN);
        boolean stock = freeNow().stream().allMatch(lot -> lot.free() >= -EPS);
        return MixGate.of(load, today, findingsNow(load), rigReady(load), jar, stock, tankKnown);
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
            if (!rigReady(parted.given())) {
                throw EarleafException.of(
                        "tank of the " + rig,
                        "the rest of another recipe",
                        "a clean tank",
                        "Clean it out and note it.");
            }
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
        write(() -> notes.note("clean", rig, how, person, at));
    }

    /** Notes a jar test that passed for the mix of a load. */
    public void jarTested(TankLoad load, String what, String person, Instant at) {
        write(() -> notes.note("jar", recipe(load), what, person, at));
    }

    private static String recipe(TankLoad load) {
        TreeSet<String> names = new TreeSet<>();
        load.lines().forEach(l -> names.add(l.product()));
        return String.join(" + ", names);
    }

    /** Whether the tank held nothing before, the same products, or was cleaned since. */
    private boolean rigReady(TankLoad load) {
        Instant last = Instant.MIN;
        TankLoad before = null;
        for (Kept k : rows.ofRig(load.rig())) {
            TankLoad other = k.load();
            Instant at = other.events().isEmpty()
                    ? Instant.MIN
                    : other.events().get(other.events().size() - 1).at();
            if (!other.id().equals(load.id()) && other.state() == LoadState.APPLIED && !at.isBefore(last)) {
                last = at;
                before = other;
            }
        }
        if (before == null) {
            return true;
        }
        List<String> now = load.lines().stream().map(LoadLine::product).toList();
        boolean same = before.lines().stream().filter(LoadLine::labelled).allMatch(l -> now.contains(l.product()));
        return same || notes.has("clean", load.rig(), last);
    }

    private List<LabelFinding> findingsNow(TankLoad load) {
        LabelBook now = labels.book();
        List<LabelFinding> all = new ArrayList<>();
        for (LoadGround g : load.grounds()) {
            List<GroundUse> ground = ground(load, g);
            all.addAll(LabelCheck.of(now, load.work(g), ground));
            all.addAll(MixCheck.of(now, load.work(g), ground));
        }
        return all;
    }

    /** What is made and reserved on a piece of ground beside a load. */
    private List<GroundUse> ground(TankLoad load, LoadGround g) {
        List<GroundUse> uses = new ArrayList<>();
        for (TankLoad other : rows.onField(g.field())) {
            if (other.state().holds() && !other.id().equals(load.id())) {
                other.grounds().stream()
                        .filter(o -> o.field().equals(g.field()) && meets(o.zone(), g.zone()))
                        .forEach(o -> uses.addAll(other.uses(o)));
            }
        }
        List<Product> products = new Merge(db.sql()).all(ShelfTables.PRODUCTS);
        for (Pass p : new Merge(db.sql()).all(WorkTables.PASSES)) {
            boolean here = p.field().equals(g.field()) && meets(p.zone(), g.zone());
            if (here && p.state() == Pass.State.MADE && !p.id().startsWith(OF_LOAD)) {
                uses.add(GroundUse.made(p, g.zone_ha(), isLabelled(products, p.product())));
            }
        }
        return uses;
    }

    private static boolean meets(String zone, String other) {
        return zone.isEmpty() || other.isEmpty() || zone.equals(other);
    }

    private static boolean isLabelled(List<Product> products, String name) {
        return products.stream()
                .anyMatch(p -> p.name().equalsIgnoreCase(name)
                        && p.nitrogen() == null
                        && p.kind().isLimiting());
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
