// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;

/** Says which field comes first and how long the farm's tallest rig still fits. */
final class CalendarHeadline {
    private CalendarHeadline() {}

    static Markup of(Brief brief, List<Outlook> inOrder, Farm farm, Format format) {
        if (inOrder.isEmpty()) {
            return new Say()
                    .sentence(tell("page.calendar-headline.no-corn-stands-on-this"))
                    .done();
        }
        if (inOrder.stream().allMatch(Phrases::isRipe)) {
            return new Say()
                    .sentence(tell("page.calendar-headline.the-corn-is-ripe"))
                    .done();
        }
        Say say = new Say();
        Outlook first = inOrder.get(0);
        if (brief.passes().isEmpty()) {
            say.sentence(tell("page.calendar-headline.no-field-needs-a-pass")).sentence(likely(first));
        } else {
            Option pass = brief.passes().get(0);
            say.sentence(tell(
                    "page.calendar-headline.first",
                    "label",
                    first.zone().label(),
                    "soon",
                    Dates.soon(pass.date(), brief.on()),
                    "reason",
                    reason(first, pass, brief.on(), format)));
        }
        reach(inOrder, farm).ifPresent(say::sentence);
        return say.done();
    }

    private static String likely(Outlook o) {
        return o.nShort().p50().isPresent()
                ? tell(
                        "page.calendar-headline.is-the-first-to-run",
                        "label",
                        o.zone().label(),
                        "p50",
                        Dates.day(o.nShort().p50().get()))
                : tell("page.calendar-headline.none-is-likely-to-run");
    }

    private static String reason(Outlook o, Option pass, LocalDate on, Format format) {
        Optional<LocalDate> shortOn = o.nShort().p50();
        if (shortOn.isEmpty() || !pass.isNitrogen()) {
            return tell(
                    "page.calendar-headline.it-gains",
                    "money",
                    format.money(pass.worth().mean_usdHa()),
                    "areaName",
                    format.areaName());
        }
        return shortOn.get().isAfter(on)
                ? tell("page.calendar-headline.it-runs-short-about", "shortOn", Dates.day(shortOn.get()))
                : tell("page.calendar-headline.it-has-been-short-since", "shortOn", Dates.day(shortOn.get()));
    }

    /** Of the farm's own rigs the one that clears most: where it stops fitting first. */
    private static Optional<String> reach(List<Outlook> corn, Farm farm) {
        Optional<Rig> tallest = farm.rigs().stream()
                .filter(r -> !r.isTender() && !r.isHired())
                .max(Comparator.comparingDouble(Rig::clearance_m));
        if (tallest.isEmpty()) {
            return Optional.empty();
        }
        String rig = tallest.get().name();
        List<Outlook> standing = corn.stream()
                .filter(o -> !Phrases.isRipe(o) && find(o, rig).isPresent())
                .toList();
        List<String> gone = standing.stream()
                .filter(o -> find(o, rig).orElseThrow().lastDay().isEmpty())
                .map(o -> o.zone().label())
                .toList();
        Optional<Outlook> next = standing.stream()
                .filter(o -> find(o, rig).orElseThrow().lastDay().isPresent()
                        && find(o, rig).orElseThrow().date().isPresent())
                .min(Comparator.comparing(
                        o -> find(o, rig).orElseThrow().lastDay().orElseThrow()));
        String the = tell("page.calendar-headline.the", "rig", rig);
        if (!gone.isEmpty() && gone.size() == standing.size()) {
            return Optional.of(tell("page.calendar-headline.fits-no-more", "the", the));
        }
        return next.map(o -> {
            String until = Dates.day(find(o, rig).orElseThrow().lastDay().orElseThrow());
            return gone.isEmpty()
                    ? tell("page.calendar-headline.fits-everywhere-until", "the", the, "until", until)
                    : tell(
                            "page.calendar-headline.next-loses-after",
                            "the",
                            the,
                            "label",
                            o.zone().label(),
                            "until",
                            until);
        });
    }

    private static Optional<OutOfReach> find(Outlook o, String rig) {
        return o.reach().stream().filter(r -> r.rig().equals(rig)).findFirst();
    }
}
