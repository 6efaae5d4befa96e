// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.field.Placement;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.Fungicide;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.FungicideResponse;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.SeverityOutlook;
import org.earleaf.pressure.TarSpotModel;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** The reasons behind an option, as facts that name their sentence. */
final class ProtectionReasons {

    /** Less than this of aphids is not worth a sentence. */
    private static final double LEAST_TOLD_BUAC = .05;

    private ProtectionReasons() {}

    /** Money and chance side by side. */
    record Expected(PassWorth worth, double breakEven_kgHa) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of(
                    "protect.expected",
                    "mean",
                    Measure.MONEY_RATE.of(worth.mean_usdHa()),
                    "chance",
                    Measure.CHANCE.of(worth.chanceItPays()),
                    "bad",
                    Measure.MONEY_RATE.of(worth.badCase_usdHa()),
                    "yield",
                    Measure.YIELD.of(breakEven_kgHa));
        }
    }

    /** How much disease to expect without a pass. */
    record DiseaseAhead(Disease disease, double finalSeverity, double chanceSevere) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of(
                    "protect.disease-ahead",
                    "disease",
                    disease,
                    "severity",
                    Measure.SHARE.of(finalSeverity),
                    "chance",
                    Measure.CHANCE.of(chanceSevere));
        }
    }

    /**
     * What trials say of such a product at this risk, and what the disease model says of this field.
     *
     * @param above whether it counts with the fields of trials that had the disease
     */
    record Response(
            FungicideKind kind, double trials_kgHa, double sd_kgHa, double saved_kgHa, boolean scouted, boolean above)
            implements ProtectionReason {
        @Override
        public Said said() {
            Measured trials = Measure.YIELD.of(trials_kgHa);
            Measured sd = Measure.YIELD.of(sd_kgHa);
            Measured saved = Measure.YIELD.of(saved_kgHa);
            Said found = !scouted
                    ? Said.of("protect.response", "trials", trials, "sd", sd)
                    : Said.of(
                            above ? "protect.response-above" : "protect.response-here",
                            "trials",
                            trials,
                            "sd",
                            sd,
                            "saved",
                            saved);
            return kind == FungicideKind.OTHER ? Said.of("protect.kind-unknown", "response", found) : found;
        }
    }

    /** What the rig takes. */
    record TakenByRig(double tracks_kgHa, double injury_kgHa) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of(
                    "protect.taken-by-rig",
                    "tracks",
                    Measure.YIELD.of(tracks_kgHa),
                    "injury",
                    Measure.YIELD.of(injury_kgHa));
        }
    }

    /** How long it lasts. */
    record Lasts(LocalDate full, LocalDate none) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.lasts", "full", full, "none", none);
        }
    }

    /** Nobody has looked. */
    record ScoutFirst() implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.scout-first");
        }
    }

    /** Something that was not known, and what was taken instead. */
    enum NotKnown implements ProtectionReason {
        DISEASE,
        RATING,
        WEATHER;

        @Override
        public Said said() {
            return Said.of(
                    switch (this) {
                        case DISEASE -> "protect.disease-not-known";
                        case RATING -> "protect.rating-not-known";
                        case WEATHER -> "protect.weather-not-known";
                    });
        }
    }

    /** Another insect that calls for the insecticide, in the grower's words; what it would take is not known. */
    record OtherInsect(String insect) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("protect.other-insect", "insect", insect);
        }
    }

    /** Tar spot was looked for, and its weather model is off. */
    record TarSpotUnknown() implements ProtectionReason {
        @Override
        public Said said() {
            return TarSpotModel.WHY_OFF;
        }
    }

    /** Aphids let off by the pass. */
    record FlareLooms(double loss_kgHa, List<LocalDate> scout) implements ProtectionReason {
        public FlareLooms {
            scout = List.copyOf(scout);
        }

        @Override
        public Said said() {
            return Units.buAc(loss_kgHa) < LEAST_TOLD_BUAC
                    ? Said.of("protect.flare", "days", scout)
                    : Said.of("protect.flare-counted", "days", scout, "loss", Measure.YIELD.of(loss_kgHa));
        }
    }

    static List<ProtectionReason> of(
            ProtectionCase c,
            ProtectionOption o,
            PassWorth worth,
            TrialFields fields,
            AphidOutlook aphids,
            List<ThresholdRule.Finding> findings) {
        List<ProtectionReason> why = new ArrayList<>();
        double perKg = PassWorth.usdKg(c.prices());
        why.add(new Expected(worth, o.cost_usdHa() / perKg));
        why.addAll(findings);
        o.fungicide().ifPresent(f -> fungicide(c, o, f, fields, why));
        double yield = mean(c, CropAhead::yield_kgHa);
        if (o.trackShare() + o.injuryShare() > 0) {
            why.add(new TakenByRig(o.trackShare() * yield, o.injuryShare() * yield));
        }
        insects(c, o, aphids, why);
        evidence(c, o, why);
        return why;
    }

    private static void fungicide(
            ProtectionCase c, ProtectionOption o, Fungicide fungicide, TrialFields fields, List<ProtectionReason> why) {
        SeverityOutlook severity = fields.severity();
        TarSpotFound.of(c).ifPresent(t -> why.addAll(List.of(t, t.next())));
        severity.leading().ifPresentOrElse(s -> diseaseAhead(c, severity, s).ifPresent(why::add), () -> {
            why.add(c.lesions().isEmpty() ? new ScoutFirst() : NotKnown.DISEASE);
            why.add(severity.score());
        });
        double dry = Units.DRY_SHARE_OF_TRADE_CORN;
        why.add(new Response(
                fungicide.kind(),
                dry * new ResponseGrid(fungicide.kind(), c).mean_kgHa(mean(c, fields::chanceMuch)),
                dry * FungicideResponse.prior(fungicide.kind(), true).sd_kgHa(),
                mean(c, f -> severity.saved(f, o.date()).mean_kgHa()),
                severity.isScouted(),
                fields.isAbove()));
        why.add(new Lasts(
                o.date().plusDays((long) c.settings().of(ProtectionAssumption.FULL_EFFECT)),
                o.date().plusDays((long) c.settings().of(ProtectionAssumption.NO_EFFECT))));
        notKnown(c, severity, why);
    }

    /** Of tar spot that was found more is told already. */
    private static Optional<ProtectionReason> diseaseAhead(
            ProtectionCase c, SeverityOutlook severity, LesionSighting s) {
        Disease disease = s.disease().orElseThrow();
        return disease == Disease.TAR_SPOT && s.isFound()
                ? Optional.empty()
                : Optional.of(
                        new DiseaseAhead(disease, mean(c, severity::finalSeverity), mean(c, severity::chanceSevere)));
    }

    private static void notKnown(ProtectionCase c, SeverityOutlook severity, List<ProtectionReason> why) {
        if (severity.leading()
                .flatMap(LesionSighting::disease)
                .map(d -> Double.isNaN(c.site().disease().rating(d)))
                .orElse(Double.isNaN(c.site().rating()))) {
            why.add(NotKnown.RATING);
        }
        if (c.lesions().stream()
                .anyMatch(s -> s.disease().filter(d -> d == Disease.TAR_SPOT).isPresent())) {
            why.add(new TarSpotUnknown());
        }
        if (severity.leading()
                .flatMap(LesionSighting::disease)
                .map(d -> d != Disease.TAR_SPOT && c.site().weather(d).isEmpty())
                .orElse(c.site().weather().isEmpty())) {
            why.add(NotKnown.WEATHER);
        }
    }

    private static void insects(ProtectionCase c, ProtectionOption o, AphidOutlook aphids, List<ProtectionReason> why) {
        AphidFinding.of(c, o.date(), o.fungicide().isPresent()).ifPresent(why::add);
        if (o.insecticide().isPresent() && c.aphids().filter(a -> a.mean() > 0).isPresent()) {
            why.add(ProtectionRules.AphidsSaved.of(c, o, aphids));
        }
        if (o.fungicide().isPresent() || o.killsEnemies()) {
            LocalDate d = o.date();
            why.add(new FlareLooms(
                    Math.max(
                            0,
                            o.insecticide().isPresent()
                                    ? -mean(c, f -> aphids.chance() * aphids.gained_kgHa(f, o))
                                    : aphids.flare_kgHa(o)),
                    List.of(d.plusDays(7), d.plusDays(14), d.plusDays(21))));
        }
        o.insecticide()
                .map(Insecticide::ownReason)
                .filter(r -> !r.isBlank())
                .ifPresent(r -> why.add(new OtherInsect(r)));
    }

    private static void evidence(ProtectionCase c, ProtectionOption o, List<ProtectionReason> why) {
        if (o.fungicide().isPresent()) {
            why.add(KnownFact.of(KnownFact.Known.MEAN_RESPONSE));
            why.add(KnownFact.of(KnownFact.Known.LATER_TRIALS));
            why.add(KnownFact.of(KnownFact.Known.TIMING));
            boolean gray = c.lesions().stream()
                    .map(LesionSighting::disease)
                    .flatMap(Optional::stream)
                    .anyMatch(d -> d == Disease.GRAY_LEAF_SPOT);
            if (gray) {
                why.add(KnownFact.of(KnownFact.Known.CHANCE_OF_PAYING));
            }
            if (!c.lesions().isEmpty()) {
                why.add(KnownFact.of(KnownFact.Known.DISEASED_FIELDS));
            }
            if (TarSpotFound.of(c).isPresent()) {
                why.add(KnownFact.of(KnownFact.Known.TAR_SPOT_TRIALS));
                why.add(KnownFact.of(KnownFact.Known.TAR_SPOT_SEVERE));
            }
            why.add(KnownFact.of(KnownFact.Known.APHID_FUNGI));
        }
        if (o.placement() == Placement.BOTH || o.placement() == Placement.UNDER_CANOPY) {
            why.add(KnownFact.of(KnownFact.Known.UNDER_CANOPY));
        }
        if (o.insecticide().isPresent()) {
            why.add(KnownFact.of(KnownFact.Known.APHID_THRESHOLD));
            why.add(KnownFact.of(KnownFact.Known.APHID_DROUGHT));
        }
    }

    private static double mean(ProtectionCase c, java.util.function.ToDoubleFunction<CropAhead> of) {
        return c.futures().stream().mapToDouble(of).average().orElseThrow();
    }
}
