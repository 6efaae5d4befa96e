// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;

/** Local times of day between which a pass was made; an end before the start means the next day. Empty: not told. */
public record Hours(Optional<LocalTime> start, Optional<LocalTime> end) {
    public static final Hours NOT_TOLD = new Hours(Optional.empty(), Optional.empty());

    Optional<ZonedDateTime> startOn(LocalDate date, ZoneId zone) {
        return start.map(t -> ZonedDateTime.of(date, t, zone));
    }

    Optional<ZonedDateTime> endOn(LocalDate date, ZoneId zone) {
        return end.map(t -> {
            boolean nextDay = start.isPresent() && t.isBefore(start.get());
            return ZonedDateTime.of(nextDay ? date.plusDays(1) : date, t, zone);
        });
    }
}
