// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

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
        String name = Words.capital(p.word());
        List<Rig> rigs = farm.rigs().stream()
                .filter(r -> !r.isTender() && r.placements().contains(p))
                .toList();
        if (rigs.isEmpty()) {
            return new Barred(name, Marks.out("no rig"), "No rig of this farm does it.");
        }
        if (rigs.stream().noneMatch(r -> fits(outlook, r, date))) {
            Rig rig = rigs.get(0);
            String reason = "Corn " + format.length(outlook.height_cm().p50()) + " " + format.lengthUnit()
                    + " today; the " + rig.name() + " clears " + format.length(100 * rig.clearance_m()) + " "
                    + format.lengthUnit() + ".";
            return new Barred(name, Marks.out("corn too tall"), reason);
        }
        if (p == Placement.BROADCAST && OverTheTop.most_kgHa(outlook.leafCollars(), false) <= 0) {
            return new Barred(name, Marks.out("not over the leaves"), "Past V7 it burns them: a stop, not a price.");
        }
        return new Barred(name, Marks.out("not worked out"), "No rate that was looked at may be put on so that day.");
    }

    private static boolean fits(Outlook outlook, Rig rig, LocalDate date) {
        return outlook.reach().stream()
                .filter(r -> r.rig().equals(rig.name()))
                .anyMatch(r -> r.lastDay().filter(d -> !d.isBefore(date)).isPresent());
    }
}
