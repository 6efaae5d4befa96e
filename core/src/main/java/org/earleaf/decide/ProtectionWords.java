// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.earleaf.farm.ProductKind;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.ProtectionCase;

/** Why a fungicide or an insecticide is not proposed. */
final class ProtectionWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
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
            all.add(new ProtectionAnswer.LeftOut("fungicide", fungicide(options) + planned(), soon));
        }
        boolean asked = facts.aphids().filter(a -> a.perPlant() > 0).isPresent() || fungicideGoes && inRecipe(proposed);
        if (!goes(proposed, ProductKind.INSECTICIDE) && asked) {
            insecticide(options).ifPresent(r -> all.add(new ProtectionAnswer.LeftOut("insecticide", r, soon)));
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

    private String fungicide(List<Option> options) {
        if (mixes.stream().noneMatch(m -> m.has(ProductKind.FUNGICIDE))) {
            return "No recipe of the farm holds a product of kind fungicide.";
        }
        if (noRig) {
            return "No rig of the farm sprays over the top, under the canopy or from the air.";
        }
        List<Option> fungicides = options.stream()
                .filter(o -> o.spray().orElseThrow().mix().has(ProductKind.FUNGICIDE))
                .toList();
        if (fungicides.isEmpty()) {
            LocalDate half = day(facts, CropAhead::vt, .5);
            return facts.on().isBefore(half)
                    ? "Tassel about " + span(CropAhead::vt) + ": too early for a fungicide; scout from "
                            + half.minusDays(SCOUT_BEFORE_TASSEL_D).format(DAY) + " on."
                    : "The crop is past R4: a pass no longer pays.";
        }
        Option best = fungicides.get(0);
        if (best.mayBeMade()) {
            return "The best choice pays in " + Math.round(10 * best.worth().chanceItPays())
                    + " of 10 cases and loses on average.";
        }
        return refusal(fungicides);
    }

    /** What stands against every choice; where nothing does, what stands against the one least spoken against. */
    private static String refusal(List<Option> fungicides) {
        List<Option> alone = fungicides.stream()
                .filter(o -> !o.spray().orElseThrow().mix().has(ProductKind.INSECTICIDE))
                .toList();
        List<Option> of = alone.isEmpty() ? fungicides : alone;
        Set<String> common = new LinkedHashSet<>(sentences(of.get(0)));
        of.forEach(o -> common.retainAll(sentences(o)));
        return common.stream().findFirst().orElseGet(() -> of.stream()
                .min(Comparator.comparingInt(o -> o.refusals().size()))
                .orElseThrow()
                .refusals()
                .get(0)
                .sentence());
    }

    private static List<String> sentences(Option o) {
        return o.refusals().stream().map(Reason::sentence).toList();
    }

    private String span(Function<CropAhead, LocalDate> stage) {
        LocalDate early = day(facts, stage, .1);
        LocalDate late = day(facts, stage, .9);
        String half = day(facts, stage, .5).format(DAY);
        return early.equals(late) ? half : half + " (" + early.format(DAY) + " to " + late.format(DAY) + ")";
    }

    private String planned() {
        return ProtectionGround.planned(futures.farm(), futures.zone(), futures.on()).stream()
                .findFirst()
                .map(d -> " One is planned for " + d.format(DAY) + ".")
                .orElse("");
    }

    private Optional<String> insecticide(List<Option> options) {
        List<Option> with = options.stream()
                .filter(o -> o.spray().orElseThrow().mix().has(ProductKind.INSECTICIDE))
                .toList();
        Optional<Reason> because = with.stream()
                .flatMap(o -> o.refusals().stream())
                .filter(ProtectionPasses.Said.class::isInstance)
                .filter(r -> ((ProtectionPasses.Said) r).isOfInsecticide())
                .findFirst();
        return because.map(Reason::sentence).or(() -> with.stream()
                .filter(Option::mayBeMade)
                .findFirst()
                .map(o -> "With it the pass is worth less on average."));
    }
}
