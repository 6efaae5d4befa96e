// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
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
            return new Say().sentence("No corn stands on this farm.").done();
        }
        if (inOrder.stream().allMatch(Words::isRipe)) {
            return new Say().sentence("The corn is ripe.").done();
        }
        Say say = new Say();
        Outlook first = inOrder.get(0);
        if (brief.passes().isEmpty()) {
            say.sentence("No field needs a pass.").sentence(likely(first));
        } else {
            Option pass = brief.passes().get(0);
            say.sentence(first.zone().label() + " first, " + Format.soon(pass.date(), brief.on()) + ": "
                    + reason(first, pass, brief.on(), format) + ".");
        }
        reach(inOrder, farm).ifPresent(say::sentence);
        return say.done();
    }

    private static String likely(Outlook o) {
        return o.nShort().p50().isPresent()
                ? o.zone().label() + " is the first to run short, about "
                        + Format.date(o.nShort().p50().get()) + "."
                : "None is likely to run short of nitrogen.";
    }

    private static String reason(Outlook o, Option pass, LocalDate on, Format format) {
        Optional<LocalDate> shortOn = o.nShort().p50();
        if (shortOn.isEmpty() || !pass.isNitrogen()) {
            return "it gains $" + format.money(pass.worth().mean_usdHa()) + " " + format.areaName();
        }
        return shortOn.get().isAfter(on)
                ? "it runs short about " + Format.date(shortOn.get())
                : "it has been short since " + Format.date(shortOn.get());
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
                .filter(o -> !Words.isRipe(o) && find(o, rig).isPresent())
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
        String the = "The " + rig.toLowerCase(java.util.Locale.US);
        if (!gone.isEmpty() && gone.size() == standing.size()) {
            return Optional.of(the + " fits no more.");
        }
        return next.map(o -> {
            String until = Format.date(find(o, rig).orElseThrow().lastDay().orElseThrow());
            return gone.isEmpty()
                    ? the + " fits everywhere until " + until + "."
                    : the + " next loses " + o.zone().label() + ", after " + until + ".";
        });
    }

    private static Optional<OutOfReach> find(Outlook o, String rig) {
        return o.reach().stream().filter(r -> r.rig().equals(rig)).findFirst();
    }
}
