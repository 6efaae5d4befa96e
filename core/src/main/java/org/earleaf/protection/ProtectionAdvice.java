// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.List;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;

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
    public static final String CAUTION = "The label decides on rate, stage, interval, re-entry and harvest: read it."
            + " No spraying below a threshold; yield models are estimates with the spread shown.";

    public ProtectionAdvice {
        refusals = List.copyOf(refusals);
        why = List.copyOf(why);
        assumptions = List.copyOf(assumptions);
    }

    public boolean mayBeAdvised() {
        return refusals.isEmpty();
    }
}
