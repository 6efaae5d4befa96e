// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.earleaf.units.Units.M2_PER_AC;
import static org.earleaf.units.Units.M3M2_PER_GALAC;
import static org.earleaf.units.Units.M3_PER_GAL;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Dose;
import org.earleaf.mix.Load;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.units.Said;

/** Recipes with invented products, and the units in which the checks are printed. */
public final class Recipes {
    private Recipes() {}

    public static MixLine line(String product, double rate, String unit, String form) {
        NitrogenProduct nitrogen = NitrogenProduct.findBuiltIn(product).orElse(null);
        MixForm place = MixForm.parse(form, Said.text("form"));
        return new MixLine(product, Dose.parse(rate, unit, place, nitrogen, Said.text("rate")), place, nitrogen);
    }

    /** Two labelled liquids, a surfactant and ammonium sulfate. */
    public static List<MixLine> tassel() {
        return List.of(
                line("Demo F1", 10, "fl oz/ac", "SC"),
                line("Demo I1", 2.8, "fl oz/ac", "EC"),
                line("Demo Spreader", 0.25, "% v/v", "NIS"),
                line("AMS", 8.5, "lb/100 gal", "AMS"));
    }

    public static double ac(double v) {
        return v * M2_PER_AC;
    }

    public static double gal(double v) {
        return v * M3_PER_GAL;
    }

    public static double gpa(double v) {
        return v * M3M2_PER_GALAC;
    }

    public static Amount of(Load load, String product) {
        return amounts(load).get(product);
    }

    /** How much of each product is in a tank, water among them. */
    static Map<String, Amount> amounts(Load load) {
        Map<String, Amount> amounts = new TreeMap<>();
        load.steps().forEach(step -> amounts.merge(step.product(), step.amount(), Amount::plus));
        return amounts;
    }
}
