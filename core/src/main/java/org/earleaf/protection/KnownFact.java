// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.List;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.Support;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Said;

/** What trials found, with where it can be read. */
public record KnownFact(Known known, Support support, String source) implements ProtectionReason {
    private static final List<KnownFact> TABLE = BundledTable.rows("protection-evidence.csv").stream()
            .map(row -> new KnownFact(
                    Known.valueOf(row.text("id")), Support.ofToken(row.text("support")), row.text("source")))
            .toList();

    /** What was found; the catalogue has it in our own words. */
    public enum Known {
        MEAN_RESPONSE,
        LATER_TRIALS,
        DISEASED_FIELDS,
        CHANCE_OF_PAYING,
        TIMING,
        UNDER_CANOPY,
        ARRESTED_EARS,
        APHID_FUNGI,
        APHID_THRESHOLD,
        APHID_DROUGHT,
        TAR_SPOT_TRIALS,
        TAR_SPOT_SEVERE
    }

    public static List<KnownFact> listAll() {
        return TABLE;
    }

    public static KnownFact of(Known known) {
        return TABLE.stream().filter(f -> f.known == known).findFirst().orElseThrow();
    }

    @Override
    public Said said() {
        return Said.of("protect.known", "known", known, "source", source);
    }
}
