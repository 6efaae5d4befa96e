// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.web.Refusal.COMMAND;
import static org.earleaf.app.web.Refusal.FILE;
import static org.earleaf.app.web.Refusal.PAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What nobody may enter of a past year. */
final class PastRefusals {
    private static final String RANGE = "number.out-of-range ";
    private static final List<String> COLUMNS = List.of("field", "zone", "year", "crop", "yield", "nitrogen");
    private static final Map<String, String> UNITS = Map.of("yield", " bu/ac", "nitrogen", " lb N/ac");

    private PastRefusals() {}

    /** The year 2021 of Mill Eighty with these parts otherwise. */
    static Refusal past(String code, String... pairs) {
        Map<String, String> draft = Refusal.parts(
                Map.of("field", "Mill Eighty", "year", "2021", "crop", "corn", "yield", "200", "nitrogen", "160"),
                pairs);
        Map<String, Refusal.Door> doors = new TreeMap<>();
        doors.put(
                FILE,
                at -> at.file(
                        "yields.csv",
                        Refusal.rows(COLUMNS, draft).replaceFirst("yield,nitrogen", "yield_bu_ac,nitrogen_lb_ac")));
        doors.put(COMMAND, at -> at.command(arguments(draft, at)));
        doors.put(
                PAGE,
                at -> at.page(
                        "/field/mill-eighty/past",
                        Refusal.parts(draft, "yield_unit", "bu/ac", "nitrogen_unit", "lb N/ac")));
        return new Refusal("past", String.join(" ", pairs), code, doors);
    }

    private static String[] arguments(Map<String, String> draft, RefusedAt at) {
        List<String> args = new ArrayList<>(List.of("past", "--json", "--farm", at.farm()));
        draft.forEach((part, text) -> {
            String unit = text.isEmpty() ? "" : UNITS.getOrDefault(part, "");
            args.add(part.equals("sure") ? "--sure" : "--" + part + "=" + text + unit);
        });
        return args.toArray(String[]::new);
    }

    static Stream<Refusal> all() {
        return Stream.of(
                past("past.year", "year", "2026"),
                past("past.year", "year", "1949"),
                past("past.year", "year", "21"),
                past("past.year", "year", ""),
                past("word.unknown", "crop", "beans"),
                past(RANGE + "past.yield", "yield", "401"),
                past(RANGE + "past.yield", "yield", "-1"),
                past(RANGE + "past.nitrogen", "nitrogen", "402"),
                past("number.comma-unclear", "yield", "1,234"),
                past("quantity.unreadable", "yield", "good"),
                past("past.nothing", "crop", "", "yield", "", "nitrogen", ""),
                // A file remarks it.
                past("entry.look-again past.yield-seldom", "yield", "330").without(FILE),
                past("entry.look-again past.yield-of-another-crop", "crop", "soybean")
                        .without(FILE),
                // The page has no field that is not there.
                past("field.unknown", "field", "Away").without(PAGE),
                past("zone.none-here", "zone", "north").without(PAGE));
    }
}
