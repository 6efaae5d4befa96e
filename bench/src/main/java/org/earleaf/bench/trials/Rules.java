// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.earleaf.units.Units;

/** Other ways of choosing a rate, which the advice has to beat. */
final class Rules {
    /** Rates that Iowa State University published for a price ratio near .13, after corn and after soybean; from memory. */
    private static final double AFTER_CORN_LBAC = 187;

    private static final double AFTER_SOYBEAN_LBAC = 145;

    private final Sample all;

    Rules(Sample all) {
        this.all = all;
    }

    double published_kgHa(Held h) {
        return Units.kgHa(h.at().isAfterCorn() ? AFTER_CORN_LBAC : AFTER_SOYBEAN_LBAC);
    }

    /** Best single rate of each rotation, chosen in hindsight on these very site-years. */
    ToDoubleFunction<Held> hindsight() {
        int corn = all.where(h -> h.at().isAfterCorn()).bestSingle();
        int soybean = all.where(h -> !h.at().isAfterCorn()).bestSingle();
        return h -> h.at().isAfterCorn() ? corn : soybean;
    }

    /** The same of the other farms: what somebody could have known. */
    double ofOtherFarms(Held h) {
        return all.where(o -> o.at().isAfterCorn() == h.at().isAfterCorn()
                        && !o.at().farm().name().equals(h.at().farm().name()))
                .bestSingle();
    }

    /** The advice with what it says of the year itself taken out: its mean over the other years of the field. */
    ToDoubleFunction<Held> withoutTheYear(ToDoubleFunction<Held> advice) {
        Map<Held, Double> advised = new IdentityHashMap<>();
        all.all().forEach(h -> advised.put(h, advice.applyAsDouble(h)));
        return h -> all.where(o -> o.at().isAfterCorn() == h.at().isAfterCorn()
                        && o.at().farm().name().equals(h.at().farm().name())
                        && o.at().year() != h.at().year())
                .mean(advised::get);
    }
}
