// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.Rig;
import org.earleaf.field.FieldPart;
import org.earleaf.field.NotProposed;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.Fungicide;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.Sightings;
import org.earleaf.protection.ProtectionAdvice;
import org.earleaf.protection.ProtectionRules;
import org.earleaf.protection.ProtectionWorth;
import org.earleaf.protection.RigLoss;
import org.earleaf.units.Said;

/**
 * Passes against disease and insects on a zone over the next three weeks: day x mix of the farm's recipes x placement x
 * rig, each valued over the same members as doing nothing. An option that may not be made keeps its worth and has the
 * reason. Of days worth the same the pass goes at tassel to silk ({@link CropAhead#isTasselToSilk}).
 */
final class ProtectionPasses {
    private static final int DAYS_AHEAD = NitrogenOptions.DAYS_AHEAD;
    /** Days on which the crop is at the right stage in at least so many futures are looked at. */
    private static final double HALF = .5;

    private static final double EPS = 1e-9;

    /** Days that differ by less are worth the same [$/ha]: about $1 an acre, far less than trials tell apart; own construct. */
    private static final double SAME_USDHA = 2.5;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final ProtectionCase facts;
    private final ProtectionWorth worth;
    private final SprayLimits limits;
    private final List<SprayMix> mixes;
    private final List<Carrier> carriers;
    private final String otherInsect;

    private ProtectionPasses(ZoneEnsemble futures, Baseline base) {
        this.futures = futures;
        this.base = base;
        facts = new ProtectionGround(futures, base, ProtectionSettings.USUAL).facts();
        worth = new ProtectionWorth(facts);
        Optional<LocalDate> ripe = base.spread(base.end()::blackLayerDay).p10();
        limits = new SprayLimits(base, facts.futures(), ripe);
        mixes = SprayMix.of(futures.farm());
        carriers = carriers();
        otherInsect = Sightings.otherInsect(futures.farm().readings(), futures.zone(), futures.on(), facts.settings())
                .orElse("");
    }

    /** A rig with one thing that it can do. */
    private record Carrier(Rig rig, Placement placement) {}

    static ProtectionAnswer of(ZoneEnsemble futures, Baseline base) {
        return new ProtectionPasses(futures, base).answer();
    }

    private List<Carrier> carriers() {
        return futures.farm().rigs().stream()
                .filter(r -> !r.isTender())
                .flatMap(r -> r.placements().stream()
                        .filter(p -> p.isSpray() || p == Placement.BY_AIR)
                        .sorted()
                        .map(p -> new Carrier(r, p)))
                .toList();
    }

    private ProtectionAnswer answer() {
        List<LocalDate> days = days();
        List<Option> options = new ArrayList<>();
        for (LocalDate day : days) {
            for (SprayMix mix : mixes) {
                carriers.forEach(c -> options.add(option(day, mix, c)));
            }
        }
        double[] workable = futures.workable().from(futures.decisionDay(), DAYS_AHEAD);
        Map<Option, Double> settled = settled(options);
        Waiting waiting = new Waiting(bestByDay(options, o -> o.worth().mean_usdHa()), workable);
        List<Option> ranked = withWait(options, settled, waiting);
        int go = new Waiting(bestByDay(options, o -> settled.getOrDefault(o, 0.0)), workable).day();
        Optional<Option> proposed =
                ranked.stream().filter(o -> o.mayBeMade() && ahead(o) == go).findFirst();
        ProtectionWords words = new ProtectionWords(futures, facts, mixes, carriers.isEmpty());
        return new ProtectionAnswer(
                ranked,
                proposed,
                words.leftOut(ranked, proposed),
                new ScoutingDue(futures, facts)
                        .readings(ranked.stream()
                                .filter(o -> o.spray().orElseThrow().mix().has(ProductKind.FUNGICIDE))
                                .map(o -> sprayed(
                                        o.date(), o.spray().orElseThrow().mix(), carrier(o)))
                                .findFirst()));
    }

    private Carrier carrier(Option o) {
        return carriers.stream()
                .filter(c -> c.rig().name().equals(o.rig()) && c.placement() == o.placement())
                .findFirst()
                .orElseThrow();
    }

    private List<LocalDate> days() {
        LocalDate first = futures.decisionDay();
        return Stream.iterate(first, d -> d.plusDays(1))
                .limit(DAYS_AHEAD)
                .filter(d -> !d.isAfter(futures.last()))
                .filter(d -> share(f -> d.isBefore(f.vt())) <= HALF && share(f -> !d.isBefore(f.r5())) <= HALF)
                .toList();
    }

    private double share(java.util.function.Predicate<CropAhead> holds) {
        return (double) facts.futures().stream().filter(holds).count()
                / facts.futures().size();
    }

