// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Pass;
import org.earleaf.label.LabelBook;
import org.earleaf.mix.Amount;
import org.earleaf.mix.JarResult;
import org.earleaf.mix.MixRules;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What each step of a load asks of the other loads, the lots, the rigs and the labels, over what is kept of them.
 * {@link TankLoad} holds what a load can say of itself.
 */
public final class LoadRules {
    private static final double EPS = 1e-9;

    /** The load that a part goes to, and its rig. */
    public record Other(String id, String rig) {}

    private final LoadLedger kept;

    public LoadRules(LoadLedger kept) {
        this.kept = kept;
    }

    /** What labels say to a load today, over everything made and reserved. */
    public List<LabelFinding> findings(TankLoad load) {
        LabelBook now = kept.labels();
        List<LabelFinding> all = new ArrayList<>();
        for (LoadGround g : load.grounds()) {
            List<GroundUse> ground = ground(load, g);
            all.addAll(LabelCheck.of(now, load.work(g), ground));
            all.addAll(MixCheck.of(now, load.work(g), ground, load.overridden()));
        }
        return all;
    }

    /** Rules of mixing that a load meets on its ground. */
    public List<MixRules.Found> quarrels(TankLoad load) {
        LabelBook now = kept.labels();
        return load.grounds().stream()
                .flatMap(g -> MixCheck.quarrels(now, load.work(g), ground(load, g)).stream())
                .distinct()
                .toList();
    }

    /** What the tank last held and was not cleaned of since; empty where a load may follow. */
    public Optional<Residue> findResidue(TankLoad load) {
        Optional<TankLoad> before = kept.ofRig(load.rig()).stream()
                .filter(o -> !o.id().equals(load.id()) && o.state() == LoadState.APPLIED)
                // Of two at one time the later one counts.
                .reduce((a, b) -> last(b).isBefore(last(a)) ? a : b);
        return before.filter(b -> !kept.isCleaned(load.rig(), last(b)))
                .flatMap(b -> Residue.of(b, load, kept.labels()));
    }

    private static Instant last(TankLoad load) {
        return load.events().stream()
                .map(TankLoad.Event::at)
                .reduce((before, after) -> after)
                .orElse(Instant.MIN);
    }

