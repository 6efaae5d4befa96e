// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;

/**
 * A long run of days, both ends inclusive, on which temperature or rain was not observed but filled in. Such days say
 * nothing about a place: they must not stand for a possible future.
 */
public record WeatherGap(LocalDate first, LocalDate last) {
    /** Whether a day from {@code from} to {@code toInclusive} lies in it. */
    public boolean touches(LocalDate from, LocalDate toInclusive) {
        return !first.isAfter(toInclusive) && !last.isBefore(from);
    }
}
