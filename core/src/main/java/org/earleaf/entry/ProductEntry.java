// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductId;
import org.earleaf.farm.ProductKind;
import org.earleaf.mix.MixForm;
import org.earleaf.units.Called;
import org.earleaf.units.Dimension;

/**
 * A product as a person enters it: product (its name), form, density, price and price_unit, n with urea_share,
 * ammonium_share and nitrate_share, registration, caution, kind.
 */
public final class ProductEntry {
    private static final String PER = "usd/";

    private final Parts parts;
    private final String source;
    private final String name;

    /**
     * What is bought.
     *
     * @param nitrogen_usdKg money for a kilogram of nitrogen; NaN where its price does not say
     */
    public record Bought(Product product, double nitrogen_usdKg) {}

    private ProductEntry(Parts parts, String source) {
        this.parts = parts;
        this.source = source;
        this.name = parts.text(PassEntry.PRODUCT);
    }

    /**
     * The product; empty where something is refused.
     *
     * @param source where its nitrogen is told
     */
    public static Optional<Bought> of(Parts parts, ProductId id, String source) {
        return new ProductEntry(parts, source).bought(id);
    }

    public static Entered<Bought> of(Draft draft, String source) {
        Gathered gathered = new Gathered();
        Parts parts = new DraftParts(draft, gathered);
        Optional<Bought> bought = of(parts, new ProductId(parts.filled(PassEntry.PRODUCT)), source);
        return gathered.with(bought::orElseThrow);
    }

    private Optional<Bought> bought(ProductId id) {
        String form = parts.word("form", word -> MixForm.find(word).map(MixForm::code), forms())
                .orElse("");
        double kgL = parts.number("density", Ranges.PRODUCT_DENSITY);
        double money = parts.number("price", Ranges.PRODUCT_PRICE);
        Optional<NitrogenProduct> nitrogen = nitrogen(kgL);
        double usdKg = nitrogenPrice(money, nitrogen);
        ProductKind kind =
                parts.word("kind", ProductKind::findByWord, ProductKind.words()).orElse(ProductKind.OTHER);
        if (!parts.isGood()) {
            return Optional.empty();
        }
        double density =
                Double.isNaN(kgL) ? nitrogen.map(NitrogenProduct::density_kgL).orElse(kgL) : kgL;
        Product made = new Product(
                new Called<>(id, name),
                form,
                density,
                money,
                parts.text("price_unit"),
                nitrogen.orElse(null),
                parts.text("registration"),
                parts.text("caution"),
                kind);
        return Optional.of(new Bought(made, usdKg));
    }

    private static String forms() {
        return MixForm.listAll().stream().map(MixForm::code).sorted().collect(Collectors.joining(" "));
    }

    /** Nitrogen facts as entered; those built in under that name where none are. */
    private Optional<NitrogenProduct> nitrogen(double density_kgL) {
        double pct = parts.number("n", Ranges.NITROGEN_SHARE);
        double u = parts.number("urea_share", Ranges.UREA_SHARE);
        double a = parts.number("ammonium_share", Ranges.AMMONIUM_SHARE);
        double o = parts.number("nitrate_share", Ranges.NITRATE_SHARE);
        if (Double.isNaN(pct)) {
            return NitrogenProduct.findBuiltIn(name);
        }
        if (pct == 0) {
            return Optional.empty();
        }
        double sum = zero(u) + zero(a) + zero(o);
        if (parts.isGood()) {
            Checks.shares(sum).ifPresent(parts::refuse);
        }
        return parts.isGood()
                ? Optional.of(new NitrogenProduct(
                        name, pct / 100, density_kgL, zero(u) / sum, zero(a) / sum, zero(o) / sum, source))
                : Optional.empty();
    }

    private static List<String> priceUnits() {
        return Stream.of(Dimension.VOLUME.words(), Dimension.MASS.words(), "lb N", "kg N")
                .flatMap(words -> Stream.of(words.split(", ")))
                .map(unit -> PER + unit)
                .toList();
    }

    private static double zero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** Money for a kilogram of nitrogen; NaN where the price does not say. */
    private double nitrogenPrice(double money, Optional<NitrogenProduct> n) {
        if (Double.isNaN(money)) {
            return Double.NaN;
        }
        String unit = parts.text("price_unit");
        String per = unit.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
        if (per.startsWith(PER)) {
            String of = per.substring(PER.length());
            boolean ofNitrogen = of.endsWith("n") && !of.endsWith("ton");
            Optional<Double> kg = Dimension.MASS.findInside(1, ofNitrogen ? of.substring(0, of.length() - 1) : of);
            if (kg.isPresent()) {
                return n.map(p -> money / kg.get() / (ofNitrogen ? 1 : p.nitrogen_share()))
                        .orElse(Double.NaN);
            }
            Optional<Double> m3 = Dimension.VOLUME.findInside(1, of);
            if (m3.isPresent()) {
                return n.map(p -> money / (m3.get() * 1000 * p.nitrogen_kgL())).orElse(Double.NaN);
            }
        }
        parts.refuse("price.unit-unknown", "price_unit", unit, "units", priceUnits());
        return Double.NaN;
    }
}
