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
    /** Something to look at again, in a part of the draft. */
    public record Remark(String part, Said said) {
        /** A quantity of it, in its inside unit. */
        public double figure(String name) {
            return said.values().get(name) instanceof Measured m ? m.value() : Double.NaN;
        }
    }

    public Entered {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
    }

    /** The fact; refused with every problem. */
    public T orThrow() {
        return fact.orElseThrow(() -> new EarleafException(problems));
    }
}
