// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.SeverityOutlook;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Tar spot found on a zone: how far it may spread, how unsure that is, and when to look again.
 *
 * <pre>
 * look again 7 to 14 days after the sighting
 *
 * Source spots show 12 to 15 days after a wet spell and spread on from about 20 (Hock et al. 1995; Webster et al. 2023, Sci.
 *        Rep. 13, abstract and opening read); scouting every 5 to 7 days in wet weather, Ohio State extension 2022 (read).
 *        One pass from tassel (VT) to milk (R3): Purdue extension and the Crop Protection Network (read).
 * Check  ProtectionRulesTest
 * </pre>
 *
 * @param seen day of the sighting
 */
public record TarSpotFound(LocalDate seen, SeverityOutlook.Spread spread) implements ProtectionReason {
    private static final int AGAIN_FROM_D = 7;
    private static final int AGAIN_BY_D = 14;

    public static Optional<TarSpotFound> of(ProtectionCase c) {
        return c.lesions().stream()
                .filter(LesionSighting::isFound)
                .filter(s -> s.disease().filter(d -> d == Disease.TAR_SPOT).isPresent())
                .findFirst()
                .map(s -> new TarSpotFound(s.date(), new SeverityOutlook(c).spread(s)));
    }

    public Next next() {
        return new Next(seen.plusDays(AGAIN_FROM_D), seen.plusDays(AGAIN_BY_D));
    }

    /** How far it may spread. */
    @Override
    public Said said() {
        return Said.of(
                "tar-spot.ahead",
                "day",
                seen,
                "likely",
                Measure.SHARE.of(spread.likely()),
                "low",
                Measure.SHARE.of(spread.low()),
                "high",
                Measure.SHARE.of(spread.high()),
                "chance",
                Measure.CHANCE.of(spread.chanceSevere()));
    }

    /** What to do next. */
    public record Next(LocalDate from, LocalDate by) implements ProtectionReason {
        @Override
        public Said said() {
            return Said.of("tar-spot.next", "from", from, "by", by);
        }
    }
}
