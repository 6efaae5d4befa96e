// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.outlook.Outlook;

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
                    .sentence("Today", " no pass.")
                    .sentence("Next: " + MorningView.label(next.field(), next.zone()) + " "
                            + Format.soon(next.date(), brief.on()) + reason(brief, next, format) + ".")
                    .done();
        }
        return new Say()
                .sentence("Today", " no pass would pay.")
                .sentence(nothing(brief))
                .done();
    }

    private static Markup act(Brief brief, List<Option> all, Format format) {
        List<Option> today = all.stream().filter(Option::isNitrogen).toList();
        List<Option> sprays = all.stream().filter(o -> !o.isNitrogen()).toList();
        if (today.isEmpty()) {
            return new Say()
                    .sentence("Today", " " + spray(sprays) + ".")
                    .sentence("It gains $" + format.money(sprays.get(0).worth().mean_usdHa()) + " " + format.areaName()
                            + ".")
                    .done();
        }
        Say say = nitrogen(brief, today, format);
        return (sprays.isEmpty() ? say : say.sentence(Words.capital(spray(sprays)) + ".")).done();
    }

    /** "spray fungicide over the top on Weir Sixty". */
    private static String spray(List<Option> sprays) {
        Option first = sprays.get(0);
        return sprays.size() == 1
                ? "spray " + first.kind() + " " + Words.where(first.placement()) + " on "
                        + MorningView.label(first.field(), first.zone())
                : "spray against disease and insects on " + Words.count(sprays.size(), "field");
    }

    private static Say nitrogen(Brief brief, List<Option> today, Format format) {
        Option first = today.get(0);
        boolean same = today.stream().allMatch(o -> o.placement() == first.placement());
        String where = same ? " " + Words.where(first.placement()) : "";
        String name = MorningView.label(first.field(), first.zone());
        String why = reason(brief, first, format) + ".";
        if (today.size() == 1) {
            return new Say().sentence("Today", " put nitrogen" + where + " on " + name + why);
        }
        return new Say()
                .sentence("Today", " put nitrogen" + where + " on " + Words.count(today.size(), "field") + ".")
                .sentence(name + " first" + why);
    }

    /** ": it runs short on Sunday", or the cost of waiting when it never does. */
    private static String reason(Brief brief, Option o, Format format) {
        if (!o.isNitrogen()) {
            return ": " + o.kind();
        }
        Optional<LocalDate> shortOn =
                MorningView.outlook(brief, o).map(Outlook::nShort).flatMap(s -> s.p50());
        if (shortOn.isPresent()) {
            return shortOn.get().isAfter(brief.on())
                    ? ": it runs short " + Format.soon(shortOn.get(), brief.on())
                    : ": it has been short since " + Format.date(shortOn.get());
        }
        return o.waitCost_usdHaDay() > 0
                ? ": each day of waiting costs " + format.moneyFine(o.waitCost_usdHaDay()) + " " + format.areaName()
                : ": it gains $" + format.money(o.worth().mean_usdHa()) + " " + format.areaName();
    }

    private static String nothing(Brief brief) {
        long likely = brief.outlooks().stream()
                .filter(o -> !Words.isRipe(o) && o.nShort().p50().isPresent())
                .count();
        if (brief.outlooks().isEmpty()) {
            return "No corn stands on this farm.";
        }
        if (brief.outlooks().stream().allMatch(Words::isRipe)) {
            return "The corn is ripe.";
        }
        return likely == 0
                ? "No field is likely to run short of nitrogen."
                : Words.capital(Words.count((int) likely, "field"))
                        + " may run short, but no pass would earn its cost back.";
    }
}
