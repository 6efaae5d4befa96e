// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.List;
import org.earleaf.field.Disease;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Units;

/**
 * Yield lost to a disease by how much of the leaf it has taken at the end.
 *
 * <pre>
 * loss = slope max(0, x - free), at most 60 % of the yield; slope per 1 % of leaf in % of yield, or in bu/ac
 *
 * x      severity at dough to dent   [% of the ear leaf]
 * free   severity that costs nothing
 * Range  the rows of severity-loss.csv
 * Source by disease in the table; gray leaf spot, southern rust and the cap are assumptions.
 * Check  SeverityTest
 * </pre>
 *
 * @param relativeMaturity_d hybrids from that many days on
 * @param amount whether the slope is in bu/ac, not in % of yield
 * @param free_pct severity that costs nothing
 */
public record SeverityLoss(
        Disease disease, double relativeMaturity_d, boolean amount, double slope, double free_pct, Support support) {
    private static final List<SeverityLoss> TABLE = BundledTable.rows("severity-loss.csv").stream()
            .map(row -> new SeverityLoss(
                    Disease.findByWord(row.text("disease")).orElseThrow(),
                    row.number("relative_maturity"),
                    row.text("form").equals("amount"),
                    row.number("slope"),
                    row.number("free_pct"),
                    Support.ofToken(row.text("support"))))
            .toList();

    /** The row of a disease for a hybrid; the last that its maturity reaches. */
    public static SeverityLoss of(Disease disease, double relativeMaturity_d) {
        return TABLE.stream()
                .filter(r -> r.disease == disease)
                .filter(r -> r.relativeMaturity_d == 0 || relativeMaturity_d >= r.relativeMaturity_d)
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    /** Dry grain lost [kg/ha] of a yield without disease. */
    public double loss_kgHa(double severity, double yield_kgHa, ProtectionSettings settings) {
        double points = Math.max(0, 100 * severity - free_pct);
        double most = settings.of(ProtectionAssumption.LOSS_CAP) * yield_kgHa;
        double loss = amount
                ? slope * points * Units.KGHA_PER_BUAC * Units.DRY_SHARE_OF_TRADE_CORN
                : slope / 100 * points * yield_kgHa;
        return Math.min(most, loss);
    }
}
