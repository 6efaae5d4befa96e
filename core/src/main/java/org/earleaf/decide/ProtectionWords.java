// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.earleaf.farm.ProductKind;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Purpose;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.protection.TarSpotFound;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** Why a fungicide or an insecticide is not proposed. */
final class ProtectionWords {
    /** Scouting begins so long before tassel; before that the morning is silent (extension: 10 to 14 days). */
    static final int SCOUT_BEFORE_TASSEL_D = 14;

    private final ZoneEnsemble futures;
    private final ProtectionCase facts;
    private final List<SprayMix> mixes;
    private final boolean noRig;

    ProtectionWords(ZoneEnsemble futures, ProtectionCase facts, List<SprayMix> mixes, boolean noRig) {
        this.futures = futures;
        this.facts = facts;
        this.mixes = mixes;
        this.noRig = noRig;
    }

    /** The day by which a share of the futures has come to a stage. */
    static LocalDate day(ProtectionCase facts, Function<CropAhead, LocalDate> stage, double share) {
        List<LocalDate> days = facts.futures().stream().map(stage).sorted().toList();
        return days.get((int) Math.min(days.size() - 1, Math.floor(share * days.size())));
    }

    /** From two weeks before tassel to R5 in half of the futures. */
    static boolean isSeason(ProtectionCase facts) {
        boolean near = !facts.on().isBefore(day(facts, CropAhead::vt, .5).minusDays(SCOUT_BEFORE_TASSEL_D));
        return near && facts.on().isBefore(day(facts, CropAhead::r5, .5));
    }

    List<ProtectionAnswer.LeftOut> leftOut(List<Option> options, Optional<Option> proposed) {
        boolean soon =
                isSeason(facts) || !facts.lesions().isEmpty() && facts.on().isBefore(day(facts, CropAhead::r5, .5));
        List<ProtectionAnswer.LeftOut> all = new ArrayList<>();
        boolean fungicideGoes = goes(proposed, ProductKind.FUNGICIDE);
        if (!fungicideGoes) {
            Why why = fungicide(options);
            all.add(new ProtectionAnswer.LeftOut(Purpose.FUNGICIDE, why.answer(), planned(why.said()), soon));
        }
        boolean asked = facts.aphids().filter(a -> a.perPlant() > 0).isPresent() || fungicideGoes && inRecipe(proposed);
        if (!goes(proposed, ProductKind.INSECTICIDE) && asked) {
            insecticide(options)
                    .ifPresent(why ->
                            all.add(new ProtectionAnswer.LeftOut(Purpose.INSECTICIDE, why.answer(), why.said(), soon)));
        }
        return all;
    }

    private static boolean goes(Optional<Option> proposed, ProductKind kind) {
        return proposed.flatMap(Option::spray).filter(s -> s.mix().has(kind)).isPresent();
    }

    /** Whether the recipe of the proposed pass holds an insecticide that was left out. */
    private boolean inRecipe(Optional<Option> proposed) {
        return proposed.flatMap(Option::spray)
                .filter(s -> mixes.stream()
                        .anyMatch(m -> m.recipe().equals(s.mix().recipe()) && m.has(ProductKind.INSECTICIDE)))
                .isPresent();
    }

    private record Why(NotProposed answer, Said said) {}

    private Why fungicide(List<Option> options) {
        if (mixes.stream().noneMatch(m -> m.has(ProductKind.FUNGICIDE))) {
            return new Why(NotProposed.NOT_JUDGED, withTarSpot(Said.of("left-out.no-fungicide-recipe")));
        }
        if (noRig) {
            return new Why(NotProposed.CANNOT_BE_DONE, withTarSpot(Said.of("left-out.no-spray-rig")));
        }
        List<Option> fungicides = options.stream()
                .filter(o -> o.spray().orElseThrow().mix().has(ProductKind.FUNGICIDE))
                .toList();
        if (fungicides.isEmpty()) {
            boolean soon = facts.on().isBefore(day(facts, CropAhead::vt, .5));
            return new Why(NotProposed.NOTHING_TO_DO, soon ? beforeTassel() : Said.of("left-out.past-r4"));
        }
        Option best = fungicides.get(0);
        if (best.mayBeMade()) {
            Said loses = Said.of(
                    "left-out.loses", "chance", Measure.CHANCE.of(best.worth().chanceItPays()));
            return new Why(NotProposed.DOES_NOT_PAY, withTarSpot(loses));
        }
        return TarSpotFound.of(facts)
                .filter(t -> isTooEarly(fungicides))
                .map(found -> new Why(NotProposed.NOTHING_TO_DO, tarSpotEarly(found)))
                .orElseGet(() -> {
                    Reason refusal = refusal(fungicides);
                    return new Why(answer(refusal), withTarSpot(refusal.said()));
                });
    }

