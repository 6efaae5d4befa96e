// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.List;
import java.util.Optional;

/**
 * A nitrogen fertiliser.
 *
 * @param nitrogen_share mass share of nitrogen
 * @param density_kgL density at 16 °C; NaN for a dry product
 * @param ureaShare share of its nitrogen that is urea
 * @param ammoniumShare share that is ammonium
 * @param nitrateShare share that is nitrate
 * @param source where the figures come from
 */
public record NitrogenProduct(
        String name,
        double nitrogen_share,
        double density_kgL,
        double ureaShare,
        double ammoniumShare,
        double nitrateShare,
        String source) {
    private static final double KGL_PER_LBGAL = 0.45359237 / 3.785411784;
    private static final String MANUAL = "fertilizer manual and extension density tables";
    private static final List<NitrogenProduct> BUILT_IN = List.of(
            uan("UAN 28", .28, 10.67, .50, .25),
            uan("UAN 30", .30, 10.86, .50, .25),
            uan("UAN 32", .32, 11.06, .51, .245),
            dry("urea", .46, 1, 0, 0),
            dry("ammonium sulfate", .21, 0, 1, 0),
            dry("ammonium nitrate", .34, 0, .5, .5),
            ammonium("ammonium thiosulfate", .12, 11.04, MANUAL),
            ammonium("anhydrous ammonia", .82, 5.15, "from memory"));

    /** What is not urea is half ammonium, half nitrate. */
    private static NitrogenProduct uan(String name, double n, double lbGal, double urea, double half) {
        return new NitrogenProduct(name, n, lbGal * KGL_PER_LBGAL, urea, half, half, MANUAL);
    }

    private static NitrogenProduct ammonium(String name, double n, double lbGal, String source) {
        return new NitrogenProduct(name, n, lbGal * KGL_PER_LBGAL, 0, 1, 0, source);
    }

    private static NitrogenProduct dry(String name, double n, double urea, double nh4, double no3) {
        return new NitrogenProduct(name, n, Double.NaN, urea, nh4, no3, "common practice, no source");
    }

    /** The products that every farm knows without listing them. */
    public static List<NitrogenProduct> builtIn() {
        return BUILT_IN;
    }

    public static Optional<NitrogenProduct> findBuiltIn(String name) {
        return BUILT_IN.stream()
                .filter(p -> p.name().equalsIgnoreCase(name.trim()))
                .findFirst();
    }

    public boolean isLiquid() {
        return !Double.isNaN(density_kgL);
    }

    /** Nitrogen in a litre [kg]. */
    public double nitrogen_kgL() {
        return nitrogen_share * density_kgL;
    }

    /** Litres of a liquid product on a hectare that carry this nitrogen. */
    public double litresHa(double nitrogen_kgHa) {
        return nitrogen_kgHa / nitrogen_kgL();
    }
}
