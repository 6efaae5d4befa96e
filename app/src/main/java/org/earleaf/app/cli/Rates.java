// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.decide.SprayMix;
import org.earleaf.farm.RateUnit;
import org.earleaf.units.Measure;

/**
 * The rates of an option for people: of nitrogen the element and the product beside it, of a spray its first product in
 * the unit in which the recipe has it (in metric units L/ha or kg/ha).
 */
record Rates(double rate, String rateUnit, double productRate, String productRateUnit) {
    /** An amount in its unit. */
    record Rate(double amount, String unit) {
        String text() {
            int decimals = amount < 1 ? 2 : 1;
            String number = Say.number(amount, decimals);
            return (number.contains(".") ? number.replaceAll("0+$", "").replaceAll("[.]$", "") : number) + " " + unit;
        }
    }

    static Rates of(Option o, boolean metric) {
        if (o.spray().isPresent()) {
            Rate first = of(o.spray().get().mix().protecting().get(0), metric);
            return new Rates(first.amount(), first.unit(), first.amount(), first.unit());
        }
        Measure product = o.liquid() ? Measure.VOLUME_RATE : Measure.MASS_RATE;
        Words words = Words.in(metric);
        return new Rates(
                words.value(Measure.NITROGEN_RATE.of(o.nitrogen_kgHa())),
                words.unit(Measure.NITROGEN_RATE),
                words.value(product.of(o.productRate())),
                words.unit(product));
    }

    static Rate of(SprayMix.Part part, boolean metric) {
        if (!metric || part.unit() == RateUnit.PERCENT_VV) {
            return new Rate(part.rate(), part.unit().word());
        }
        return new Rate(part.unit().inside(part.rate()), part.unit().isVolume() ? "L/ha" : "kg/ha");
    }
}
