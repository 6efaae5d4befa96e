// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.plan.Gap;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Supply;
import org.earleaf.units.Units;

/**
 * A rule that holds over several shifts: what tenders bring in a day, days between two jobs.
 *
 * @param counts by job and shift, what doing it there counts
 * @param most what all may count together
 */
record SharedRule(double[][] counts, double most) {
    static List<SharedRule> of(PlanProblem p) {
        List<SharedRule> rules = new ArrayList<>();
        for (Supply supply : p.supply()) {
            double[][] counts = new double[p.jobs().size()][p.shifts().size()];
            for (int j = 0; j < counts.length; j++) {
                for (int s = 0; s < p.shifts().size(); s++) {
                    if (p.shifts().get(s).day() == supply.day()) {
                        counts[j][s] = Math.round(p.jobs().get(j).supply_m3() / Units.M3_PER_GAL);
                    }
                }
            }
            rules.add(new SharedRule(counts, Math.round(supply.most_m3() / Units.M3_PER_GAL)));
        }
        for (Gap gap : p.gaps()) {
            if (gap.eitherOrder()) {
                throw new IllegalStateException("days between two jobs in either order are not modelled here");
            }
            for (int day : p.shifts().stream().mapToInt(Shift::day).distinct().toArray()) {
                rules.add(new SharedRule(apart(p, gap, day), 1));
            }
        }
        return rules;
    }

    /** The second job up to a day, or the first so late that the second must wait beyond that day: not both. */
    private static double[][] apart(PlanProblem p, Gap gap, int day) {
        double[][] counts = new double[p.jobs().size()][p.shifts().size()];
        for (int s = 0; s < p.shifts().size(); s++) {
            int at = p.shifts().get(s).day();
            counts[gap.second()][s] = at <= day ? 1 : 0;
            counts[gap.first()][s] = gap.shortBy(at, day) > 0 ? 1 : 0;
        }
        return counts;
    }

    double of(int shift, int[] jobs) {
        double count = 0;
        for (int j : jobs) {
            count += counts[j][shift];
        }
        return count;
    }
}
