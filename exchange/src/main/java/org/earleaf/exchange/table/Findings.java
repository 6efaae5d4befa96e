// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Everything found while reading: problems that refuse the input, and flags that only remark. Of findings alike in file,
 * column and kind the first few are told one by one and the rest are counted, so that one wrong column of a long file
 * stays readable.
 */
public final class Findings {
    private static final int TOLD = 5;

    private record Kind(Said column, String what) {}

    private static final class Group {
        private final List<Problem> problems = new ArrayList<>();
        private final List<Flag> flags = new ArrayList<>();
        private int more;
        private int firstMore;
        private int lastMore;

        private boolean isFull() {
            return problems.size() + flags.size() >= TOLD;
        }

        private void add(Flag flag) {
            if (!flags.contains(flag)) {
                flags.add(flag);
            }
        }

        private void count(Place place) {
            firstMore = more == 0 ? place.row() : firstMore;
            lastMore = place.row();
            more++;
        }

        private Said rest() {
            String first = String.valueOf(firstMore);
            String last = String.valueOf(lastMore);
            return Said.of("found.more-alike", "n", more, "first", first, "last", last);
        }
    }

    private final Map<Kind, Group> problems = new LinkedHashMap<>();
    private final Map<Kind, Group> flags = new LinkedHashMap<>();
    /** Files in which something refuses the input. */
    private final Set<String> refused = new HashSet<>();

    /** Notes something that refuses the input. */
    public void problem(String code, Place place, Said seen, Object... namesAndValues) {
        problem(place, Problem.of(code, place.said(), seen, namesAndValues));
    }

    /** Notes what a rule found, told of its place in the file. */
    public void problem(Place place, Problem found) {
        Group group = problems.computeIfAbsent(new Kind(place.anyRow().said(), found.expected()), k -> new Group());
        refused.add(place.file());
        if (group.isFull()) {
            group.count(place);
        } else {
            group.problems.add(found.at(place.said()));
        }
    }

    /** Notes something that was filled in, clamped or assumed; what is of no row is never counted away. */
    public void flag(Place place, Said what) {
        Group group = alike(place.anyRow().said(), what);
        if (group.isFull() && place.row() > 0) {
            group.count(place);
        } else {
            group.add(new Flag(place.said(), what));
        }
    }

    /** Likewise, at a place that is none of a file. */
    public void flag(Flag flag) {
        alike(flag.where(), flag.what()).add(flag);
    }

    private Group alike(Said column, Said what) {
        return flags.computeIfAbsent(new Kind(column, what.code()), k -> new Group());
    }

    public boolean hasProblems() {
        return !problems.isEmpty();
    }

    /** Whether a problem was noted in a file. */
    public boolean hasProblemsIn(String file) {
        return refused.contains(file);
    }

    public List<Problem> problems() {
        List<Problem> all = new ArrayList<>();
        problems.forEach((kind, group) -> {
            all.addAll(group.problems);
            if (group.more > 0) {
                Problem first = group.problems.get(0);
                all.add(new Problem(first.rule(), kind.column(), group.rest()));
            }
        });
        return all;
    }

    public List<Flag> flags() {
        List<Flag> all = new ArrayList<>();
        flags.forEach((kind, group) -> {
            all.addAll(group.flags);
            if (group.more > 0) {
                all.add(new Flag(
                        kind.column(),
                        Said.of("flag.and-more", "what", group.flags.get(0).what(), "rest", group.rest())));
            }
        });
        return all;
    }

    /** Throws one exception with every problem, if there is any. */
    public void refuseIfAny() {
        if (hasProblems()) {
            throw new EarleafException(problems());
        }
    }
}
