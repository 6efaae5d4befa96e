// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

/** How the weather of the last weeks suits a disease. Alone it never calls for a pass. */
public enum WeatherRisk {
    LOW("low"),
    MODERATE("moderate"),
    HIGH("high");

    private final String word;

    WeatherRisk(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** By the mean over days of the infection index, each day at most 1. */
    public static WeatherRisk ofIndex(double meanDailyIndex, ProtectionSettings settings) {
        if (meanDailyIndex >= settings.of(ProtectionAssumption.RISK_VERY)) {
            return HIGH;
        }
        return meanDailyIndex >= settings.of(ProtectionAssumption.RISK_FAVOURABLE) ? MODERATE : LOW;
    }

    /** Daily growth of severity. */
    double growth_perDay(ProtectionSettings settings) {
        return settings.of(
                switch (this) {
                    case LOW -> ProtectionAssumption.GROWTH_LOW;
                    case MODERATE -> ProtectionAssumption.GROWTH_FAVOURABLE;
                    case HIGH -> ProtectionAssumption.GROWTH_VERY;
                });
    }
}
