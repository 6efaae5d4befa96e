// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.PassOfLoad;
import org.earleaf.load.TankLoad;
import org.earleaf.record.Chain;
import org.earleaf.record.LoadAccount;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.jdbc.core.JdbcTemplate;

/** Files an applied load: a record for each piece of its ground, a pass made for each product; runs inside a transaction. */
final class LoadFiling {
    private final Farm farm;
    private final LabelBook labels;
    private final JdbcTemplate sql;
    private final RecordBook book;

    LoadFiling(Farm farm, LabelBook labels, JdbcTemplate sql, RecordBook book) {
        this.farm = farm;
        this.labels = labels;
        this.sql = sql;
        this.book = book;
    }

    List<Chain.Entry> file(Kept kept, LoadRows rows, Placement placement, Told told) {
        TankLoad load = kept.load();
        if (load.state() != LoadState.APPLIED || kept.filed().isPresent()) {
            Said place = Said.of("where.load", "id", load.id());
            throw new EarleafException(
                    kept.filed().isPresent()
                            ? Problem.of("load.filed-already", place, Said.of("found.filed-load"))
                            : Problem.of(
                                    "load.not-applied", place, Said.of("found.load-state", "state", load.state())));
        }
        List<Chain.Entry> entries = new ArrayList<>();
        for (LoadGround g : load.grounds()) {
            List<Pass> passes =
                    load.lines().stream().map(l -> pass(load, g, l, placement)).toList();
            new Merge(sql).insert(WorkTables.PASSES, passes);
            entries.add(book.append(LoadAccount.of(
                    Ids.next(),
                    load,
                    g,
                    new LoadAccount.Filing(
                            passes.get(0).id(), placement.word(), labels, rows.drawn(load.id()), farm.timeZone(), told),
                    Words.US::say)));
        }
        rows.filed(load.id(), entries.get(0).number());
        return entries;
    }

    private Pass pass(TankLoad load, LoadGround g, LoadLine line, Placement placement) {
        double perHa = line.measuredPerHa();
        RateUnit unit =
                RateUnit.findByWord(line.planned().unit() + "/ac").orElse(line.dry() ? RateUnit.KG_HA : RateUnit.L_HA);
        double nitrogen_kgHa = farm.findNitrogen(line.product())
                .map(n -> line.dry() ? perHa * n.nitrogen_share() : perHa * n.nitrogen_kgL())
                .orElse(0.0);
        return new Pass(
                new PassOfLoad(load.id(), g.label(), line.order()).id(),
                g.field(),
                g.zone(),
                load.date(),
                line.product(),
                perHa / unit.inside(1),
                unit.word(),
                nitrogen_kgHa,
                placement,
                Inhibitor.NONE,
                Pass.State.MADE);
    }
}
