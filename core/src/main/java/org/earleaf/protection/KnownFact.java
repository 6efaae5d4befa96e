// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.List;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.Support;
import org.earleaf.units.BundledTable;

/**
 * What trials found, with where it can be read.
 *
 * @param statement in our own words, a sentence without the source
 */
public record KnownFact(String id, Support support, String source, String statement) implements ProtectionReason {
    private static final List<KnownFact> TABLE = BundledTable.rows("protection-evidence.csv").stream()
            .map(row -> new KnownFact(
                    row.text("id"), Support.ofToken(row.text("support")), row.text("source"), row.text("sentence")))
            .toList();

    public static List<KnownFact> listAll() {
        return TABLE;
    }

    public static KnownFact of(String id) {
        return TABLE.stream().filter(f -> f.id.equals(id)).findFirst().orElseThrow();
    }

    @Override
    public String sentence() {
        return statement.substring(0, statement.length() - 1) + " (" + source + ").";
    }
}
