// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.earleaf.units.Units.HA_PER_AC;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.earleaf.units.Figure;
import org.earleaf.units.Units;

/** The reasons behind an option, as facts that say themselves. */
final class ProtectionReasons {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

    private ProtectionReasons() {}

    /** Money and chance side by side. */
    record Expected(PassWorth worth, double breakEven_kgHa) implements ProtectionReason {
        @Override
        public String sentence() {
            return "On average it nets " + usd(worth.mean_usdHa()) + "/ac and pays in "
                    + tenths(worth.chanceItPays()) + " cases; the worst fifth averages "
                    + usd(worth.badCase_usdHa()) + "/ac. It takes " + bu(breakEven_kgHa)
                    + " bu/ac to pay for it.";
        }
    }

    /** How much disease to expect without a pass. */
    record DiseaseAhead(Disease disease, double finalSeverity, double chanceSevere) implements ProtectionReason {
        @Override
        public String sentence() {
            return "Without a pass " + disease.word() + " is likely to cover "
                    + Figure.text(100 * finalSeverity, 2)
                    + " % of the ear leaf by R5, more than 5 % in " + tenths(chanceSevere)
                    + " cases (growth rates are assumptions).";
        }
    }

    /** What trials say of such a product at this risk, and what the disease model says of this field. */
    record Response(FungicideKind kind, double trials_kgHa, double sd_kgHa, double saved_kgHa, boolean scouted)
            implements ProtectionReason {
        @Override
        public String sentence() {
            String known = kind == FungicideKind.OTHER
                    ? "For this kind of fungicide there is no figure; that of a premix is taken: "
                    : "";
            String model = scouted ? "; by the disease model it saves " + bu(saved_kgHa) + " here" : "";
            return known + "At this risk trials put the gain at " + bu(trials_kgHa) + " bu/ac, fields differing by "
                    + bu(sd_kgHa) + " either way" + model + ".";
        }
    }

    /** What the rig takes. */
    record TakenByRig(double tracks_kgHa, double injury_kgHa) implements ProtectionReason {
        @Override
        public String sentence() {
            return "Wheel tracks take " + bu(tracks_kgHa) + " bu/ac and bent plants " + bu(injury_kgHa)
                    + ": already counted.";
        }
    }

    /** How long it lasts. */
    record Lasts(LocalDate full, LocalDate none) implements ProtectionReason {
        @Override
        public String sentence() {
            return "It works fully until about " + full.format(DAY) + " and has faded by " + none.format(DAY) + ".";
        }
    }

    /** Nobody has looked. */
    record ScoutFirst() implements ProtectionReason {
        @Override
        public String sentence() {
            return "Nobody has scouted lately: look at 5 places, 10 to 20 plants each, from 10 days before tassel on.";
        }
    }

    /** Something that was not known and what was taken instead. */
    record NotKnown(String what, String taken) implements ProtectionReason {
        @Override
        public String sentence() {
            return what + " is not known: taken as " + taken + ".";
        }
    }

    /** Tar spot was found, and its weather model is off. */
    record TarSpotUnknown() implements ProtectionReason {
        @Override
        public String sentence() {
            return TarSpotModel.WHY_OFF;
        }
    }

    /** Aphids let off by the pass. */
    record FlareLooms(double loss_kgHa, List<LocalDate> scout) implements ProtectionReason {
        public FlareLooms {
            scout = List.copyOf(scout);
        }

        @Override
        public String sentence() {
            String days = scout.get(0).format(DAY) + ", " + scout.get(1).format(DAY) + " and "
                    + scout.get(2).format(DAY);
            double loss = Units.buAc(loss_kgHa);
            String much =
                    loss >= .05 ? " They may take " + bu(loss_kgHa) + " bu/ac on average (assumption, counted)." : "";
            return "The pass may let aphids rise: scout them about " + days + "." + much;
        }
    }

    static List<ProtectionReason> of(
            ProtectionCase c,
            ProtectionOption o,
            PassWorth worth,
            SeverityOutlook severity,
            AphidOutlook aphids,
            List<ThresholdRule.Finding> findings) {
        List<ProtectionReason> why = new ArrayList<>();
        double perKg = PassWorth.usdKg(c.prices());
        why.add(new Expected(worth, o.cost_usdHa() / perKg));
        why.addAll(findings);
        o.fungicide().ifPresent(f -> fungicide(c, o, f, severity, why));
        double yield = mean(c, CropAhead::yield_kgHa);
        if (o.trackShare() + o.injuryShare() > 0) {
            why.add(new TakenByRig(o.trackShare() * yield, o.injuryShare() * yield));
        }
        insects(c, o, aphids, why);
        evidence(c, o, why);
        return why;
    }

