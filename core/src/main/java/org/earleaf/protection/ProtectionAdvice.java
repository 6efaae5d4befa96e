// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.List;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.units.Said;

/**
 * What is to be said of one option. Expected value and chance to pay stand side by side: neither follows from the other.
 *
 * @param refusals rules that forbid advising it; empty: it may be advised if it is worth it
 * @param why reasons and evidence, the weightiest first
 * @param assumptions what of it nobody has measured on this farm
 */
public record ProtectionAdvice(
        ProtectionOption option,
        PassWorth worth,
        List<ProtectionReason> refusals,
        List<ProtectionReason> why,
        List<ProtectionAssumption> assumptions) {
    /** Stands beside every such advice. */
    public static final Said CAUTION = Said.of("caution.protection");

    public ProtectionAdvice {
        refusals = List.copyOf(refusals);
        why = List.copyOf(why);
        assumptions = List.copyOf(assumptions);
    }

    public boolean mayBeAdvised() {
        return refusals.isEmpty();
    }
}