    private ProtectionOption sprayed(LocalDate day, SprayMix mix, Carrier c) {
        Zone zone = futures.zone();
        double[] stages = new double[facts.futures().size()];
        Arrays.setAll(stages, m -> base.stages().stage(m, day, facts.futures().get(m)));
        RigLoss loss = RigLoss.of(zone, c.rig(), c.placement(), base.heights_cm(day), stages, facts.settings());
        List<SprayMix.Part> fungicides = mix.parts(ProductKind.FUNGICIDE);
        List<SprayMix.Part> insecticides = mix.parts(ProductKind.INSECTICIDE);
        List<SprayMix.Part> others = mix.parts().stream()
                .filter(p -> !fungicides.contains(p) && !insecticides.contains(p))
                .toList();
        return new ProtectionOption(
                day,
                c.placement(),
                fungicides.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Fungicide(names(fungicides), kind(fungicides), cost(mix, fungicides))),
                insecticides.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new Insecticide(
                                names(insecticides), reach(insecticides), cost(mix, insecticides), otherInsect)),
                mix.hasSurfactant(),
                c.rig().cost_usdHa() + cost(mix, others),
                loss.tracks(),
                loss.injury());
    }

    /** A price that is not known counts as nothing here; such a mix is refused. */
    private static double cost(SprayMix mix, List<SprayMix.Part> parts) {
        double cost = mix.cost_usdHa(parts);
        return Double.isNaN(cost) ? 0 : cost;
    }

    private static String names(List<SprayMix.Part> parts) {
        return parts.stream().map(p -> p.product().name()).collect(Collectors.joining(" + "));
    }

    private static FungicideKind kind(List<SprayMix.Part> parts) {
        return FungicideKind.ofGroups(groups(parts));
    }

    private static Insecticide.Reach reach(List<SprayMix.Part> parts) {
        return Insecticide.Reach.ofGroups(groups(parts));
    }

    private static Set<String> groups(List<SprayMix.Part> parts) {
        return parts.stream().flatMap(p -> p.label().groups().stream()).collect(Collectors.toSet());
    }

    private Option option(LocalDate day, SprayMix mix, Carrier c) {
        ProtectionAdvice advice = worth.advise(sprayed(day, mix, c));
        List<Reason> refusals = new ArrayList<>(limits.of(mix, c.rig(), c.placement(), day));
        advice.refusals().forEach(r -> refusals.add(new OfProtection(r)));
        SprayMix.Part first = mix.protecting().get(0);
        return new Option(
                FieldPart.of(futures.zone()),
                mix.kind(),
                day,
                new Option.Application(
                        mix.names(),
                        c.placement(),
                        0,
                        first.inside(mix.carrier_LHa()),
                        !first.unit().isMass(),
                        c.rig().name()),
                Worth.of(advice.worth()),
                0,
                advice.why().stream().map(r -> (Reason) new OfProtection(r)).toList(),
                Optional.empty(),
                Optional.of(new Spray(mix, refusals, advice.assumptions())));
    }

    /** A reason of protection among those of options. */
    record OfProtection(ProtectionReason reason) implements Reason {
        @Override
        public Said said() {
            return reason.said();
        }

        boolean isOfInsecticide() {
            return ProtectionRules.isOfInsecticide(reason);
        }

        NotProposed answer() {
            return ProtectionRules.answer(reason);
        }

        boolean isOfTassel() {
            return ProtectionRules.isOfTassel(reason);
        }
    }

    private double[] bestByDay(List<Option> options, ToDoubleFunction<Option> worth) {
        double[] best = new double[DAYS_AHEAD];
        for (Option o : options) {
            if (o.mayBeMade()) {
                best[ahead(o)] = Math.max(best[ahead(o)], worth.applyAsDouble(o));
            }
        }
        return best;
    }

    /** The same products by the same rig, as little spoken against. */
    private record Choice(String product, Placement placement, String rig, int refusals) {
        static Choice of(Option o) {
            return new Choice(o.product(), o.placement(), o.rig(), o.refusals().size());
        }
    }

    /**
     * What days are chosen by, of passes that gain: those of one choice that are worth the same as its best count alike, and
     * up to as little more by the share of futures that stand at tassel to silk. What is told stays as it was worked out.
     */
    private Map<Option, Double> settled(List<Option> options) {
        Map<Choice, Double> most = new HashMap<>();
        options.forEach(o -> most.merge(Choice.of(o), o.worth().mean_usdHa(), Math::max));
        Map<LocalDate, Double> usual = new HashMap<>();
        Map<Option, Double> settled = new IdentityHashMap<>();
        for (Option o : options) {
            double mean = o.worth().mean_usdHa();
            double best = most.getOrDefault(Choice.of(o), mean);
            double share = usual.computeIfAbsent(o.date(), d -> share(f -> f.isTasselToSilk(d)));
            settled.put(o, mean <= 0 ? mean : (best - mean < SAME_USDHA ? best : mean) + SAME_USDHA * share);
        }
        return settled;
    }

    /** Waiting for a day that is worth the same costs nothing and gains nothing. */
    private static double waitCost_usdHa(Waiting waiting, int ahead) {
        double cost = waiting.cost(ahead);
        return cost < 0 && cost > -SAME_USDHA ? 0 : cost;
    }

    /** Days from the decision day to that of an option. */
    private int ahead(Option o) {
        return (int) (o.date().toEpochDay() - futures.decisionDay().toEpochDay());
    }

    /**
     * Those that may be made first, then those least spoken against; then the most gain, the usual stage, the earliest day,
     * the simplest placement.
     */
    private List<Option> withWait(List<Option> options, Map<Option, Double> settled, Waiting waiting) {
        return options.stream()
                .sorted(Comparator.comparingInt((Option o) -> o.refusals().size())
                        .thenComparingDouble(o -> -Math.round(settled.getOrDefault(o, 0.0) / EPS) * EPS)
                        .thenComparing(Option::date)
                        .thenComparing(Option::placement)
                        .thenComparing(Option::rig)
                        .thenComparing(Option::product))
                .map(o -> o.with(waitCost_usdHa(waiting, ahead(o)), o.why()))
                .toList();
    }
}
