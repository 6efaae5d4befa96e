// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Prices;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A zone on a day, as far as protection sees it.
 *
 * @param zone its name, for messages
 * @param on today
 * @param futures equally likely
 * @param relativeMaturity_d of the hybrid
 * @param strips the farm's own proof of such passes
 */
public record ProtectionCase(
        String zone,
        LocalDate on,
        List<CropAhead> futures,
        SiteFacts site,
        double relativeMaturity_d,
        SoFar soFar,
        Prices prices,
        Optional<StripEvidence> strips,
        ProtectionSettings settings) {
    /**
     * What was seen and done this season.
     *
     * @param lesions what was scouted, one per disease; empty: nobody looked
     * @param aphids likewise
     * @param fungicidesMade days of fungicide passes already made
     */
    public record SoFar(List<LesionSighting> lesions, Optional<AphidSighting> aphids, List<LocalDate> fungicidesMade) {
        public SoFar {
            lesions = List.copyOf(lesions);
            fungicidesMade = List.copyOf(fungicidesMade);
        }
    }

    public ProtectionCase {
        futures = List.copyOf(futures);
        if (futures.isEmpty()) {
            throw new EarleafException(Problem.of("protection.no-future", Said.text(zone), Said.of("found.no-future")));
        }
    }

    public List<LesionSighting> lesions() {
        return soFar.lesions();
    }

    public Optional<AphidSighting> aphids() {
        return soFar.aphids();
    }

    public List<LocalDate> fungicidesMade() {
        return soFar.fungicidesMade();
    }

    /** Share of the futures of which something holds. */
    public double share(java.util.function.Predicate<CropAhead> holds) {
        return (double) futures.stream().filter(holds).count() / futures.size();
    }
}
