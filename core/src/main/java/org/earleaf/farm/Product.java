// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Locale;
import java.util.Optional;
import org.earleaf.label.LabelBook;
import org.earleaf.units.Called;
import org.earleaf.units.Dimension;

/**
 * A product on the shelf that is not a nitrogen fertiliser, or a fertiliser of the farm's own.
 *
 * @param called its name
 * @param form two-letter formulation code of the international catalogue (SC, EC, WG, SL ...)
 * @param density_kgL NaN: not given
 * @param price amount of money a {@code priceUnit}, NaN: not given
 * @param nitrogen nitrogen facts; null when it carries none
 * @param registration registration number on its label, empty when none
 * @param caution short text for sheets
 * @param kind what it is for; what its label says stands in the {@link LabelBook}
 */
public record Product(
        Called<ProductId> called,
        String form,
        double density_kgL,
        double price,
        String priceUnit,
        @org.jspecify.annotations.Nullable NitrogenProduct nitrogen,
        String registration,
        String caution,
        ProductKind kind) {
    /** One that was never called otherwise. */
    public Product(
            String name,
            String form,
            double density_kgL,
            double price,
            String priceUnit,
            @org.jspecify.annotations.Nullable NitrogenProduct nitrogen,
            String registration,
            String caution,
            ProductKind kind) {
        this(
                new Called<>(new ProductId(name), name),
                form,
                density_kgL,
                price,
                priceUnit,
                nitrogen,
                registration,
                caution,
                kind);
    }

    public ProductId id() {
        return called.id();
    }

    public String name() {
        return called.name();
    }

    /** One of which it was not told what it is for. */
    public Product(
            String name,
            String form,
            double density_kgL,
            double price,
            String priceUnit,
            @org.jspecify.annotations.Nullable NitrogenProduct nitrogen,
            String registration,
            String caution) {
        this(name, form, density_kgL, price, priceUnit, nitrogen, registration, caution, ProductKind.OTHER);
    }

    /**
     * What a rate of it costs [$/ha]; NaN where price, density or carrier is not known.
     *
     * @param carrier_LHa finished spray, for a rate in % v/v
     */
    public double cost_usdHa(double rate, RateUnit unit, double carrier_LHa) {
        if (unit.isOfNitrogen()) {
            return Double.NaN;
        }
        double amount = unit == RateUnit.PERCENT_VV ? unit.inside(rate) * carrier_LHa : unit.inside(rate);
        boolean byVolume = !unit.isMass();
        String per = priceUnit.toLowerCase(Locale.ROOT).replace("usd/", "").trim();
        Optional<Double> m3 = Dimension.VOLUME.findInside(1, per);
        Optional<Double> kg = Dimension.MASS.findInside(1, per);
        if (m3.isPresent()) {
            double perLitre = price / (1000 * m3.get());
            return perLitre * (byVolume ? amount : amount / density_kgL);
        }
        return kg.isPresent() ? price / kg.get() * (byVolume ? amount * density_kgL : amount) : Double.NaN;
    }
}
