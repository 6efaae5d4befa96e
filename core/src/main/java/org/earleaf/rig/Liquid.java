// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.KGM3_PER_LBGAL;

import java.util.Locale;
import java.util.regex.Pattern;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Quantity;

/**
 * A liquid as nozzles feel it.
 *
 * @param name as people say it
 * @param density_kgM3 at 16 °C; it falls about 0.3 % for each 10 °F [common practice, no source]
 */
public record Liquid(String name, double density_kgM3) {
    public static final Liquid WATER = new Liquid("water", FlowMath.WATER_KGM3);

    private static final Pattern BARE = Pattern.compile("[0-9.,]+");
    private static final double LOWEST_KGM3 = 700;
    private static final double HIGHEST_KGM3 = 2000;

    public Liquid {
        if (!(density_kgM3 >= LOWEST_KGM3 && density_kgM3 <= HIGHEST_KGM3)) {
            throw EarleafException.of(
                    "density of " + name,
                    Figure.text(density_kgM3 / 1000, 4) + " kg/L (" + Figure.text(density_kgM3 / KGM3_PER_LBGAL, 4)
                            + " lb/gal)",
                    "0.7 to 2 kg/L (5.8 to 16.7 lb/gal)",
                    "Take the density from the product's sheet.");
        }
    }

    public double densityFactor() {
        return FlowMath.densityFactor(density_kgM3);
    }

    /** Reads "water", a nitrogen product by its name ("UAN 28", "uan32") or a density ("10.65 lb/gal", "1.28 kg/L"). */
    public static Liquid parse(String text, String where) {
        String word = squeezed(text);
        if (word.equals("water")) {
            return WATER;
        }
        for (NitrogenProduct product : NitrogenProduct.builtIn()) {
            if (squeezed(product.name()).equals(word)) {
                return of(product, where);
            }
        }
        if (BARE.matcher(text.trim()).matches()) {
            return ofBareNumber(NumberText.read(text, where));
        }
        if (text.isBlank()
                || !Character.isDigit(text.trim().charAt(0)) && text.trim().charAt(0) != '.') {
            throw EarleafException.of(
                    where,
                    "\"" + text + "\"",
                    "water, a liquid nitrogen product (uan28, uan30, uan32) or a density such as 10.65 lb/gal",
                    "Write one of these; the density stands on the product's sheet.");
        }
        double density_kgM3 = Quantity.parse(text, Dimension.DENSITY, where).inside();
        return new Liquid(text.trim(), density_kgM3);
    }

    /** A nitrogen product as a liquid; dry ones and ammonia are refused. */
    public static Liquid of(NitrogenProduct product, String where) {
        if (squeezed(product.name()).contains("ammonia")) {
            throw EarleafException.of(
                    where,
                    product.name(),
                    "a liquid that is not under pressure",
                    "Ammonia is never set or loaded here: the supplier, the equipment's plate and local code decide.");
        }
        if (!product.isLiquid()) {
            throw EarleafException.of(where, product.name(), "a liquid", "A dry product goes through a spreader.");
        }
        return new Liquid(product.name(), product.density_kgL() * 1000);
    }

    // The ranges of liquids in the three units do not meet, so that a bare number can only mean one of them.
    private static Liquid ofBareNumber(double number) {
        if (number >= 100) {
            return new Liquid(Figure.text(number, 6) + " kg/m3", number);
        }
        if (number > 3) {
            return new Liquid(Figure.text(number, 6) + " lb/gal", number * KGM3_PER_LBGAL);
        }
        return new Liquid(Figure.text(number, 6) + " kg/L", number * 1000);
    }

    private static String squeezed(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }
}
