// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.OverTheTop;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.outlook.Outlook;

/** A placement that may not or cannot be used on a day, and why. It keeps its row and has no worth. */
record Barred(String name, Markup state, String reason) {
    private static final List<Placement> OFFERED = List.of(
            Placement.ROW_BASE,
            Placement.MID_DRIBBLE,
            Placement.MID_INJECT,
            Placement.ROW_INJECT,
            Placement.BROADCAST,
            Placement.BY_AIR);

    static List<Barred> of(Farm farm, Outlook outlook, List<Option> options, LocalDate date, Format format) {
        Set<Placement> done = options.stream()
                .filter(o -> o.date().equals(date))
                .map(Option::placement)
                .collect(Collectors.toSet());
        List<Barred> all = new ArrayList<>();
        for (Placement p : OFFERED) {
            if (!done.contains(p)) {
                all.add(of(farm, outlook, p, date, format));
            }
        }
        return all;
    }

    private static Barred of(Farm farm, Outlook outlook, Placement p, LocalDate date, Format format) {
        String name = Phrases.capital(format.say(p));
        List<Rig> rigs = farm.rigs().stream()
                .filter(r -> !r.isTender() && r.placements().contains(p))
                .toList();
        if (rigs.isEmpty()) {
            return new Barred(name, Marks.out(tell("page.barred.no-rig")), tell("page.barred.no-rig-of-this-farm"));
        }
        if (rigs.stream().noneMatch(r -> fits(outlook, r, date))) {
            Rig rig = rigs.get(0);
            String reason = tell(
                    "page.barred.corn-today-the-clears",
                    "length",
                    format.length(outlook.height_cm().p50()),
                    "lengthUnit",
                    format.lengthUnit(),
                    "name",
                    rig.name(),
                    "length2",
                    format.length(100 * rig.clearance_m()),
                    "lengthUnit2",
                    format.lengthUnit());
            return new Barred(name, Marks.out(tell("page.barred.corn-too-tall")), reason);
        }
        if (p == Placement.BROADCAST && OverTheTop.most_kgHa(outlook.leafCollars(), false) <= 0) {
            return new Barred(
                    name,
                    Marks.out(tell("page.barred.not-over-the-leaves")),
                    tell("page.barred.past-v7-it-burns-them"));
        }
        return new Barred(
                name, Marks.out(tell("page.barred.not-worked-out")), tell("page.barred.no-rate-that-was-looked"));
    }

    private static boolean fits(Outlook outlook, Rig rig, LocalDate date) {
        return outlook.reach().stream()
                .filter(r -> r.rig().equals(rig.name()))
                .anyMatch(r -> r.lastDay().filter(d -> !d.isBefore(date)).isPresent());
    }
}
