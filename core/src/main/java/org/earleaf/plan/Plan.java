// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Who does what when.
 *
 * @param routes by shift, the jobs in their order
 */
public record Plan(List<List<Integer>> routes) {
    public Plan {
        routes = routes.stream().map(List::copyOf).toList();
    }

    public static Plan empty(PlanProblem problem) {
        return new Plan(Collections.nCopies(problem.shifts().size(), List.of()));
    }

    /** The shift that does a job; -1: none. */
    public int shiftOf(int job) {
        for (int s = 0; s < routes.size(); s++) {
            if (routes.get(s).contains(job)) {
                return s;
            }
        }
        return -1;
    }

    /** Jobs that no shift does. */
    public List<Integer> leftOut(PlanProblem problem) {
        List<Integer> out = new ArrayList<>();
        for (int j = 0; j < problem.jobs().size(); j++) {
            if (shiftOf(j) < 0) {
                out.add(j);
            }
        }
        return out;
    }

    /** The same with a job put into a shift at a place. */
    public Plan with(int job, int shift, int place) {
        List<List<Integer>> all = new ArrayList<>(routes);
        List<Integer> route = new ArrayList<>(all.get(shift));
        route.add(place, job);
        all.set(shift, route);
        return new Plan(all);
    }

    /** The same without a job. */
    public Plan without(int job) {
        return new Plan(routes.stream()
                .map(r -> r.stream().filter(j -> j != job).toList())
                .toList());
    }
}
