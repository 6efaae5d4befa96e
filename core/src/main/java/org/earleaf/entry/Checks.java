// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;

/**
 * What must hold between the numbers of one fact, each of which may be possible alone. Every problem names the part in
 * which it lies; a number that is not known breaks nothing.
 */
public final class Checks {
    /** Shares are typed with two digits. */
    private static final double SHARES_ROUNDING = 0.011;

    private static final int POSSIBLE_FROM = 32;
    private static final int POSSIBLE_TO = 243;

    private Checks() {}

    /** Of a count: whole. */
    public static Optional<Problem> whole(double count, String part) {
        boolean parts = !Double.isNaN(count) && count != Math.rint(count);
        return parts
                ? Optional.of(Gathered.problem("number.not-whole", part, Figure.text(count, 4)))
                : Optional.empty();
    }

    /** Of a fertilizer: urea, ammonium and nitrate are all of its nitrogen. */
    public static Optional<Problem> shares(double sum) {
        return Math.abs(sum - 1) > SHARES_ROUNDING
                ? Optional.of(Gathered.problem("product.shares-not-one", "urea_share", Figure.text(sum, 4)))
                : Optional.empty();
    }

    /** Of corn: planted between February and August. */
    public static Optional<Problem> planting(LocalDate day) {
        int of = day.getDayOfYear();
        return of < POSSIBLE_FROM || of > POSSIBLE_TO
                ? Optional.of(Gathered.problem(
                        "field.planting-day",
                        "planted",
                        day.toString(),
                        "first",
                        LocalDate.ofYearDay(day.getYear(), POSSIBLE_FROM),
                        "last",
                        LocalDate.ofYearDay(day.getYear(), POSSIBLE_TO)))
                : Optional.empty();
    }

    /** Of a day's weather: the lowest temperature no higher than the highest. */
    public static Optional<Problem> temperatures(double highest_C, double lowest_C) {
        return highest_C < lowest_C
                ? Optional.of(Gathered.problem("weather.temperatures-turned", "tmin", ""))
                : Optional.empty();
    }
}
