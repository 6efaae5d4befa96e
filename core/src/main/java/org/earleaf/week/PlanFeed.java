// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.Instant;
import java.util.List;
import org.earleaf.label.Cautions;
import org.earleaf.units.Said;

/** The week's work as dates for a calendar. */
public final class PlanFeed {
    private PlanFeed() {}

    /**
     * One date.
     *
     * @param uid the same for the same pass, whenever and by whom it is made
     * @param where the field
     */
    public record Entry(String uid, Instant from, Instant to, Said title, String where, Said text) {}

    public static List<Entry> of(Week week) {
        return week.all().stream().map(s -> entry(week, s)).toList();
    }

    private static Entry entry(Week week, Week.Stop s) {
        String uid = String.join(
                        "-",
                        week.farm().name(),
                        s.pass().name(),
                        s.pass().zone().planted().getYear() + "")
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        return new Entry(
                uid + "@earleaf",
                s.start().atZone(week.farm().timeZone()).toInstant(),
                s.end().atZone(week.farm().timeZone()).toInstant(),
                Said.of(
                        "feed.title",
                        "place",
                        s.pass().place(),
                        "kind",
                        s.pass().kind(),
                        "rig",
                        s.rig()),
                s.pass().zone().label(),
                Said.of(
                        "feed.text",
                        "product",
                        s.way().product(),
                        "placement",
                        s.way().placement(),
                        "caution",
                        Cautions.LABEL));
    }
}
