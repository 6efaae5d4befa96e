// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * How likely a zone is to end with much disease, before anybody has scouted it. It ranks fields; it decides nothing.
 *
 * <pre>
 * 2 susceptible or 1 intermediate hybrid; 2 corn after corn; 1 residue >= 35 %; 1 irrigated or river bottom;
 * 1 planted late; 2 disease confirmed this year; 2 weather risk high; 1 yield goal >= 220 bu/ac
 * 0 to 2 low, 3 to 5 moderate, 6 and more high
 *
 * Range  0 to 12
 * Source assumption; each sign is one that extension services name.
 * Check  SiteScoreTest
 * </pre>
 *
 * @param points 0 to 12
 */
public record SiteScore(int points) implements ProtectionReason {
    private static final double HIGH_GOAL_BUAC = 220;

    /** Low, moderate or high. */
    public enum Level {
        LOW("low"),
        MODERATE("moderate"),
        HIGH("high");

        private final String word;

        Level(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** @param confirmed lesions were found in the field this year, be it low on the plant */
    public static SiteScore of(SiteFacts site, boolean confirmed) {
        int points =
                switch (site.hybrid()) {
                    case SUSCEPTIBLE -> 2;
                    case INTERMEDIATE -> 1;
                    case RESISTANT -> 0;
                };
        points += site.isCornAfterCorn() ? 2 : 0;
        points += site.hasMuchResidue() ? 1 : 0;
        points += site.disease().wetPlace() ? 1 : 0;
        points += site.plantedLate() ? 1 : 0;
        points += confirmed ? 2 : 0;
        points += site.isHighRisk() ? 2 : 0;
        points += Units.buAc(site.yieldGoal_kgHa()) >= HIGH_GOAL_BUAC ? 1 : 0;
        return new SiteScore(points);
    }

    public Level level() {
        return points <= 2 ? Level.LOW : points <= 5 ? Level.MODERATE : Level.HIGH;
    }

    /** Chance that the season ends with more than 5 % of the leaf diseased. */
    public double chanceSevere(ProtectionSettings settings) {
        return settings.of(
                switch (level()) {
                    case LOW -> ProtectionAssumption.SEVERE_LOW;
                    case MODERATE -> ProtectionAssumption.SEVERE_MODERATE;
                    case HIGH -> ProtectionAssumption.SEVERE_HIGH;
                });
    }

    @Override
    public Said said() {
        return Said.of("protect.site-score", "level", level(), "points", points);
    }
}
