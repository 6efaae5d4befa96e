// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A simple rule to beat: what loses most by the second day first, on its earliest day, where it costs least there. */
final class GreedyRule {
    private GreedyRule() {}

    static double usd(PlanProblem p) {
        Plan plan = Plan.empty(p);
        List<Integer> order = IntStream.range(0, p.jobs().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        (Integer j) -> -p.jobs().get(j).loss().byDay().on(3)))
                .toList();
        List<Integer> days =
                p.shifts().stream().map(Shift::day).distinct().sorted().toList();
        for (int j : order) {
            plan = put(p, plan, j, days);
        }
        return PlainScore.usd(p, plan);
    }

    private static Plan put(PlanProblem p, Plan plan, int j, List<Integer> days) {
        for (int day : days) {
            Plan best = plan;
            double least = Double.POSITIVE_INFINITY;
            for (int s = 0; s < p.shifts().size(); s++) {
                for (int k = 0;
                        p.shifts().get(s).day() == day
                                && k <= plan.routes().get(s).size();
                        k++) {
                    Plan with = plan.with(j, s, k);
                    double usd = PlainScore.usd(p, with);
                    if (usd < least) {
                        least = usd;
                        best = with;
                    }
                }
            }
            if (least < Double.POSITIVE_INFINITY) {
                return best;
            }
        }
        return plan;
    }
}
