// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.outlook.Outlook;

/**
 * The passes that the fields want, from what was worked out for the morning.
 *
 * <pre>
 * W(d) = p(d) max(V(d), W(d+1)) + (1 - p(d)) W(d+1)      from the day after the last one planned for
 *
 * V      best mean gain of a day, on days not looked at that of the day looked at before   [$/ha]
 * W      what may still be had after the days planned for                                  [$/ha]
 * p      chance that the day can be worked
 * Range  0 or more
 * Source optimal stopping by backward recursion (Bellman 1957, from memory); that a rig is free then: own construct
 * Check  WeekTest
 * </pre>
 */
final class FieldPasses {
    private final LocalDate on;
    private final LocalDate end;
    private final List<FieldPass> passes = new ArrayList<>();
    private final List<Week.Later> later = new ArrayList<>();

    private FieldPasses(LocalDate on, int days) {
        this.on = on;
        end = on.plusDays(days);
    }

    /** What is planned for, and what is better made after it. */
    record Wanted(List<FieldPass> passes, List<Week.Later> later) {}

    static Wanted of(LocalDate on, int days, List<NitrogenOptions.Answer> answers) {
        FieldPasses all = new FieldPasses(on, days);
        answers.forEach(a -> {
            a.proposed().ifPresent(go -> all.add(a.outlook(), go, a.picks().stream()));
            a.protection()
                    .proposed()
                    .ifPresent(go -> all.add(
                            a.outlook(),
                            go,
                            a.protection().options().stream()
                                    .filter(o -> o.mayBeMade() && o.product().equals(go.product()))));
        });
        return new Wanted(List.copyOf(all.passes), List.copyOf(all.later));
    }

    private void add(Outlook outlook, Option go, Stream<Option> options) {
        List<Option> all = options.toList();
        if (!go.date().isBefore(end)) {
            later.add(new Week.Later(outlook.zone().label(), go));
            return;
        }
        Map<String, NavigableMap<LocalDate, Option>> byRig = new TreeMap<>();
        all.stream()
                .filter(o -> !o.date().isBefore(on) && o.date().isBefore(end))
                .forEach(o -> byRig.computeIfAbsent(o.rig(), r -> new TreeMap<>())
                        .merge(
                                o.date(),
                                o,
                                (a, b) -> b.worth().mean_usdHa() > a.worth().mean_usdHa() ? b : a));
        passes.add(new FieldPass(outlook, go, byRig, after_usdHa(outlook, all)));
    }

    private double after_usdHa(Outlook outlook, List<Option> options) {
        Map<LocalDate, Double> best = new HashMap<>();
        options.forEach(o -> best.merge(o.date(), o.worth().mean_usdHa(), Math::max));
        Optional<LocalDate> last = best.keySet().stream().max(LocalDate::compareTo);
        double w = 0;
        for (LocalDate d = last.orElse(on); !d.isBefore(end); d = d.minusDays(1)) {
            double chance = outlook.calendar().workable().on(d);
            double p = Double.isNaN(chance) ? 0 : chance;
            w = p * Math.max(value(best, d), w) + (1 - p) * w;
        }
        return w;
    }

    private double value(Map<LocalDate, Double> best, LocalDate day) {
        for (LocalDate d = day; !d.isBefore(on); d = d.minusDays(1)) {
            if (best.containsKey(d)) {
                return best.get(d);
            }
        }
        return 0;
    }
}
