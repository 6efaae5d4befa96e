// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.field.NotProposed;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** Rules that forbid advising an option, each with its reason; none can be outbid by money. */
public final class ProtectionRules {
    private static final double MOST = .5;
    private static final double RUST_AT_DOUGH = .01;

    private ProtectionRules() {}

    /** Whether a scouted disease is above its threshold. */
    public static boolean isAbove(ProtectionCase c) {
        return ProtectionWorth.findings(c).stream().anyMatch(f -> f.verdict() == Verdict.ABOVE);
    }

    /** What scouting has left open; empty when it is clear or nobody scouted. */
    public static Optional<Said> undecided(ProtectionCase c) {
        return isAbove(c)
                ? Optional.empty()
                : ProtectionWorth.findings(c).stream()
                        .filter(f -> f.verdict() == Verdict.UNDECIDED)
                        .findFirst()
                        .map(ThresholdRule.Finding::said);
    }

    /** Whether a refusal speaks of the insecticide. */
    public static boolean isOfInsecticide(ProtectionReason refusal) {
        return refusal instanceof InsecticideWithoutReason
                || refusal instanceof InsecticideLoses
                || refusal instanceof PreferSelective;
    }

    /** What a refusal makes of a pass. */
    public static NotProposed answer(ProtectionReason refusal) {
        if (refusal instanceof InsecticideLoses) {
            return NotProposed.DOES_NOT_PAY;
        }
        boolean open = refusal instanceof NotScouted
                || refusal instanceof NotNamed
                || refusal instanceof Undecided
                || refusal instanceof InsecticideWithoutReason none
                        && none.finding().isEmpty();
        return open ? NotProposed.NOT_JUDGED : NotProposed.NOTHING_TO_DO;
    }

    /** Whether a refusal falls away once the tassel is out. */
    public static boolean isOfTassel(ProtectionReason refusal) {
        return refusal instanceof ArrestedEars || refusal instanceof TooEarly;
    }

