// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.text.DateTimePatternGenerator;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Dates and times in the order of the language. American English gives "July 1", "Wednesday, July 1" (weekday), "Wed,
 * July 1" (short), "Jul 1" (tight), "July 1, 2026" (year), "Wednesday, July 1, 2026" (full), "Wednesday" (name),
 * "Wed" (short_name), "July" (month), "Wed, July 1, 2026" (stamp) and "2026-07-01" (iso).
 */
final class DateForms {
    private static final Map<String, String> SKELETONS = Map.of(
            "", "MMMMd",
            "weekday", "EEEEMMMMd",
            "short", "EEEMMMMd",
            "tight", "MMMd",
            "year", "yMMMMd",
            "full", "yEEEEMMMMd",
            "name", "EEEE",
            "short_name", "EEE",
            "stamp", "yEEEMMMMd",
            "month", "MMMM");

    private final Map<String, DateTimeFormatter> forms = new HashMap<>();
    private final DateTimeFormatter clock;

    DateForms(Locale locale) {
        DateTimePatternGenerator patterns = DateTimePatternGenerator.getInstance(locale);
        SKELETONS.forEach((form, skeleton) ->
                forms.put(form, DateTimeFormatter.ofPattern(patterns.getBestPattern(skeleton), locale)));
        forms.put("iso", DateTimeFormatter.ISO_LOCAL_DATE);
        clock = DateTimeFormatter.ofPattern("h:mm a", locale);
    }

    Optional<String> find(TemporalAccessor date, String form) {
        return Optional.ofNullable(forms.get(form)).map(f -> f.format(date));
    }

    /** "6:30 am". */
    String clock(LocalTime time) {
        return clock.format(time).replace("AM", "am").replace("PM", "pm");
    }
}
