// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import org.earleaf.units.Ranks;

/** Tenth, fiftieth and ninetieth percentile over the futures. */
public record Spread(double p10, double p50, double p90) {
    public static Spread of(double[] values) {
        Ranks ranks = Ranks.of(values);
        return new Spread(ranks.quantile(.1), ranks.quantile(.5), ranks.quantile(.9));
    }
}
