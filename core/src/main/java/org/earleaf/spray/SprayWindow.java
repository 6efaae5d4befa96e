// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.Said;

/**
 * A run of hours in which a pass may be made by its weather.
 *
 * @param from start, inclusive
 * @param to end, exclusive
 * @param fit the worst of its hours
 * @param cautions what asks for care within it, each factor once
 * @param endsBecause what makes the next hour unfit; empty when the forecast ends
 */
public record SprayWindow(
        LocalDateTime from,
        LocalDateTime to,
        SprayFit fit,
        List<HourReason> cautions,
        Optional<HourReason> endsBecause) {
    /** Stands wherever such hours are shown. */
    public static final Said CAUTION = Said.of("caution.spray-hours");

    public SprayWindow {
        cautions = List.copyOf(cautions);
    }

    public double hours() {
        return Duration.between(from, to).toMinutes() / 60.0;
    }
}
