// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.season.SeasonTrace;
import org.earleaf.units.Said;

/**
 * What nitrate tests say of the advice beyond their part in the outlook.
 *
 * @param unforeseen tests of late that lay beyond what the model held, in order of date
 * @param enough the test that shows that nothing more is needed
 */
public record Tested(List<Unforeseen> unforeseen, Optional<EnoughNitrate> enough) {
    /** A test is spoken of so long. */
    private static final int TOLD_D = 30;

    public Tested {
        unforeseen = List.copyOf(unforeseen);
    }

    /** @param trace of the zone up to its decision day at least */
    public static Tested of(ZoneEnsemble futures, SeasonTrace trace) {
        LocalDate from = futures.decisionDay().minusDays(TOLD_D);
        List<Unforeseen> lately = futures.unforeseen().stream()
                .filter(test -> !test.date().isBefore(from))
                .toList();
        return new Tested(lately, EnoughNitrate.find(futures, trace));
    }

    /** One sentence each. */
    public List<Said> said() {
        List<Said> all =
                new ArrayList<>(unforeseen.stream().map(Unforeseen::said).toList());
        enough.map(EnoughNitrate::said).ifPresent(all::add);
        return all;
    }
}
