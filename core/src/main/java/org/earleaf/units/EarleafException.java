// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The one exception of Earleaf for wrong input; carries every problem found, never only the first. The store tells with
 * a kind of it what keeps its file from being read or written.
 */
public class EarleafException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial")
    private final List<Problem> problems;

    public EarleafException(List<Problem> problems) {
        super(problems.stream().map(Problem::sentence).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public EarleafException(Problem problem) {
        this(List.of(problem));
    }

    /** Of a rule that has a code: {@code coded("unit.unknown", where, found, "units", units)}. */
    public static EarleafException coded(String code, String where, String found, Object... namesAndValues) {
        return new EarleafException(Problem.of(code, Said.text(where), Problem.seen(found), namesAndValues));
    }

    /** The same problems at a place that is better known. */
    public EarleafException at(Said place) {
        return new EarleafException(problems.stream().map(p -> p.at(place)).toList());
    }

    public final List<Problem> problems() {
        return problems;
    }
}
