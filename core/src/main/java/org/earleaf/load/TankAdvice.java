// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.label.LabelBook;
import org.earleaf.mix.Cleanout;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixFacts;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.MixRules;
import org.earleaf.mix.MixWords;
import org.earleaf.units.Said;

/**
 * What is to be known of a mix before it is poured, beside amounts and order.
 *
 * @param quarrels known quarrels between its products
 * @param forbidden what labels forbid in one tank
 * @param limits what binds the whole tank; empty when crop or labels are not told
 * @param jar amounts for a jar test; empty for a product that goes on alone
 * @param jarAsked whether a nitrogen solution carries the mix, so that a jar test is asked for
 * @param cleanout after the last load
 */
public record TankAdvice(
        List<MixRules.Found> quarrels,
        List<Said> forbidden,
        List<TankLimit> limits,
        Optional<JarTest> jar,
        boolean jarAsked,
        Cleanout cleanout) {
    public TankAdvice {
        quarrels = List.copyOf(quarrels);
        forbidden = List.copyOf(forbidden);
        limits = List.copyOf(limits);
    }

    static TankAdvice of(LoadPlan plan) {
        LoadJob job = plan.job();
        MixFacts facts = job.facts();
        List<MixLine> lines = job.lines();
        boolean mix = lines.size() > 1;
        boolean carried = mix && lines.stream().anyMatch(l -> l.carries(plan.rate_m3m2()));
        Set<String> words = new TreeSet<>();
        lines.forEach(l -> words.addAll(facts.words(l)));
        return new TankAdvice(
                facts.quarrels(lines),
                forbidden(facts, lines),
                TankLimit.of(
                        facts.labels(),
                        facts.crop(),
                        lines.stream().map(MixLine::product).toList()),
                mix ? Optional.of(JarTest.of(plan.loads().get(0))) : Optional.empty(),
                carried,
                Cleanout.of(job.heel_m3() + job.prime_m3(), job.usable_m3(), words));
    }

    /**
     * Of a kept load.
     *
     * @param quarrels rules that it meets on its ground
     * @param cleanout after it
     */
    public static TankAdvice of(TankLoad load, LabelBook labels, List<MixRules.Found> quarrels, Cleanout cleanout) {
        List<String> products = load.lines().stream().map(LoadLine::product).toList();
        return new TankAdvice(
                quarrels,
                List.of(),
                load.grounds().stream()
                        .map(LoadGround::crop)
                        .distinct()
                        .flatMap(crop -> TankLimit.of(labels, crop, products).stream())
                        .toList(),
                products.size() > 1 ? Optional.of(JarTest.of(load)) : Optional.empty(),
                load.asksForJar(),
                cleanout);
    }

    private static List<Said> forbidden(MixFacts facts, List<MixLine> lines) {
        List<Said> found = new ArrayList<>();
        for (MixLine line : lines) {
            Set<String> never = new TreeSet<>();
            facts.labels().find(line.product(), facts.crop()).ifPresent(e -> e.neverWith()
                    .forEach(w -> never.add(MixWords.plain(w))));
            for (MixLine other : lines) {
                if (other != line && facts.words(other).stream().anyMatch(never::contains)) {
                    found.add(Said.of("mix.label-forbids", "product", line.product(), "other", other.product()));
                }
            }
        }
        return found;
    }

    /** Whether a rule or label forbids the mix. */
    public boolean isStop() {
        return !forbidden.isEmpty() || quarrels.stream().anyMatch(MixRules.Found::isStop);
    }
}
