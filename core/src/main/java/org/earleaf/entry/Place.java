// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.List;

/**
 * Which field and zone a draft means.
 *
 * @param zone empty: the whole field
 * @param plots what is known of it; empty where fields.csv could not be read
 */
public record Place(String field, String zone, List<Plots.Plot> plots) {
    public static final String FIELD = "field";
    public static final String ZONE = "zone";
    /** A list of names in a message holds no more than these. */
    private static final int NAMED = 12;

    /** Field and zone of a draft, spelled as the farm spells them. */
    public static Entered<Place> of(Draft draft, Plots plots) {
        Gathered gathered = new Gathered();
        Place place = of(draft, plots, gathered);
        return gathered.with(() -> place);
    }

    /** Likewise of something that happened there on a day, which must lie in a season of the field. */
    public static Entered<Place> of(Draft draft, Plots plots, LocalDate day, String part) {
        Gathered gathered = new Gathered();
        Place place = of(draft, plots, gathered);
        PassEntry.checkSeason(place, day, part, gathered);
        return gathered.with(() -> place);
    }

    static Place of(Draft draft, Plots plots, Gathered gathered) {
        String field = draft.text(FIELD);
        String zone = draft.text(ZONE);
        List<Plots.Plot> found = plots.of(field);
        if (found.isEmpty()) {
            if (field.isEmpty()) {
                gathered.wrong("field.missing", FIELD, field, "fields", some(plots.fields()));
            } else if (plots.isWhole()) {
                gathered.wrong("field.unknown", FIELD, field, "fields", some(plots.fields()));
            }
            return new Place(field, zone, found);
        }
        String spelled = found.get(0).field();
        if (zone.isEmpty()) {
            return new Place(spelled, "", found);
        }
        List<Plots.Plot> named =
                found.stream().filter(p -> p.zone().equalsIgnoreCase(zone)).toList();
        if (named.isEmpty() && plots.isWhole()) {
            List<String> zones = found.stream()
                    .map(Plots.Plot::zone)
                    .filter(z -> !z.isEmpty())
                    .distinct()
                    .toList();
            if (zones.isEmpty()) {
                gathered.wrong("zone.none-here", ZONE, zone, "field", spelled);
            } else {
                gathered.wrong("zone.unknown", ZONE, zone, "field", spelled, "zones", zones);
            }
        }
        return named.isEmpty()
                ? new Place(spelled, zone, found)
                : new Place(spelled, named.get(0).zone(), named);
    }

    private static List<String> some(List<String> names) {
        return names.subList(0, Math.min(NAMED, names.size()));
    }
}
