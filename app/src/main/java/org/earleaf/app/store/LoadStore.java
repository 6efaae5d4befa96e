// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.field.Placement;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadRules;
import org.earleaf.load.LotStock;
import org.earleaf.load.MixGate;
import org.earleaf.load.MixStart;
import org.earleaf.load.Overridden;
import org.earleaf.load.Residue;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.MixRules;
import org.earleaf.record.Chain;
import org.earleaf.record.LoadFiling;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;

/**
 * Loads and label entries of the farm. Every change is one transaction that holds the write lock from its first read:
 * two loads that are each within a season's most, a lot or a tank and together above it are never both let through.
 * A change names the version it was made on; on another one it is refused with both.
 */
public final class LoadStore {
    private final Database db;
    private final LoadRows rows;
    private final LabelRows labels;
    private final MixNotes notes;
    private final RecordBook book;
    private final KeptLoads kept;
    private final LoadRules rules;
    private final Runnable changed;

    LoadStore(Database db, RecordBook book, Runnable changed) {
        this.db = db;
        this.book = book;
        this.labels = new LabelRows(db.sql());
        this.notes = new MixNotes(db.sql());
        this.rows = new LoadRows(db.sql());
        this.kept = new KeptLoads(db.sql(), labels, rows, notes);
        this.rules = new LoadRules(kept);
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
        return db.reading(() -> one(id));
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
        return db.reading(kept::free);
    }

    public List<LotStock.Draw> drawn(String id) {
        return db.reading(() -> rows.drawn(id));
    }

    public Kept add(TankLoad planned) {
        return write(() -> rows.add(planned));
    }

    /** Takes another plan for an open load; its reservation goes back. */
    public Kept edit(String id, long version, TankLoad plan, String person, Instant at) {
        return change(id, version, load -> rules.edited(load, plan, person, at));
    }

    /** What labels say to a load today, over everything made and reserved. */
    public List<LabelFinding> findings(TankLoad load) {
        return db.reading(() -> rules.findings(load));
    }

    public Kept reserve(String id, long version, String person, Instant at) {
        return change(id, version, load -> rules.reserved(load, person, at));
    }

    /** Begins to mix; refused while the tank holds the rest of something else or a jar test of the mix failed. */
    public Kept mixing(String id, long version, MixStart start, String person, Instant at) {
        return change(id, version, load -> rules.mixing(load, start, person, at));
    }

    /** Sets a stop of mixing aside, where its rule lets that person. */
    public Kept override(String id, long version, String rule, Function<MixRules.Found, Overridden> by) {
        return change(id, version, load -> rules.overriding(load, rule, by));
    }

    /** Rules of mixing that a load meets on its ground. */
    public List<MixRules.Found> quarrels(TankLoad load) {
        return db.reading(() -> rules.quarrels(load));
    }

    public Kept key(String id, long version, int order, LoadLine.Key key) {
        return change(id, version, load -> rules.key(load, order, key));
    }

    /** The conditions as the store sees them now. */
    public MixGate gate(TankLoad load, LocalDate today, boolean tankKnown) {
        return db.reading(() -> rules.gate(load, today, tankKnown));
    }

    public Kept mixed(String id, long version, LocalDate today, boolean tankKnown, String person, Instant at) {
        return change(id, version, load -> rules.mixed(load, today, tankKnown, person, at));
    }

    /** Hands a part of a mixed load to another rig; its tank must be empty and clean, or have held the same recipe. */
    public List<Kept> handOver(
            String id, long version, double moved_m3, LoadRules.Other other, String person, Instant at) {
        return write(() -> {
            Kept was = at(id, version);
            TankLoad.Parted parted = rules.handOver(was.load(), moved_m3, other, person, at);
            Kept left = rows.put(parted.kept(), was);
            Kept given = rows.add(parted.given());
            rules.share(was.load(), parted);
            return List.of(left, given);
        });
    }

    public Kept applied(String id, long version, String person, Instant at) {
        return change(id, version, load -> load.applied(person, at));
    }

    public Kept cancel(String id, long version, String why, String person, Instant at) {
        return change(id, version, load -> rules.cancelled(load, why, person, at));
    }

    /**
     * Files an applied load: a record for each piece of its ground and a pass made for each product, all or nothing.
     *
     * @param told what only a person knows
     */
    public List<Chain.Entry> file(String id, Farm farm, Placement placement, Told told) {
        return write(() -> {
            Kept of = one(id);
            LoadFiling.Papers papers = new LoadFiling.Papers(
                    farm, labels.book(), rows.drawn(id), placement, told, Ids::next, Words.US::say);
            List<Chain.Entry> entries = new ArrayList<>();
            for (LoadFiling.Filed each : LoadFiling.of(of.load(), of.filed().isPresent(), papers)) {
                new Merge(db.sql()).insert(WorkTables.PASSES, each.passes());
                entries.add(book.append(each.record()));
            }
            rows.filed(id, entries.get(0).number());
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
        write(() -> notes.jar(kept.strengths(load), result));
    }

    public Optional<JarResult> findJar(TankLoad load) {
        return db.reading(() -> kept.findJar(load));
    }

    /** What the tank last held and was not cleaned of since; empty where a load may follow. */
    public Optional<Residue> findResidue(TankLoad load) {
        return db.reading(() -> rules.findResidue(load));
    }

    private Kept one(String id) {
        return rows.find(id).orElseThrow(() -> EarleafException.coded("load.unknown", "load", id));
    }

    /** The load, where it still is the version that the caller saw. */
    private Kept at(String id, long version) {
        Kept now = one(id);
        if (now.version() != version) {
            throw new StaleLoad(rows.findVersion(id, version).orElse(now.load()), now);
        }
        return now;
    }

    private Kept change(String id, long version, UnaryOperator<TankLoad> step) {
        return write(() -> {
            Kept was = at(id, version);
            return rows.put(step.apply(was.load()), was);
        });
    }

    /** Loads are no facts of the farm until they are filed: what is worked out for its fields stands until then. */
    private <T> T write(Supplier<T> work) {
        return db.inTransaction(work);
    }
}