    /** Whether nothing but the stage to come stands against some pass. */
    private boolean isTooEarly(List<Option> fungicides) {
        return facts.on().isBefore(day(facts, CropAhead::vt, .5))
                && fungicides.stream().anyMatch(o -> o.refusals().stream().allMatch(ProtectionWords::isOfStageToCome));
    }

    private static boolean isOfStageToCome(Reason r) {
        return r instanceof ProtectionPasses.OfProtection p && p.isOfTassel()
                || r instanceof SprayLimits.OutsideLabel label && !label.tooLate();
    }

    /** Tar spot that was found is told whatever speaks against a pass: how far it may spread and what comes next. */
    private Said withTarSpot(Said reason) {
        return TarSpotFound.of(facts)
                .map(t -> Said.of(
                        "left-out.tar-spot",
                        "found",
                        t.said(),
                        "reason",
                        reason,
                        "next",
                        t.next().said()))
                .orElse(reason);
    }

    private Said tarSpotEarly(TarSpotFound found) {
        return Said.of(
                "left-out.tar-spot-early",
                "found",
                found.said(),
                "tassel",
                day(facts, CropAhead::vt, .5),
                "milk",
                day(facts, CropAhead::r3, .5),
                "next",
                found.next().said());
    }

    /** What stands against every choice; where nothing does, what stands against the one least spoken against. */
    private static Reason refusal(List<Option> fungicides) {
        List<Option> alone = fungicides.stream()
                .filter(o -> !o.spray().orElseThrow().mix().has(ProductKind.INSECTICIDE))
                .toList();
        List<Option> of = alone.isEmpty() ? fungicides : alone;
        Set<Said> common = new LinkedHashSet<>(said(of.get(0)));
        of.forEach(o -> common.retainAll(said(o)));
        return of.get(0).refusals().stream()
                .filter(r -> common.contains(r.said()))
                .findFirst()
                .orElseGet(() -> of.stream()
                        .min(Comparator.comparingInt(o -> o.refusals().size()))
                        .orElseThrow()
                        .refusals()
                        .get(0));
    }

    private static NotProposed answer(Reason refusal) {
        if (refusal instanceof SprayLimits.NotEntered || refusal instanceof SprayLimits.NoPrice) {
            return NotProposed.NOT_JUDGED;
        }
        return refusal instanceof ProtectionPasses.OfProtection p ? p.answer() : NotProposed.CANNOT_BE_DONE;
    }

    private static List<Said> said(Option o) {
        return o.refusals().stream().map(Reason::said).toList();
    }

    private Said beforeTassel() {
        Optional<TarSpotFound> tarSpot = TarSpotFound.of(facts);
        if (tarSpot.isPresent()) {
            return tarSpotEarly(tarSpot.get());
        }
        LocalDate half = day(facts, CropAhead::vt, .5);
        LocalDate scout = half.minusDays(SCOUT_BEFORE_TASSEL_D);
        LocalDate early = day(facts, CropAhead::vt, .1);
        LocalDate late = day(facts, CropAhead::vt, .9);
        return early.equals(late)
                ? Said.of("left-out.before-tassel", "tassel", half, "scout", scout)
                : Said.of(
                        "left-out.before-tassel-between", "tassel", half, "early", early, "late", late, "scout", scout);
    }

    /** With the pass that is planned already, where there is one. */
    private Said planned(Said reason) {
        return ProtectionGround.planned(futures.farm(), futures.zone(), futures.on()).stream()
                .findFirst()
                .map(d -> Said.of("left-out.one-is-planned", "reason", reason, "day", d))
                .orElse(reason);
    }

    private Optional<Why> insecticide(List<Option> options) {
        List<Option> with = options.stream()
                .filter(o -> o.spray().orElseThrow().mix().has(ProductKind.INSECTICIDE))
                .toList();
        Optional<Reason> because = with.stream()
                .flatMap(o -> o.refusals().stream())
                .filter(ProtectionPasses.OfProtection.class::isInstance)
                .filter(r -> ((ProtectionPasses.OfProtection) r).isOfInsecticide())
                .findFirst();
        return because.map(r -> new Why(answer(r), r.said())).or(() -> with.stream()
                .filter(Option::mayBeMade)
                .findFirst()
                .map(o -> new Why(NotProposed.DOES_NOT_PAY, Said.of("left-out.insecticide-loses"))));
    }
}
