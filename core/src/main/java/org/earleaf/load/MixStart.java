// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What is told when mixing begins.
 *
 * @param looked at by the one who mixes
 * @param lapsed why the rig's calibration does not hold; empty: it holds
 * @param reason why the rig goes out all the same
 */
public record MixStart(Set<BeforeMixing> looked, Optional<Said> lapsed, String reason) {
    public MixStart {
        looked = Set.copyOf(looked);
    }

    /** Nothing goes in the tank before all that the load asks for was looked at. */
    void requireLooked(TankLoad load) {
        List<BeforeMixing> missing = BeforeMixing.of(load).stream()
                .filter(l -> !looked.contains(l))
                .sorted()
                .toList();
        if (!missing.isEmpty()) {
            throw new EarleafException(Problem.of(
                    "load.not-looked", Said.of("load.before-mixing"), Said.of("load.not-ticked", "looks", missing)));
        }
    }
}
