// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.List;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadJob;
import org.earleaf.units.Said;

/**
 * All loads of a job.
 *
 * @param total_m3 to be mixed, heel and prime with it
 * @param rate_m3m2 finished liquid on ground
 * @param neat whether product goes on alone, without water
 * @param remarks what to mind about the split
 */
public record LoadPlan(
        LoadJob job, double total_m3, double rate_m3m2, boolean neat, List<Load> loads, List<Said> remarks) {
    public LoadPlan {
        loads = List.copyOf(loads);
        remarks = List.copyOf(remarks);
    }

    /** What is to be known of the mix before it is poured. */
    public TankAdvice advice() {
        return TankAdvice.of(this);
    }
}
