// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.store.Names.Kind;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Pass;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadLedger;
import org.earleaf.load.LotStock;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.JarResult;
import org.earleaf.record.PassOfLoad;
import org.earleaf.units.Figure;
import org.springframework.jdbc.core.JdbcTemplate;

/** Rows of loads, labels, lots and notes as the rules of loads ask for them; runs inside a transaction. */
final class KeptLoads implements LoadLedger {
    private final JdbcTemplate sql;
    private final LabelRows labels;
    private final LoadRows rows;
    private final MixNotes notes;

    KeptLoads(JdbcTemplate sql, LabelRows labels, LoadRows rows, MixNotes notes) {
        this.sql = sql;
        this.labels = labels;
        this.rows = rows;
        this.notes = notes;
    }

    @Override
    public LabelBook labels() {
        return labels.book();
    }

    @Override
    public List<Rig> rigs() {
        return new Merge(sql).all(ShelfTables.RIGS);
    }

    @Override
    public List<Product> products() {
        return new Merge(sql).all(ShelfTables.PRODUCTS);
    }

    @Override
    public List<Pass> passes() {
        return new Merge(sql)
                .all(WorkTables.PASSES).stream()
                        .filter(p -> !PassOfLoad.isOne(p.id()))
                        .toList();
    }

    @Override
    public List<TankLoad> onField(String field) {
        return rows.onField(field);
    }

    @Override
    public List<TankLoad> ofRig(String rig) {
        return rows.ofRig(rig).stream().map(Kept::load).toList();
    }

    @Override
    public List<LotStock> free() {
        return rows.free(new Merge(sql).all(ShelfTables.STOCK));
    }

    @Override
    public List<LotStock.Draw> drawn(String load) {
        return rows.drawn(load);
    }

    @Override
    public void draw(String load, List<LotStock.Draw> draws) {
        rows.draw(load, draws);
    }

    @Override
    public void giveBack(String load) {
        rows.giveBack(load);
    }

    @Override
    public Optional<JarResult> findJar(TankLoad load) {
        return notes.findJar(strengths(load));
    }

    @Override
    public boolean isCleaned(String rig, Instant since) {
        return notes.has("clean", Names.of(sql).id(Kind.RIG, rig), since);
    }

    /** Products with their rates in the finished liquid: another strength is another mix. */
    String strengths(TankLoad load) {
        Names names = Names.of(sql);
        TreeSet<String> parts = new TreeSet<>();
        load.lines()
                .forEach(l -> parts.add(
                        names.id(Kind.PRODUCT, l.product()) + " " + Figure.text(l.perHa() / load.rate_m3m2(), 4)));
        return String.join(" + ", parts);
    }
}
