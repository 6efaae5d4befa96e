// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A load from plan to ground. Its recipe is locked to fields, crops, stages and rig when it is reserved; changing any of
 * these later opens the lock and voids every key. Each step says who did it and when; nothing is taken back but by a
 * further step.
 *
 * @param lock fingerprint of what it is locked to; empty: not locked
 * @param overridden stops that somebody has set aside for it
 */
public record TankLoad(
        Ticket ticket,
        Fill fill,
        LabelWork.Driving driving,
        List<LoadGround> grounds,
        List<LoadLine> lines,
        LoadState state,
        String lock,
        List<Overridden> overridden,
        List<Event> events) {
    private static final double LHA_PER_M3M2 = 1e7;

    /**
     * Which load it is.
     *
     * @param job the pass that it belongs to: loads of one job cover ground beside each other
     * @param from load that it was handed over from; empty: mixed in its own tank
     */
    public record Ticket(String id, String job, String rig, LocalDate date, String from) {
        /** One that is mixed in its own tank. */
        public static Ticket of(String id, String job, String rig, LocalDate date) {
            return new Ticket(id, job, rig, date, "");
        }
    }

    /**
     * What is in the tank.
     *
     * @param volume_m3 of finished liquid
     * @param unapplied_m3 of it that fills the lines and stays as heel: product that is used and put on no ground
     * @param rate_m3m2 finished liquid on ground
     * @param nitrogenCarrier whether a nitrogen solution carries the mix
     */
    public record Fill(double volume_m3, double unapplied_m3, double rate_m3m2, boolean nitrogenCarrier) {
        double applied_m3() {
            return volume_m3 - unapplied_m3;
        }

        Fill of(double part_m3, double stays_m3) {
            return new Fill(part_m3, stays_m3, rate_m3m2, nitrogenCarrier);
        }
    }

    /** Who did what when. */
    public record Event(Instant at, String person, Said what) {}

    public TankLoad {
        grounds = List.copyOf(grounds);
        lines = List.copyOf(lines);
        overridden = List.copyOf(overridden);
        events = List.copyOf(events);
    }

    /** As planned, with every stop in force. */
    public static TankLoad planned(
            Ticket ticket, Fill fill, LabelWork.Driving driving, List<LoadGround> grounds, List<LoadLine> lines) {
        return new TankLoad(ticket, fill, driving, grounds, lines, LoadState.PLANNED, "", List.of(), List.of());
    }

    public String id() {
        return ticket.id();
    }

    public String job() {
        return ticket.job();
    }

    public String rig() {
        return ticket.rig();
    }

    public LocalDate date() {
        return ticket.date();
    }

    public String from() {
        return ticket.from();
    }

    public double volume_m3() {
        return fill.volume_m3();
    }

    public double unapplied_m3() {
        return fill.unapplied_m3();
    }

    public double rate_m3m2() {
        return fill.rate_m3m2();
    }

    /** Share of it that goes on ground. */
    public double appliedShare() {
        return fill.applied_m3() / volume_m3();
    }

    /** Whether it may not be poured before a jar test: a nitrogen solution carries a product with a label. */
    public boolean asksForJar() {
        return fill.nitrogenCarrier() && isLabelled();
    }

    /** Whether any product in it carries a pesticide label. */
    public boolean isLabelled() {
        return lines.stream().anyMatch(LoadLine::labelled);
    }

    /** What labels are asked about one piece of its ground. */
    public LabelWork work(LoadGround g) {
        return new LabelWork(
                job(),
                g.label(),
                date(),
                g.ground(),
                g.standing(),
                new LabelWork.Carrier(rate_m3m2() * LHA_PER_M3M2, fill.nitrogenCarrier(), false),
                driving,
                lines.stream()
                        .map(l -> new LabelWork.Part(l.product(), l.perHa(), l.dry(), l.labelled(), l.classes()))
                        .toList());
    }

    /** What it puts, or is to put, on one piece of its ground. */
    public List<GroundUse> uses(LoadGround g) {
        GroundUse.State made = state == LoadState.APPLIED ? GroundUse.State.MADE : GroundUse.State.RESERVED;
        return lines.stream()
                .map(l -> new GroundUse(job(), date(), l.product(), l.measuredPerHa(), g.area_ha(), l.labelled(), made))
                .toList();
    }

    /** What the recipe is locked to, as one fingerprint. */
    public String fingerprint() {
        return LoadLock.of(this);
    }

    public boolean isLocked() {
        return !lock.isEmpty() && lock.equals(fingerprint());
    }

    /** The same load of another plan: planned again, unlocked, without keys. */
    public TankLoad edited(TankLoad plan, String person, Instant at) {
        need(state.isOpen(), Problem.of("load.not-open", where(), seen()));
        List<LoadLine> bare = plan.lines.stream().map(LoadLine::withoutKeys).toList();
        Ticket same = new Ticket(id(), job(), plan.rig(), plan.date(), from());
        TankLoad changed = new TankLoad(
                same, plan.fill, plan.driving, plan.grounds, bare, LoadState.PLANNED, "", List.of(), events);
        return changed.noting(at, person, Said.of("load.event.changed"));
    }

    /** Holds product and label room; the caller has asked labels and stock in the same breath. */
    public TankLoad reserved(List<LabelFinding> findings, String person, Instant at) {
        need(state == LoadState.PLANNED, Problem.of("load.not-planned-to-reserve", where(), seen()));
        need(!lines.isEmpty() && !grounds.isEmpty(), Problem.of("load.empty", where(), seen()));
        refuse(findings);
        TankLoad locked = in(LoadState.RESERVED, fingerprint(), lines);
        return locked.noting(at, person, Said.of("load.event.reserved"));
    }

    /** A stop set aside while it is planned; {@link Overridden} asks who may. */
    public TankLoad overriding(Overridden stop) {
        need(state == LoadState.PLANNED, Problem.of("load.not-planned-to-override", where(), seen()));
        return with(stop);
    }

    private TankLoad with(Overridden stop) {
        List<Overridden> all = new ArrayList<>(overridden);
        all.add(stop);
        return as(state, lock, lines, all, events).noting(stop.at(), stop.person(), stop.said());
    }

    /** On a rig whose calibration has run out with the reason. */
    public TankLoad mixing(MixStart start, String person, Instant at) {
        need(state == LoadState.RESERVED, Problem.of("load.not-reserved", where(), seen()));
        need(isLocked(), Problem.of("load.not-as-locked", where(), seen()));
        start.requireLooked(this);
        TankLoad begun = in(LoadState.MIXING, lock, lines).noting(at, person, Said.of("load.event.mixing"));
        if (start.lapsed().isEmpty()) {
            return begun;
        }
        if (start.reason().isBlank()) {
            Said place = Said.of("where.calibration", "rig", rig());
            throw new EarleafException(
                    Problem.of("load.calibration-lapsed", place, start.lapsed().get()));
        }
        return begun.with(new Overridden(
                Overridden.CALIBRATION, person.strip(), "", start.reason().strip(), at));
    }

    /** One key for the product at a place in the order; the ones before it must be in. */
    public TankLoad key(int order, LoadLine.Key key) {
        need(state == LoadState.MIXING, Problem.of("load.not-mixing", where(), seen()));
        List<LoadLine> now = new ArrayList<>();
        boolean found = false;
        for (LoadLine line : lines) {
            if (line.order() < order && !line.isIn()) {
                throw new EarleafException(Problem.of(
                        "load.step-before",
                        Said.of("where.step-number", "step", order),
                        Said.of("found.step-not-in", "step", line.order(), "product", line.product()),
                        "first",
                        line.order()));
            }
            found |= line.order() == order;
            now.add(line.order() == order ? line.with(key) : line);
        }
        need(found, Problem.of("load.no-such-step", where(), Said.of("where.step-number", "step", order)));
        String code = key.code().strip();
        Said what = key.reason().isBlank()
                ? Said.of("load.event.key", "step", order, "code", code)
                : Said.of(
                        "load.event.key-differs",
                        "step",
                        order,
                        "code",
                        code,
                        "reason",
                        key.reason().strip());
        return in(state, lock, now).noting(key.at(), key.person(), what);
    }

    /** Everything is in; refused with every condition that is not met. */
    public TankLoad mixed(MixGate gate, String person, Instant at) {
        need(state == LoadState.MIXING, Problem.of("load.not-mixing", where(), seen()));
        gate.require(id());
        return in(LoadState.MIXED, lock, lines).noting(at, person, Said.of("load.event.mixed"));
    }

    public TankLoad applied(String person, Instant at) {
        need(state == LoadState.MIXED, Problem.of("load.not-mixed", where(), seen()));
        return in(LoadState.APPLIED, lock, lines).noting(at, person, Said.of("load.event.applied"));
    }

    /** Gives everything back; not once product is in the tank. */
    public TankLoad cancelled(String why, String person, Instant at) {
        boolean empty = lines.stream().allMatch(l -> l.keys().isEmpty());
        need(state.isOpen() || state == LoadState.MIXING && empty, Problem.of("load.holds-product", where(), seen()));
        need(!why.isBlank(), Problem.of("load.no-reason", where(), Said.of("found.no-reason")));
        return in(LoadState.CANCELLED, lock, lines)
                .noting(at, person, Said.of("load.event.cancelled", "why", why.strip()));
    }

    /** A load parted between two tanks. */
    public record Parted(TankLoad kept, TankLoad given) {}

    /**
     * Hands a part of the mixed spray to another rig, with its share of every product and of the ground.
     *
     * @param newId of the load in the other tank
     */
    public Parted handOver(double moved_m3, String otherRig, String newId, String person, Instant at) {
        need(state == LoadState.MIXED, Problem.of("load.not-mixed", where(), seen()));
        need(!LoadLine.same(otherRig, rig()), Problem.of("load.same-rig", where(), Said.text(otherRig)));
        need(
                moved_m3 > 0 && moved_m3 < fill.applied_m3(),
                Problem.of(
                        "load.part-moved",
                        where(),
                        Said.of("found.volume", "volume", Measure.VOLUME.of(moved_m3)),
                        "most",
                        Measure.VOLUME.of(fill.applied_m3())));
        Measured moved = Measure.VOLUME.of(moved_m3);
        Measured all = Measure.VOLUME.of(volume_m3());
        TankLoad kept = share(ticket, volume_m3() - moved_m3, unapplied_m3())
                .noting(at, person, Said.of("load.event.handed-over", "volume", moved, "of", all, "rig", otherRig));
        TankLoad given = share(new Ticket(newId, job(), otherRig, date(), id()), moved_m3, 0)
                .noting(at, person, Said.of("load.event.taken-over", "volume", moved, "of", all, "rig", rig()));
        return new Parted(kept, given);
    }

    /** Heel and lines stay where they are; ground is shared by what goes on it. */
    private TankLoad share(Ticket taken, double part_m3, double stays_m3) {
        double share = part_m3 / volume_m3();
        double ground = (part_m3 - stays_m3) / fill.applied_m3();
        List<LoadLine> parts = lines.stream().map(l -> l.times(share)).toList();
        List<LoadGround> covered = grounds.stream().map(g -> g.covering(ground)).toList();
        TankLoad part =
                new TankLoad(taken, fill.of(part_m3, stays_m3), driving, covered, parts, state, "", overridden, events);
        return part.in(state, part.fingerprint(), parts);
    }

    private TankLoad in(LoadState next, String newLock, List<LoadLine> newLines) {
        return as(next, newLock, newLines, overridden, events);
    }

    private TankLoad noting(Instant at, String person, Said what) {
        need(!person.isBlank(), Problem.of("load.unnamed", where(), Said.of("found.no-person")));
        List<Event> all = new ArrayList<>(events);
        all.add(new Event(at, person.strip(), what));
        return as(state, lock, lines, overridden, all);
    }

    private TankLoad as(
            LoadState next, String newLock, List<LoadLine> newLines, List<Overridden> aside, List<Event> all) {
        return new TankLoad(ticket, fill, driving, grounds, newLines, next, newLock, aside, all);
    }

    private static void refuse(List<LabelFinding> findings) {
        if (!LabelCheck.allows(findings)) {
            throw new EarleafException(findings.stream()
                    .filter(LabelFinding::isStop)
                    .map(LabelFinding::problem)
                    .toList());
        }
    }

    private static void need(boolean met, Problem problem) {
        if (!met) {
            throw new EarleafException(problem);
        }
    }

    private Said where() {
        return Said.of("where.load", "id", id());
    }

    private Said seen() {
        return Said.of("found.load-state", "state", state);
    }
}
