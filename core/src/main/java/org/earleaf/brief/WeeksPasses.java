// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.field.NotProposed;
import org.earleaf.plan.WhyLeftOut;
import org.earleaf.week.FieldPass;
import org.earleaf.week.Week;

/** A week's plan as the passes that the brief proposes: one answer for the field and for the rig that goes there. */
record WeeksPasses(Week week) {
    /** By day and clock; then what comes after these days. */
    List<Brief.Proposed> proposed() {
        List<Brief.Proposed> all = new ArrayList<>();
        week.all().stream()
                .sorted(Comparator.comparing(Week.Stop::date).thenComparing(Week.Stop::start))
                .forEach(turn -> all.add(new Brief.Proposed(turn.way(), Optional.of(turn), own(turn))));
        week.later().stream()
                .map(Week.Later::own)
                .sorted(Comparator.comparing(Option::date)
                        .thenComparingDouble(o -> -o.waitCost_usdHaDay())
                        .thenComparing(Option::field)
                        .thenComparing(Option::zone))
                .forEach(o -> all.add(new Brief.Proposed(o, Optional.empty(), Optional.empty())));
        return all;
    }

    private static Optional<Brief.Own> own(Week.Stop turn) {
        Option own = turn.pass().own();
        Option way = turn.way();
        Brief.Own other =
                new Brief.Own(own, own.worth().mean_usdHa() - way.worth().mean_usdHa());
        boolean sameWork = own.date().equals(turn.date())
                && own.product().equals(way.product())
                && own.placement() == way.placement()
                && own.nitrogen_kgHa() == way.nitrogen_kgHa();
        // The same work by another rig of the same worth is no other wish.
        boolean same = sameWork && (own.rig().equals(way.rig()) || other.isWorthTheSame());
        return same ? Optional.empty() : Optional.of(other);
    }

    /** What fields would like and no rig gets to. */
    List<Brief.LeftOut> leftOut() {
        return week.leftOut().stream().map(this::leftOut).toList();
    }

    /** Where nothing but money keeps it out it does not pay. */
    private static NotProposed answer(WhyLeftOut why) {
        return why.rule().isPresent() ? NotProposed.CANNOT_BE_DONE : NotProposed.DOES_NOT_PAY;
    }

    private Brief.LeftOut leftOut(WhyLeftOut why) {
        FieldPass pass = week.passes().get(why.job());
        return new Brief.LeftOut(pass.zone().field(), pass.zone().zone(), pass.kind(), answer(why), why.said());
    }
}
