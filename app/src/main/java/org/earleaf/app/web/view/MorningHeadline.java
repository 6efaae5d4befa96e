// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.field.NotProposed;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** Says in one or two sentences what to do this morning, with the reason in it. */
final class MorningHeadline {
    private MorningHeadline() {}

    static Markup of(Brief brief, List<Option> today, Format format) {
        if (!today.isEmpty()) {
            return act(brief, today, format);
        }
        if (!brief.passes().isEmpty()) {
            Option next = brief.passes().get(0);
            return new Say()
                    .markup(format.markup(Said.of("page.morning-headline.no-pass")))
                    .sentence(tell(
                            "page.morning-headline.next",
                            "field",
                            MorningView.label(next.field(), next.zone()),
                            "soon",
                            Dates.soon(next.date(), brief.on()),
                            "reason",
                            reason(brief, next)))
                    .done();
        }
        boolean judged = brief.leftOut().stream().anyMatch(l -> l.answer() == NotProposed.DOES_NOT_PAY);
        Say say = new Say()
                .markup(format.markup(Said.of(
                        judged ? "page.morning-headline.no-pass-would-pay" : "page.morning-headline.nothing-to-do")))
                .sentence(nothing(brief));
        // What was not judged is never told as not worth it.
        int open = brief.notJudged().size();
        return (open == 0 ? say : say.sentence(tell("page.morning-headline.not-judged", "n", open))).done();
    }

    private static Markup act(Brief brief, List<Option> all, Format format) {
        List<Option> today = all.stream().filter(Option::isNitrogen).toList();
        List<Option> sprays = all.stream().filter(o -> !o.isNitrogen()).toList();
        if (today.isEmpty()) {
            double gain_usdHa = sprays.get(0).worth().mean_usdHa();
            return new Say()
                    .markup(format.markup(spray(sprays, true)))
                    .sentence(tell("page.morning-headline.it-gains", "gain", Measure.MONEY_RATE.of(gain_usdHa)))
                    .done();
        }
        Say say = new Say().markup(format.markup(nitrogen(brief, today)));
        return (sprays.isEmpty() ? say : say.text(" ").markup(format.markup(spray(sprays, false)))).done();
    }

    private static Said spray(List<Option> sprays, boolean alone) {
        Option first = sprays.get(0);
        return sprays.size() == 1
                ? Said.of(
                        alone ? "page.morning-headline.spray-today" : "page.morning-headline.spray-too",
                        "kind",
                        first.kind(),
                        "placement",
                        first.placement(),
                        "field",
                        MorningView.label(first.field(), first.zone()))
                : Said.of(
                        alone ? "page.morning-headline.spray-many-today" : "page.morning-headline.spray-many-too",
                        "n",
                        sprays.size());
    }

    private static Said nitrogen(Brief brief, List<Option> today) {
        Option first = today.get(0);
        String field = MorningView.label(first.field(), first.zone());
        Said why = reason(brief, first);
        if (today.size() == 1) {
            return Said.of(
                    "page.morning-headline.put-on-one", "placement", first.placement(), "field", field, "why", why);
        }
        return today.stream().allMatch(o -> o.placement() == first.placement())
                ? Said.of(
                        "page.morning-headline.put-on-many",
                        "placement",
                        first.placement(),
                        "n",
                        today.size(),
                        "field",
                        field,
                        "why",
                        why)
                : Said.of("page.morning-headline.put-on-many-ways", "n", today.size(), "field", field, "why", why);
    }

    /** "it runs short on Sunday", or the cost of waiting when it never does. */
    private static Said reason(Brief brief, Option o) {
        if (!o.isNitrogen()) {
            return Said.of("job.kind", "kind", o.kind());
        }
        Optional<DateSpread> spread = MorningView.outlook(brief, o)
                .map(Outlook::nShort)
                .filter(s -> s.p50().isPresent());
        if (spread.isPresent()) {
            return isShort(brief.on(), spread.get());
        }
        return o.waitCost_usdHaDay() > 0
                ? Said.of(
                        "page.morning-headline.each-day-of-waiting-costs",
                        "cost",
                        Measure.MONEY_RATE.of(o.waitCost_usdHaDay()))
                : Said.of(
                        "page.morning-headline.it-gains-2",
                        "gain",
                        Measure.MONEY_RATE.of(o.worth().mean_usdHa()));
    }

    /** A day that is likely is told as likely, with how far it may be out. */
    private static Said isShort(LocalDate on, DateSpread spread) {
        LocalDate day = spread.p50().orElseThrow();
        if (!day.isAfter(on)) {
            return Said.of("page.morning-headline.it-has-been-short-since", "day", day);
        }
        return spread.p90().isEmpty()
                ? Said.of("page.morning-headline.it-may-run-short", "chance", Measure.CHANCE.of(spread.probability()))
                : Said.of(
                        "page.morning-headline.it-runs-short",
                        "soon",
                        Dates.soon(day, on),
                        "range",
                        Dates.range(spread));
    }

    private static String nothing(Brief brief) {
        long likely = brief.outlooks().stream()
                .filter(o -> !Phrases.isRipe(o) && o.nShort().p50().isPresent())
                .count();
        if (brief.outlooks().isEmpty()) {
            return tell("page.morning-headline.no-corn-stands-on-this");
        }
        if (brief.outlooks().stream().allMatch(Phrases::isRipe)) {
            return tell("page.morning-headline.the-corn-is-ripe");
        }
        return likely == 0
                ? tell("page.morning-headline.no-field-is-likely-to")
                : tell("page.morning-headline.may-run-short-but-no", "n", (int) likely);
    }
}
