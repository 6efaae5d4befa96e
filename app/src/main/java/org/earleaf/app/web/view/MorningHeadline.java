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
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Said;

/** Says in one or two sentences what to do this morning, with the reason in it. */
final class MorningHeadline {
    private MorningHeadline() {}

    static Markup of(Brief brief, List<Option> today, List<Option> later, Format format) {
        if (!today.isEmpty()) {
            return act(brief, today, format);
        }
        if (!later.isEmpty()) {
            Option next = later.get(0);
            return new Say()
                    .markup(format.markup(Said.of("page.morning-headline.no-pass")))
                    .sentence(tell(
                            "page.morning-headline.next",
                            "field",
                            MorningView.label(next.field(), next.zone()),
                            "soon",
                            Dates.soon(next.date(), brief.on()),
                            "reason",
                            reason(brief, next, format)))
                    .done();
        }
        return new Say()
                .markup(format.markup(Said.of("page.morning-headline.no-pass-would-pay")))
                .sentence(nothing(brief))
                .done();
    }

    private static Markup act(Brief brief, List<Option> all, Format format) {
        List<Option> today = all.stream().filter(Option::isNitrogen).toList();
        List<Option> sprays = all.stream().filter(o -> !o.isNitrogen()).toList();
        if (today.isEmpty()) {
            return new Say()
                    .sentence(tell("page.morning-headline.today"), " " + spray(sprays) + ".")
                    .sentence(tell(
                            "page.morning-headline.it-gains",
                            "money",
                            format.money(sprays.get(0).worth().mean_usdHa()),
                            "areaName",
                            format.areaName()))
                    .done();
        }
        Say say = nitrogen(brief, today, format);
        return (sprays.isEmpty() ? say : say.sentence(Phrases.capital(spray(sprays)) + ".")).done();
    }

    /** "spray fungicide over the top on Weir Sixty". */
    private static String spray(List<Option> sprays) {
        Option first = sprays.get(0);
        return sprays.size() == 1
                ? tell(
                        "page.morning-headline.spray-on",
                        "kind",
                        first.kind(),
                        "where",
                        Phrases.where(first.placement()),
                        "field",
                        MorningView.label(first.field(), first.zone()))
                : tell("page.morning-headline.spray-against-disease-and", "n", sprays.size());
    }

    private static Say nitrogen(Brief brief, List<Option> today, Format format) {
        Option first = today.get(0);
        boolean same = today.stream().allMatch(o -> o.placement() == first.placement());
        String where = same ? " " + Phrases.where(first.placement()) : "";
        String name = MorningView.label(first.field(), first.zone());
        String why = reason(brief, first, format) + ".";
        if (today.size() == 1) {
            return new Say()
                    .sentence(
                            tell("page.morning-headline.today"),
                            tell("page.morning-headline.put-nitrogen-on", "where", where, "name", name, "why", why));
        }
        return new Say()
                .sentence(
                        tell("page.morning-headline.today"),
                        tell("page.morning-headline.put-nitrogen-on-2", "where", where, "n", today.size()))
                .sentence(tell("page.morning-headline.first", "name", name, "why", why));
    }

    /** ": it runs short on Sunday", or the cost of waiting when it never does. */
    private static String reason(Brief brief, Option o, Format format) {
        if (!o.isNitrogen()) {
            return ": " + Words.here().say(o.kind());
        }
        Optional<LocalDate> shortOn =
                MorningView.outlook(brief, o).map(Outlook::nShort).flatMap(s -> s.p50());
        if (shortOn.isPresent()) {
            return shortOn.get().isAfter(brief.on())
                    ? tell("page.morning-headline.it-runs-short", "soon", Dates.soon(shortOn.get(), brief.on()))
                    : tell("page.morning-headline.it-has-been-short-since", "shortOn", Dates.day(shortOn.get()));
        }
        return o.waitCost_usdHaDay() > 0
                ? tell(
                        "page.morning-headline.each-day-of-waiting-costs",
                        "moneyFine",
                        format.moneyFine(o.waitCost_usdHaDay()),
                        "areaName",
                        format.areaName())
                : tell(
                        "page.morning-headline.it-gains-2",
                        "money",
                        format.money(o.worth().mean_usdHa()),
                        "areaName",
                        format.areaName());
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
