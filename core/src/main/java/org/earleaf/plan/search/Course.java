// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.List;
import org.earleaf.plan.Shift;

/**
 * One way the weather may go, as far as a plan feels it.
 *
 * @param share of the futures that go so; all add up to 1
 * @param shifts those of the problem, in its order, with the hours of this future; those of the first day are the
 *     problem's own
 */
public record Course(double share, List<Shift> shifts) {
    public Course {
        shifts = List.copyOf(shifts);
    }
}