    /** What is made and reserved on a piece of ground beside a load. */
    private List<GroundUse> ground(TankLoad load, LoadGround g) {
        List<GroundUse> uses = new ArrayList<>();
        for (TankLoad other : kept.onField(g.field())) {
            if (other.state().holds() && !other.id().equals(load.id())) {
                other.grounds().stream()
                        .filter(o -> o.field().equals(g.field()) && meets(o.zone(), g.zone()))
                        .forEach(o -> uses.addAll(other.uses(o)));
            }
        }
        List<Product> products = kept.products();
        for (Pass p : kept.passes()) {
            boolean here = p.field().equals(g.field()) && meets(p.zone(), g.zone());
            if (here && p.state() == Pass.State.MADE) {
                uses.add(GroundUse.made(p, g.ground().zone_ha(), isLabelled(products, p.product())));
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

    /** Another plan of an open load; its reservation goes back. */
    public TankLoad edited(TankLoad load, TankLoad plan, String person, Instant at) {
        kept.giveBack(load.id());
        return load.edited(plan, person, at);
    }

    public TankLoad reserved(TankLoad load, String person, Instant at) {
        TankLoad reserved = load.reserved(findings(load), person, at);
        fitsTank(load);
        draw(load, LoadLine::planned);
        return reserved;
    }

    /** Takes what each line needs out of what the lines before it left of the lots. */
    private void draw(TankLoad load, Function<LoadLine, Amount> needed) {
        for (LoadLine line : load.lines()) {
            kept.draw(load.id(), LotStock.draw(kept.free(), line.product(), needed.apply(line)));
        }
    }

    private void fitsTank(TankLoad load) {
        for (Rig rig : kept.rigs()) {
            boolean same = rig.name().equalsIgnoreCase(load.rig());
            if (same && rig.tank_m3() > 0 && load.volume_m3() > rig.tank_m3() * (1 + EPS)) {
                throw new EarleafException(Problem.of(
                        "load.above-tank",
                        Said.of("where.load", "id", load.id()),
                        Said.of("found.volume", "volume", Measure.VOLUME.of(load.volume_m3())),
                        "most",
                        Measure.VOLUME.of(rig.tank_m3()),
                        "rig",
                        rig.name()));
            }
        }
    }

    /** Begins to mix; refused while the tank holds the rest of something else or a jar test of the mix failed. */
    public TankLoad mixing(TankLoad load, MixStart start, String person, Instant at) {
        requireJar(load);
        requireFreeTank(load.rig(), load.id());
        findResidue(load).ifPresent(LoadRules::refuse);
        return load.mixing(start, person, at);
    }

    private static void refuse(Residue residue) {
        throw new EarleafException(Problem.of(
                "tank.not-clean",
                Said.of("where.tank-of", "rig", residue.last().rig()),
                residue.said(),
                "products",
                residue.products()));
    }

    /** A mix that failed in the jar goes no further. */
    private void requireJar(TankLoad load) {
        Optional<JarResult> jar = kept.findJar(load);
        if (jar.isPresent() && !JarResult.allows(jar, false)) {
            Said place = Said.of("where.load", "id", load.id());
            throw new EarleafException(Problem.of("jar.failed", place, jar.get().said()));
        }
    }

    private void requireFreeTank(String rig, String id) {
        for (TankLoad other : kept.ofRig(rig)) {
            LoadState state = other.state();
            if (!other.id().equals(id) && (state == LoadState.MIXING || state == LoadState.MIXED)) {
                throw new EarleafException(Problem.of(
                        "tank.in-use",
                        Said.of("where.tank-of", "rig", rig),
                        Said.of("found.load-in-tank", "id", other.id(), "state", state)));
            }
        }
    }

    /** Sets a stop of mixing aside, where its rule lets that person. */
    public TankLoad overriding(TankLoad load, String rule, Function<MixRules.Found, Overridden> by) {
        return load.overriding(quarrels(load).stream()
                .filter(q -> q.id().equals(rule) && q.isStop())
                .findFirst()
                .map(by)
                .orElseThrow(() -> new EarleafException(Problem.of(
                        "override.no-stop", Said.of("where.override", "rule", rule), Said.of("found.no-stop")))));
    }

    public TankLoad key(TankLoad load, int order, LoadLine.Key key) {
        requireJar(load);
        return load.key(order, key);
    }

    /** The conditions as they stand now. */
    public MixGate gate(TankLoad load, LocalDate today, boolean tankKnown) {
        boolean jar = JarResult.allows(kept.findJar(load), load.asksForJar());
        boolean stock = kept.free().stream().allMatch(lot -> lot.free() >= -EPS);
        return MixGate.of(
                load, today, findings(load), new MixGate.Yard(findResidue(load).isEmpty(), jar, stock, tankKnown));
    }

    /** Everything is in; the lots give what was measured. */
    public TankLoad mixed(TankLoad load, LocalDate today, boolean tankKnown, String person, Instant at) {
        kept.giveBack(load.id());
        draw(load, LoadLine::measured);
        return load.mixed(gate(load, today, tankKnown), person, at);
    }

    /** Parts a mixed load between two tanks; the other must be empty and clean, or have held the same recipe. */
    public TankLoad.Parted handOver(TankLoad load, double moved_m3, Other other, String person, Instant at) {
        TankLoad.Parted parted = load.handOver(moved_m3, other.rig(), other.id(), person, at);
        requireFreeTank(other.rig(), other.id());
        fitsTank(parted.given());
        findResidue(parted.given()).ifPresent(LoadRules::refuse);
        return parted;
    }

    /** Shares what a load holds of the lots with the one that took a part of it over. */
    public void share(TankLoad before, TankLoad.Parted parted) {
        List<LotStock.Draw> all = kept.drawn(before.id());
        kept.giveBack(before.id());
        double moved = parted.given().volume_m3() / before.volume_m3();
        kept.draw(before.id(), all.stream().map(d -> times(d, 1 - moved)).toList());
        kept.draw(parted.given().id(), all.stream().map(d -> times(d, moved)).toList());
    }

    private static LotStock.Draw times(LotStock.Draw d, double share) {
        return new LotStock.Draw(d.product(), d.lot(), d.amount() * share, d.isMass());
    }

    public TankLoad cancelled(TankLoad load, String why, String person, Instant at) {
        kept.giveBack(load.id());
        return load.cancelled(why, person, at);
    }
}
