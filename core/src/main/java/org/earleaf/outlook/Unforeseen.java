// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * A nitrate test that lay beyond what a zone's members held: they were widened to it.
 *
 * @param tested_mgKg what was read
 * @param held_mgKg what the members held that day
 */
public record Unforeseen(LocalDate date, double tested_mgKg, Spread held_mgKg) {
    /** What is told on the advice. */
    public Said said() {
        return Said.of(
                "test.unforeseen",
                "nitrate",
                Measure.CONCENTRATION.of(tested_mgKg),
                "day",
                date,
                "low",
                Measure.CONCENTRATION.of(held_mgKg.p10()),
                "high",
                Measure.CONCENTRATION.of(held_mgKg.p90()));
    }
}
