// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/** How far the search for a week has come, in a sentence. */
public record WaitView(long seconds, String so_far) {
    public static WaitView of(long seconds, Week.@Nullable Progress progress) {
        return new WaitView(
                seconds,
                progress == null
                        ? "The fields are still being worked out over their futures; no plan stands yet."
                        : "The best plan so far costs " + PlanView.usd(progress.best_usd()) + ", "
                                + PlanView.usd(progress.first_usd() - progress.best_usd())
                                + " less than the first one. It is weighed over the futures of the weather next.");
    }
}
