// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A farm's longitude against its time zone, which tells a minus sign that was forgotten and a zone that was mistyped.
 *
 * <pre>
 * hours apart = longitude / 15 - standard offset of the zone, the short way round the globe
 *
 * longitude  east positive                        [°]
 * offset     of the zone from UTC, without summer [h]
 * Range   at most 3.5 h apart: the widest of real places is western China, 3.2 h
 * Source  mean solar time, 15° an hour; IANA time zones as the JDK has them
 * Check   SunTimeTest
 * </pre>
 */
public final class SunTime {
    private static final double DEGREES_H = 15;
    private static final double DAY_H = 24;
    private static final double MOST_H = 3.5;
    /** Standard offsets are those of this day: zones change theirs by law, seldom and little. */
    private static final Instant AT = Instant.parse("2020-01-01T00:00:00Z");

    private SunTime() {}

    /** What is wrong with the longitude in this zone [°, east positive]; empty: they go together. */
    public static Optional<Problem> findProblem(double longitude_deg, ZoneId zone) {
        double offset_h = zone.getRules().getStandardOffset(AT).getTotalSeconds() / 3600.0;
        double apart_h = Math.abs(longitude_deg / DEGREES_H - offset_h);
        double short_h = Math.min(apart_h, DAY_H - apart_h);
        return short_h <= MOST_H
                ? Optional.empty()
                : Optional.of(Problem.of(
                        "farm.longitude-not-of-zone",
                        Said.text("longitude"),
                        Problem.seen(Figure.text(longitude_deg, 4)),
                        "zone",
                        zone.getId(),
                        "about",
                        Figure.text(DEGREES_H * offset_h, 3)));
    }
}
