// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.GroundJobs.Job;

/**
 * Passes in a row with one mode-of-action group. Only passes with a group of the same list (FRAC, IRAC, HRAC) stand in
 * the row: a weed spray does not break a row of fungicides.
 */
final class GroupRuns {
    private GroupRuns() {}

    /** Passes in a row, the one asked about among them, that share a group of this product; the longest row. */
    static int longest(GroundJobs jobs, LabelBook book, LabelEntry entry) {
        return groups(entry.actives()).stream()
                .mapToInt(group -> run(jobs, book, group, false))
                .max()
                .orElse(0);
    }

    /** A group of this product that stands alone in two passes or more in a row. */
    static Optional<String> of(GroundJobs jobs, LabelBook book, LabelEntry entry) {
        return groups(entry.actives()).stream()
                .filter(group -> run(jobs, book, group, true) > 1)
                .findFirst();
    }

    private static int run(GroundJobs jobs, LabelBook book, String group, boolean alone) {
        List<Job> row = new ArrayList<>();
        for (Job job : jobs.all()) {
            if (!ofList(job, book, group).isEmpty()) {
                row.add(job);
            }
        }
        int at = row.indexOf(jobs.asked());
        int run = 0;
        for (int k = at; k >= 0 && holds(row.get(k), book, group, alone); k--) {
            run++;
        }
        for (int k = at + 1; k < row.size() && holds(row.get(k), book, group, alone); k++) {
            run++;
        }
        return run;
    }

    private static boolean holds(Job job, LabelBook book, String group, boolean alone) {
        Set<String> here = ofList(job, book, group);
        return here.contains(group) && !(alone && here.size() > 1);
    }

    /** Groups of a job that stand in the same list as the one asked about. */
    private static Set<String> ofList(Job job, LabelBook book, String group) {
        Set<String> all = new TreeSet<>();
        job.products().keySet().forEach(p -> all.addAll(groups(book.activesOf(p))));
        all.removeIf(g -> !list(g).equals(list(group)));
        return all;
    }

    private static Set<String> groups(List<ActiveIngredient> actives) {
        Set<String> groups = new TreeSet<>();
        actives.forEach(a -> groups.addAll(a.groups()));
        return groups;
    }

    private static String list(String group) {
        return group.split(" ", 2)[0];
    }
}
