// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.season.SeasonTrace;
import org.earleaf.units.Said;

/**
 * What nitrate tests say of the advice beyond their part in the outlook.
 *
 * @param unforeseen tests that lay beyond what the model held, in order of date
 * @param enough the test that shows that nothing more is needed
 */
public record Tested(List<Unforeseen> unforeseen, Optional<EnoughNitrate> enough) {
    public Tested {
        unforeseen = List.copyOf(unforeseen);
    }

    /** @param trace of the zone up to its decision day at least */
    public static Tested of(ZoneEnsemble futures, SeasonTrace trace) {
        return new Tested(futures.unforeseen(), EnoughNitrate.find(futures, trace));
    }

    /** One sentence each. */
    public List<Said> said() {
        List<Said> all =
                new ArrayList<>(unforeseen.stream().map(Unforeseen::said).toList());
        enough.map(EnoughNitrate::said).ifPresent(all::add);
        return all;
    }
}
