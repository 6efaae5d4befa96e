// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;

/**
 * When two choices are worth the same for all that is known: their difference over the same members lies within what it
 * may be by chance. A tie goes to the earlier day, the smaller rate, the cheaper rig.
 *
 * <pre>
 * tied when mean(A - B) < min(2 s/sqrt(n), 1 $/ac)
 *
 * s      standard deviation of the difference member by member    [$/ha]
 * n      members
 * Range  0 and more
 * Source standard error of paired differences, common statistics; rates within a dollar an acre of the best count as
 *        equally profitable in the corn belt's rate guidelines (from memory); without that bound a wide spread would
 *        cut rates by what is no noise
 * Check  TiesTest
 * </pre>
 */
final class Ties {
    private static final double MOST_USDHA = 1 / Units.HA_PER_AC;
    private static final double ERRORS = 2;

    private static final Comparator<Option> LEAST = Comparator.comparingDouble(Option::nitrogen_kgHa)
            .thenComparingDouble(o -> o.worth().cost_usdHa())
            .thenComparing(Option::date)
            .thenComparing(Option::rig);

    private Ties() {}

    /** Of options best first, the one to take: the first, or the least of those tied with it. */
    static Optional<DayOptions.Valued> pick(List<DayOptions.Valued> bestFirst) {
        return bestFirst.stream()
                .filter(v -> isTied(bestFirst.get(0), v))
                .min(Comparator.comparing(DayOptions.Valued::option, LEAST));
    }

    private static boolean isTied(DayOptions.Valued best, DayOptions.Valued other) {
        double more =
                best.option().worth().mean_usdHa() - other.option().worth().mean_usdHa();
        return best == other || more <= within_usdHa(best.gains_usdHa(), other.gains_usdHa());
    }

    /** The one to take by each rig on each day, by date. */
    static List<Option> picks(List<DayOptions.Valued> bestFirst) {
        record RigDay(LocalDate date, String rig) {}
        Map<RigDay, List<DayOptions.Valued>> each = bestFirst.stream()
                .collect(Collectors.groupingBy(
                        v -> new RigDay(v.option().date(), v.option().rig())));
        return each.values().stream()
                .map(of -> pick(of).orElseThrow().option())
                .sorted(Comparator.comparing(Option::date).thenComparing(Option::rig))
                .toList();
    }

    /**
     * By how much waiting must win, by day: within that the day and the best later one looked at are tied.
     *
     * @param value of each day from the first on; its length is that of the answer
     */
    static double[] ofDays(List<DayOptions.Valued> all, LocalDate first, double[] value) {
        NavigableMap<Integer, DayOptions.Valued> best = new TreeMap<>();
        for (DayOptions.Valued v : all) {
            int day = (int) (v.option().date().toEpochDay() - first.toEpochDay());
            best.merge(
                    day,
                    v,
                    (a, b) ->
                            b.option().worth().mean_usdHa() > a.option().worth().mean_usdHa() ? b : a);
        }
        double[] tie = new double[value.length];
        best.forEach((day, v) -> best.tailMap(day, false).keySet().stream()
                .max(Comparator.comparingDouble(d -> value[d]))
                .ifPresent(d -> tie[day] = within_usdHa(
                        v.gains_usdHa(), Objects.requireNonNull(best.get(d)).gains_usdHa())));
        return tie;
    }

    /** How far a mean may lie above another for the two to be tied [$/ha]. */
    static double within_usdHa(double[] a, double[] b) {
        double[] difference = new double[a.length];
        for (int m = 0; m < a.length; m++) {
            difference[m] = a[m] - b[m];
        }
        double mean = Ranks.mean(difference);
        double square = 0;
        for (double d : difference) {
            square += (d - mean) * (d - mean);
        }
        double error = Math.sqrt(square / Math.max(1, a.length - 1) / a.length);
        return Math.min(MOST_USDHA, ERRORS * error);
    }
}
