// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.decide.Option;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Said;

/** Fields that cannot wait: short of nitrogen already, or with the last day of their rig at hand. */
final class Pressing {
    /** Today, tomorrow and the day after. */
    private static final int NEAR_D = 2;

    private Pressing() {}

    /** One line a kind, with its fields. */
    static List<Said> of(LocalDate on, List<Outlook> outlooks, List<Option> passes) {
        List<Said> all = new ArrayList<>();
        lastDays(on, outlooks, passes)
                .forEach((day, fields) -> all.add(
                        day.equals(on)
                                ? Said.of("alarm.last-day-today", "fields", fields)
                                : Said.of("alarm.last-day", "day", day, "fields", fields)));
        List<String> shortNow = outlooks.stream()
                .filter(o -> o.nShort().p50().filter(d -> !d.isAfter(on)).isPresent())
                .filter(o -> find(passes, o).isPresent())
                .map(o -> o.zone().label())
                .toList();
        if (!shortNow.isEmpty()) {
            all.add(Said.of("alarm.short-now", "fields", shortNow));
        }
        return all;
    }

    /** The last day of the rig that is to go, by day. */
    private static Map<LocalDate, List<String>> lastDays(LocalDate on, List<Outlook> outlooks, List<Option> passes) {
        Map<LocalDate, List<String>> all = new TreeMap<>();
        for (Outlook o : outlooks) {
            find(passes, o)
                    .flatMap(go -> last(o, go))
                    .filter(d -> !d.isAfter(on.plusDays(NEAR_D)))
                    .ifPresent(d -> all.computeIfAbsent(d, k -> new ArrayList<>())
                            .add(o.zone().label()));
        }
        return all;
    }

    private static Optional<LocalDate> last(Outlook o, Option go) {
        return o.reach().stream()
                .filter(r -> r.rig().equals(go.rig()) && r.date().isPresent())
                .findFirst()
                .flatMap(OutOfReach::lastDay);
    }

    private static Optional<Option> find(List<Option> passes, Outlook o) {
        return passes.stream()
                .filter(Option::isNitrogen)
                .filter(p -> p.field().equals(o.zone().field())
                        && p.zone().equals(o.zone().zone()))
                .findFirst();
    }
}