    private static void fungicide(
            ProtectionCase c,
            ProtectionOption o,
            Fungicide fungicide,
            SeverityOutlook severity,
            List<ProtectionReason> why) {
        double chance = mean(c, severity::chanceSevere);
        severity.leading()
                .ifPresentOrElse(
                        s -> why.add(
                                new DiseaseAhead(s.disease().orElseThrow(), mean(c, severity::finalSeverity), chance)),
                        () -> {
                            why.add(
                                    c.lesions().isEmpty()
                                            ? new ScoutFirst()
                                            : new NotKnown("Which disease it is", "none"));
                            why.add(severity.score());
                        });
        double dry = Units.DRY_SHARE_OF_TRADE_CORN;
        why.add(new Response(
                fungicide.kind(),
                dry * new ResponseGrid(fungicide.kind(), c).mean_kgHa(chance),
                dry * FungicideResponse.prior(fungicide.kind(), true).sd_kgHa(),
                mean(c, f -> severity.saved(f, o.date()).mean_kgHa()),
                severity.isScouted()));
        why.add(new Lasts(
                o.date().plusDays((long) c.settings().of(ProtectionAssumption.FULL_EFFECT)),
                o.date().plusDays((long) c.settings().of(ProtectionAssumption.NO_EFFECT))));
        if (severity.leading()
                .flatMap(LesionSighting::disease)
                .map(d -> Double.isNaN(c.site().disease().rating(d)))
                .orElse(Double.isNaN(c.site().rating()))) {
            why.add(new NotKnown("The hybrid's rating", "intermediate"));
        }
        if (c.lesions().stream()
                .anyMatch(s -> s.disease().filter(d -> d == Disease.TAR_SPOT).isPresent())) {
            why.add(new TarSpotUnknown());
        }
        if (severity.leading()
                .flatMap(LesionSighting::disease)
                .map(d -> c.site().weather(d).isEmpty())
                .orElse(c.site().weather().isEmpty())) {
            why.add(new NotKnown("How the weather suits the disease", "moderately"));
        }
    }

    private static void insects(ProtectionCase c, ProtectionOption o, AphidOutlook aphids, List<ProtectionReason> why) {
        AphidFinding.of(c, o.date(), o.fungicide().isPresent()).ifPresent(why::add);
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
                .ifPresent(r ->
                        why.add(new NotKnown("What the insecticide saves from " + r, "nothing, it is not counted")));
    }

    private static void evidence(ProtectionCase c, ProtectionOption o, List<ProtectionReason> why) {
        if (o.fungicide().isPresent()) {
            why.add(KnownFact.of("mean response"));
            why.add(KnownFact.of("later trials"));
            why.add(KnownFact.of("timing"));
            boolean gray = c.lesions().stream()
                    .map(LesionSighting::disease)
                    .flatMap(Optional::stream)
                    .anyMatch(d -> d == Disease.GRAY_LEAF_SPOT);
            if (gray) {
                why.add(KnownFact.of("chance of paying"));
            }
            if (!c.lesions().isEmpty()) {
                why.add(KnownFact.of("diseased fields"));
            }
            why.add(KnownFact.of("aphid fungi"));
        }
        if (o.placement() == Placement.BOTH || o.placement() == Placement.UNDER_CANOPY) {
            why.add(KnownFact.of("under canopy"));
        }
        if (o.insecticide().isPresent()) {
            why.add(KnownFact.of("aphid threshold"));
        }
    }

    private static double mean(ProtectionCase c, java.util.function.ToDoubleFunction<CropAhead> of) {
        return c.futures().stream().mapToDouble(of).average().orElseThrow();
    }

    static String tenths(double chance) {
        return Math.round(10 * chance) + " of 10";
    }

    private static String bu(double dry_kgHa) {
        return Figure.fixed(Units.buAc(dry_kgHa), 1);
    }

    private static String usd(double usdHa) {
        double usdAc = usdHa * HA_PER_AC;
        return (usdAc < 0 ? "-" : "") + "$" + Figure.fixed(Math.abs(usdAc), 0);
    }
}
