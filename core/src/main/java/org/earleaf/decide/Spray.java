// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.List;
import org.earleaf.pressure.ProtectionAssumption;

/**
 * What an option against disease or insects has beside what every option has.
 *
 * @param refusals why it may not be advised, whatever it is worth; empty: it may
 * @param assumptions what stands behind its worth and nobody has measured on this farm
 */
public record Spray(SprayMix mix, List<Reason> refusals, List<ProtectionAssumption> assumptions) {
    public Spray {
        refusals = List.copyOf(refusals);
        assumptions = List.copyOf(assumptions);
    }
}
