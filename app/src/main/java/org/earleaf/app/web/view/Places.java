// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;

/** The part of an address that names a field or zone: its label in lower case, joined by hyphens, unique on the farm. */
public final class Places {
    private final Map<String, Zone> byPlace = new LinkedHashMap<>();
    private final Map<String, String> byLabel = new LinkedHashMap<>();

    private Places(Farm farm) {
        for (Zone zone : farm.zones()) {
            String base = slug(zone.label());
            String place = base;
            for (int k = 2; byPlace.containsKey(place); k++) {
                place = base + "-" + k;
            }
            byPlace.put(place, zone);
            byLabel.put(zone.label(), place);
        }
    }

    public static Places of(Farm farm) {
        return new Places(farm);
    }

    private static String slug(String label) {
        String joined = label.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String trimmed = joined.replaceAll("^-|-$", "");
        return trimmed.isEmpty() ? "field" : trimmed;
    }

    public Optional<Zone> find(String place) {
        return Optional.ofNullable(byPlace.get(place));
    }

    /** Place of a zone of this farm. */
    public String of(Zone zone) {
        return of(zone.field(), zone.zone());
    }

    /** Place of a field's zone; the field's first zone when the zone is not named. */
    public String of(String field, String zone) {
        String label = zone.isEmpty() ? field : field + ", " + zone;
        String exact = byLabel.get(label);
        if (exact != null) {
            return exact;
        }
        return byPlace.entrySet().stream()
                .filter(e -> e.getValue().field().equals(field))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    /** Every place with its zone, in the farm's order. */
    public Map<String, Zone> all() {
        return Collections.unmodifiableMap(byPlace);
    }
}
