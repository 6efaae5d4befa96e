// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.farm.Product;
import org.earleaf.field.Pass;
import org.earleaf.label.LabelBook;
import org.earleaf.load.GroundUse;
import org.earleaf.load.LabelCheck;
import org.earleaf.load.LabelFinding;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadState;
import org.earleaf.load.MixCheck;
import org.earleaf.load.Residue;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.MixRules;
import org.earleaf.units.Figure;
import org.springframework.jdbc.core.JdbcTemplate;

/** What labels, rules and the tank say to a load, over everything made and reserved; runs inside a transaction. */
final class LoadLooks {
    private final JdbcTemplate sql;
    private final LabelRows labels;
    private final LoadRows rows;
    private final MixNotes notes;

    LoadLooks(JdbcTemplate sql, LabelRows labels, LoadRows rows, MixNotes notes) {
        this.sql = sql;
        this.labels = labels;
        this.rows = rows;
        this.notes = notes;
    }

    List<MixRules.Found> quarrels(TankLoad load) {
        LabelBook now = labels.book();
        return load.grounds().stream()
                .flatMap(g -> MixCheck.quarrels(now, load.work(g), ground(load, g)).stream())
                .distinct()
                .toList();
    }

    /** What the tank last held and was not cleaned of since. */
    Optional<Residue> residue(TankLoad load) {
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
        return before == null || notes.has("clean", Names.of(sql).id(Names.Kind.RIG, load.rig()), last)
                ? Optional.empty()
                : Residue.of(before, load, labels.book());
    }

    List<LabelFinding> findings(TankLoad load) {
        LabelBook now = labels.book();
        List<LabelFinding> all = new ArrayList<>();
        for (LoadGround g : load.grounds()) {
            List<GroundUse> ground = ground(load, g);
            all.addAll(LabelCheck.of(now, load.work(g), ground));
            all.addAll(MixCheck.of(now, load.work(g), ground, load.overridden()));
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
        List<Product> products = new Merge(sql).all(ShelfTables.PRODUCTS);
        for (Pass p : new Merge(sql).all(WorkTables.PASSES)) {
            boolean here = p.field().equals(g.field()) && meets(p.zone(), g.zone());
            if (here && p.state() == Pass.State.MADE && !p.id().startsWith(LoadStore.OF_LOAD)) {
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

    /** Products with their rates in the finished liquid: another strength is another mix. */
    String strengths(TankLoad load) {
        Names names = Names.of(sql);
        TreeSet<String> parts = new TreeSet<>();
        load.lines()
                .forEach(l -> parts.add(names.id(Names.Kind.PRODUCT, l.product()) + " " + Figure.text(l.perHa() / load.rate_m3m2(), 4)));
        return String.join(" + ", parts);
    }
}
