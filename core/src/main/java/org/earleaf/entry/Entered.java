// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.List;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What came of a draft.
 *
 * @param fact there exactly when there is no problem
 * @param problems each names the part of the draft in which it lies
 * @param remarks what is possible and was taken, but that a person may want to look at again
 */
public record Entered<T>(Optional<T> fact, List<Problem> problems, List<Remark> remarks) {
    /** The rule that what may be a slip is asked about before it is kept. */
    public static final String LOOK_AGAIN = "entry.look-again";

    /**
     * Something to look at again, in a part of the draft.
     *
     * @param isAsked whether it may be a slip, so that a person is asked before it is kept
     * @param entered what stands in the part
     */
    public record Remark(String part, Said said, boolean isAsked, String entered) {
        /** A quantity of it, in its inside unit. */
        public double figure(String name) {
            return said.values().get(name) instanceof Measured m ? m.value() : Double.NaN;
        }
    }

    public Entered {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
    }

    /** The fact; refused with every problem, and while nobody is sure with what may be a slip. */
    public T orThrow(boolean sure) {
        List<Problem> asked = remarks.stream()
                .filter(r -> r.isAsked() && !sure)
                .map(r -> Problem.of(
                        "entry.look-again", Said.text(r.part()), Problem.seen(r.entered()), "what", r.said()))
                .toList();
        if (problems.isEmpty() && !asked.isEmpty()) {
            throw new EarleafException(asked);
        }
        return orThrow();
    }

    /** The fact; refused with every problem. */
    public T orThrow() {
        return fact.orElseThrow(() -> new EarleafException(problems));
    }
}
