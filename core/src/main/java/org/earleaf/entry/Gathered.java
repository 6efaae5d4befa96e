// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** Gathers what is wrong with a draft, so that every problem is told at once. */
final class Gathered {
    private final List<Problem> problems = new ArrayList<>();
    private final List<Entered.Remark> remarks = new ArrayList<>();

    /** Notes that a rule is broken by what stands in a part. */
    void wrong(String code, String part, String found, Object... namesAndValues) {
        problems.add(problem(code, part, found, namesAndValues));
    }

    static Problem problem(String code, String part, String found, Object... namesAndValues) {
        return Problem.of(code, Said.text(part), Problem.seen(found), namesAndValues);
    }

    void remark(String part, Said said) {
        remarks.add(new Entered.Remark(part, said, false, ""));
    }

    /** Remarks on what may be a slip; a person is asked before it is kept. */
    void ask(String part, String entered, Said said) {
        remarks.add(new Entered.Remark(part, said, true, entered));
    }

    void add(Problem problem) {
        problems.add(problem);
    }

    void add(EarleafException wrong) {
        problems.addAll(wrong.problems());
    }

    /** What the reader makes of it; empty, with its problems noted, where it refuses. */
    <T> Optional<T> read(Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (EarleafException refused) {
            add(refused);
            return Optional.empty();
        }
    }

    /** A number; NaN, with its problem noted, where it is refused. */
    double number(Supplier<Double> reader) {
        return read(reader).orElse(Double.NaN);
    }

    /** Text of a part that has to be given; "", with its problem noted, where it is not. */
    String filled(Draft draft, String part) {
        if (!draft.has(part)) {
            wrong("cell.empty", part, "");
        }
        return draft.text(part);
    }

    boolean isClear() {
        return problems.isEmpty();
    }

    /** The fact where nothing was wrong, with what was gathered. */
    <T> Entered<T> with(Supplier<T> fact) {
        return new Entered<>(isClear() ? Optional.of(fact.get()) : Optional.empty(), problems, remarks);
    }
}