    /** Too late for a pass to save anything. */
    record TooLate(LocalDate date) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.too-late", "day", date);
        }
    }

    /** Before tassel, with a surfactant that may arrest ears. */
    record ArrestedEars(LocalDate date, double chance) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.arrested-ears", "day", date, "chance", Measure.CHANCE.of(chance));
        }
    }

    /** Before tassel, so that it has faded when the grain fills. */
    record TooEarly(LocalDate date, double chance) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.too-early", "day", date, "chance", Measure.CHANCE.of(chance));
        }
    }

    /** One pass between tassel and R3 was made. */
    record SecondPass(LocalDate made) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.second-pass", "day", made);
        }
    }

    /** Scouted, and below the threshold. */
    record BelowThreshold(List<ThresholdRule.Finding> findings) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.below-threshold", "finding", findings.get(0).said());
        }
    }

    /** Nobody has looked, so that no threshold can have been met. */
    record NotScouted() implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.not-scouted");
        }
    }

    /** Lesions of a disease that was not named. */
    record NotNamed() implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.not-named");
        }
    }

    /** Scouted, and not clear of the threshold either way. */
    record Undecided(ThresholdRule.Finding finding) implements ProtectionReason {
        @Override
        public Said said() {
            return finding.said();
        }
    }

    /** An insecticide along with it, and nothing that asks for one. */
    record InsecticideWithoutReason(Optional<AphidFinding> finding) implements ProtectionReason {
        @Override
        public Said said() {
            return finding.map(f -> Said.of("protect.insecticide-no-reason", "finding", f.said()))
                    .orElseGet(() -> Said.of("protect.insecticide-no-count"));
        }
    }

    /** Enough aphids for the question, and less saved than it costs. */
    record InsecticideLoses(AphidFinding finding, AphidsSaved saved) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.insecticide-loses", "finding", finding.said(), "saved", saved.said());
        }
    }

    /** What an insecticide saves from aphids, and what it costs: all of the pass where nothing else goes with it. */
    record AphidsSaved(double saved_kgHa, double worth_usdHa, double cost_usdHa) implements ProtectionReason {
        static AphidsSaved of(ProtectionCase c, ProtectionOption o, AphidOutlook aphids) {
            double perKg = PassWorth.usdKg(c.prices());
            double yield_kgHa = c.futures().stream()
                    .mapToDouble(CropAhead::yield_kgHa)
                    .average()
                    .orElseThrow();
            double driven_usdHa = (o.trackShare() + o.injuryShare()) * yield_kgHa * perKg;
            double saved_kgHa = aphids.saved_kgHa(o);
            return new AphidsSaved(
                    saved_kgHa,
                    saved_kgHa * perKg,
                    o.fungicide().isPresent()
                            ? o.insecticide().map(Insecticide::cost_usdHa).orElse(0.0)
                            : o.cost_usdHa() + driven_usdHa);
        }

        boolean pays() {
            return worth_usdHa > cost_usdHa;
        }

        @Override
        public Said said() {
            return Said.of(
                    "aphids.saved",
                    "saved",
                    Measure.YIELD.of(saved_kgHa),
                    "worth",
                    Measure.MONEY_RATE.of(worth_usdHa),
                    "cost",
                    Measure.MONEY_RATE.of(cost_usdHa));
        }
    }

    /** A broad insecticide would kill those that keep aphids down. */
    record PreferSelective() implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.prefer-selective");
        }
    }

    static List<ProtectionReason> refusals(
            ProtectionCase c, ProtectionOption o, List<ThresholdRule.Finding> findings, AphidOutlook aphids) {
        List<ProtectionReason> no = new ArrayList<>();
        LocalDate date = o.date();
        if (c.share(f -> !date.isBefore(f.r4())) > MOST && !isRustAtDough(c, o)) {
            no.add(new TooLate(date));
        }
        double arrested = c.share(f -> !date.isBefore(f.v8()) && date.isBefore(f.vt()));
        if (o.surfactant() && arrested > 0) {
            no.add(new ArrestedEars(date, arrested));
        }
        o.fungicide().ifPresent(fungicide -> {
            double early = c.share(f -> date.isBefore(f.vt()));
            if (early > c.settings().of(ProtectionAssumption.BEFORE_TASSEL)) {
                no.add(new TooEarly(date, early));
            }
            c.fungicidesMade().stream()
                    .filter(made -> c.share(f -> !made.isBefore(f.vt())) > MOST)
                    .findFirst()
                    .ifPresent(made -> no.add(new SecondPass(made)));
            threshold(c, findings).ifPresent(no::add);
        });
        o.insecticide().ifPresent(insecticide -> insecticideRules(c, o, insecticide, AphidsSaved.of(c, o, aphids), no));
        return no;
    }

    /** Why scouting does not call for a fungicide; empty when a disease is above its threshold. */
    private static Optional<ProtectionReason> threshold(ProtectionCase c, List<ThresholdRule.Finding> findings) {
        if (findings.stream().anyMatch(f -> f.verdict() == Verdict.ABOVE)) {
            return Optional.empty();
        }
        Optional<ProtectionReason> open = findings.stream()
                .filter(f -> f.verdict() == Verdict.UNDECIDED)
                .findFirst()
                .map(Undecided::new);
        if (open.isPresent()) {
            return open;
        }
        if (c.lesions().size() > findings.size()) {
            return Optional.of(new NotNamed());
        }
        return Optional.of(findings.isEmpty() ? new NotScouted() : new BelowThreshold(findings));
    }

    private static void insecticideRules(
            ProtectionCase c,
            ProtectionOption o,
            Insecticide insecticide,
            AphidsSaved saved,
            List<ProtectionReason> no) {
        Optional<AphidFinding> aphids =
                AphidFinding.of(c, o.date(), o.fungicide().isPresent());
        Optional<AphidFinding> enough = aphids.filter(AphidFinding::isAbove);
        if (insecticide.ownReason().isBlank()) {
            if (enough.isEmpty()) {
                no.add(new InsecticideWithoutReason(aphids));
            } else if (!saved.pays()) {
                no.add(new InsecticideLoses(enough.get(), saved));
            }
        }
        boolean present =
                c.aphids().filter(a -> a.mean() > 0 || a.enemies() > 0).isPresent();
        if (insecticide.reach() == Insecticide.Reach.BROAD
                && present
                && insecticide.ownReason().isBlank()) {
            no.add(new PreferSelective());
        }
    }

    /** Southern rust at 1 % of the leaf on most plants may still be worth a pass at R4, not at R5. */
    private static boolean isRustAtDough(ProtectionCase c, ProtectionOption o) {
        boolean dough = c.share(f -> o.date().isBefore(f.r5())) > MOST;
        return dough
                && o.fungicide().isPresent()
                && c.lesions().stream()
                        .filter(s -> s.disease()
                                .filter(d -> d == Disease.SOUTHERN_RUST)
                                .isPresent())
                        .anyMatch(s -> s.severity() >= RUST_AT_DOUGH);
    }
}
