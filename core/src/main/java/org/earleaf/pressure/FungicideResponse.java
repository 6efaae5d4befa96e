// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.List;
import org.earleaf.units.BundledTable;
import org.hipparchus.special.Erf;

/**
 * What one pass near tasselling brings in a new field: normal, its spread that between fields.
 *
 * <pre>
 * chance to pay = 1 - F(z), z = (C/P - m)/s;  E[net] = P m - C
 * E[loss | loss] = -(P m - C) + P s f(z)/F(z)
 * own strips: m' = (m/s^2 + n d/v)/(1/s^2 + n/v), s'^2 = 1/(1/s^2 + n/v)
 *
 * m s    mean gain and its standard deviation, grain at 15.5 %   [kg/ha]
 * C P    cost [$/ha], price of a kilogram [$/kg]
 * f F    normal density and distribution
 * d v n  mean and variance of the gain of n own strips
 * Range  s above 0
 * Source normal spread between studies: Paul et al. 2011, Phytopathology 101:1122-1132; m and s derived from its chances,
 *        recalled (fungicide-response.csv); the rest is algebra of the normal distribution.
 * Check  FungicideResponseTest
 * </pre>
 */
public record FungicideResponse(double mean_kgHa, double sd_kgHa) {
    private record Row(FungicideKind kind, boolean severe, FungicideResponse response) {}

    private static final List<Row> TABLE = BundledTable.rows("fungicide-response.csv").stream()
            .map(row -> new Row(
                    kind(row.text("kind")),
                    row.text("severity").equals("high"),
                    new FungicideResponse(row.number("mean_kgha"), row.number("sd_kgha"))))
            .toList();

    /** The prior for a kind of fungicide, where the season ends with little or with much disease. */
    public static FungicideResponse prior(FungicideKind kind, boolean severe) {
        return TABLE.stream()
                .filter(r -> r.kind == kind && r.severe == severe)
                .findFirst()
                .orElseThrow()
                .response;
    }

    private static FungicideKind kind(String word) {
        return java.util.Arrays.stream(FungicideKind.values())
                .filter(k -> k.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** Chance that the gain is more than what pays for the pass. */
    public double chanceToPay(double cost_usdHa, double price_usdKg) {
        return distribution(-z(cost_usdHa, price_usdKg));
    }

    public double expectedNet_usdHa(double cost_usdHa, double price_usdKg) {
        return price_usdKg * mean_kgHa - cost_usdHa;
    }

    /** Mean loss of the cases that lose. */
    public double lossWhenItLoses_usdHa(double cost_usdHa, double price_usdKg) {
        double z = z(cost_usdHa, price_usdKg);
        double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
        return -expectedNet_usdHa(cost_usdHa, price_usdKg) + price_usdKg * sd_kgHa * density / distribution(z);
    }

    private double z(double cost_usdHa, double price_usdKg) {
        return (cost_usdHa / price_usdKg - mean_kgHa) / sd_kgHa;
    }

    /** What is believed of the mean once the farm's own strips are in. */
    public FungicideResponse updated(StripEvidence strips) {
        double prior = 1 / (sd_kgHa * sd_kgHa);
        double data = strips.strips() / strips.variance_kg2Ha2();
        double mean = (mean_kgHa * prior + strips.mean_kgHa() * data) / (prior + data);
        return new FungicideResponse(mean, Math.sqrt(1 / (prior + data)));
    }

    /** Distribution function at a gain. */
    public double below(double gain_kgHa) {
        return distribution((gain_kgHa - mean_kgHa) / sd_kgHa);
    }

    private static double distribution(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }
}
