// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.KGM3_PER_LBGAL;

import java.util.Locale;
import java.util.regex.Pattern;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Measure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

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
            throw new EarleafException(Problem.of(
                    "density.implausible",
                    Said.of("where.density", "liquid", name),
                    Said.of("found.quantity", "quantity", Measure.DENSITY.of(density_kgM3)),
                    "low",
                    Measure.DENSITY.of(LOWEST_KGM3),
                    "high",
                    Measure.DENSITY.of(HIGHEST_KGM3)));
        }
    }

    public double densityFactor() {
        return FlowMath.densityFactor(density_kgM3);
    }

    /** Reads "water", a nitrogen product by its name ("UAN 28", "uan32") or a density ("10.65 lb/gal", "1.28 kg/L"). */
    public static Liquid parse(String text, Said where) {
        String word = squeezed(text);
        if (word.equals("water")) {
            return WATER;
        }
        for (NitrogenProduct product : NitrogenProduct.builtIn()) {
            if (squeezed(product.name()).equals(word)) {
                return of(product);
            }
        }
        if (BARE.matcher(text.trim()).matches()) {
            return ofBareNumber(number(text, where));
        }
        if (text.isBlank()
                || !Character.isDigit(text.trim().charAt(0)) && text.trim().charAt(0) != '.') {
            throw new EarleafException(Problem.of("liquid.unknown", where, Said.text(text)));
        }
        return new Liquid(text.trim(), density(text, where));
    }

    private static double number(String text, Said where) {
        try {
            return NumberText.read(text, "");
        } catch (EarleafException e) {
            throw e.at(where);
        }
    }

    private static double density(String text, Said where) {
        try {
            return Quantity.parse(text, Dimension.DENSITY, "").inside();
        } catch (EarleafException e) {
            throw e.at(where);
        }
    }

    /** A nitrogen product as a liquid; dry ones and ammonia are refused. */
    public static Liquid of(NitrogenProduct product) {
        if (squeezed(product.name()).contains("ammonia")) {
            throw new EarleafException(
                    Problem.of("liquid.ammonia", Said.of("where.liquid"), Said.text(product.name())));
        }
        if (!product.isLiquid()) {
            throw new EarleafException(Problem.of("liquid.dry", Said.of("where.liquid"), Said.text(product.name())));
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
