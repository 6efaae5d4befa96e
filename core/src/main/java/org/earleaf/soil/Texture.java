// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

/** USDA texture class of a horizon (Soil Survey Manual, texture triangle; limits from memory). */
final class Texture {
    private Texture() {}

    static String name(Horizon h) {
        double sand = h.sand_pct();
        double clay = h.clay_pct();
        double silt = 100 - sand - clay;
        if (clay >= 40) {
            return silt >= 40 ? "silty clay" : sand > 45 ? "sandy clay" : "clay";
        }
        if (clay >= 35 && sand > 45) {
            return "sandy clay";
        }
        if (clay >= 27) {
            return sand <= 20 ? "silty clay loam" : sand <= 45 ? "clay loam" : "sandy clay loam";
        }
        if (clay >= 20 && silt < 28 && sand > 45) {
            return "sandy clay loam";
        }
        return withLittleClay(sand, clay, silt);
    }

    private static String withLittleClay(double sand, double clay, double silt) {
        if (silt >= 80 && clay < 12) {
            return "silt";
        }
        if (silt >= 50) {
            return "silt loam";
        }
        if (silt + 1.5 * clay < 15) {
            return "sand";
        }
        if (silt + 2 * clay < 30) {
            return "loamy sand";
        }
        return sand > 52 || (clay < 7 && silt < 50) ? "sandy loam" : "loam";
    }
}
