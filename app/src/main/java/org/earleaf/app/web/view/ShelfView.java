// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.earleaf.app.Amounts;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.Stock;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LotStock;
import org.earleaf.mix.Amount;
import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;

/** What is on the shelf, what is free of it, and what labels say. */
public record ShelfView(Markup headline, List<Good> goods) {
    private static final double NEAR = 1e-9;

    /**
     * One product.
     *
     * @param facts form, density, nitrogen, actives, groups, registration, price
     */
    public record Good(String name, String caution, List<Fact> facts, List<Lot> lots, List<LabelFacts.Label> labels) {}

    public record Fact(String name, String entry) {}

    /** @param held by loads, or drawn for them and not filed */
    public record Lot(String lot, String place, String onHand, String held, String free, Markup state) {}

    public static ShelfView of(Farm farm, LabelBook book, List<LotStock> free, Format format) {
        LabelFacts labels = new LabelFacts(book);
        List<Good> goods = new ArrayList<>();
        for (Product p : farm.products()) {
            goods.add(new Good(
                    p.name(),
                    p.caution(),
                    facts(p, labels, format),
                    lots(p.name(), farm, free, format),
                    labels.of(p.name())));
        }
        for (Stock s : farm.shelf().stock()) {
            boolean shown = goods.stream().anyMatch(g -> g.name().equalsIgnoreCase(s.product()));
            if (!shown) {
                List<Fact> facts = new ArrayList<>();
                farm.findNitrogen(s.product()).ifPresent(n -> {
                    if (n.isLiquid()) {
                        add(facts, "Density", density(n.density_kgL(), format));
                    }
                    nitrogen(facts, n);
                });
                goods.add(new Good(
                        s.product(), "", facts, lots(s.product(), farm, free, format), labels.of(s.product())));
            }
        }
        return new ShelfView(headline(goods), goods);
    }

    private static Markup headline(List<Good> goods) {
        if (goods.isEmpty()) {
            return new Say().sentence("Nothing is on the shelf.").done();
        }
        long waiting = goods.stream()
                .flatMap(g -> g.labels().stream())
                .filter(LabelFacts.Label::waiting)
                .count();
        Say say = new Say().sentence(Words.capital(Words.count(goods.size(), "product")) + " on the shelf.");
        return waiting == 0
                ? say.done()
                : say.sentence(Words.capital(Words.count((int) waiting, "label")) + " to be looked at again.")
                        .done();
    }

    private static List<Fact> facts(Product p, LabelFacts labels, Format format) {
        List<Fact> facts = new ArrayList<>();
        add(facts, "Form", p.form());
        density_kgL(p).ifPresent(kgL -> add(facts, "Density", density(kgL, format)));
        add(facts, "Active ingredients", labels.actives(p.name()));
        add(facts, "Mode of action", labels.groups(p.name()));
        Optional.ofNullable(p.nitrogen()).ifPresent(n -> nitrogen(facts, n));
        add(facts, "Registration", p.registration());
        if (!Double.isNaN(p.price())) {
            add(
                    facts,
                    "Price",
                    "$" + Figure.text(p.price(), 4) + " a "
                            + p.priceUnit().toLowerCase(Locale.ROOT).replace("usd/", ""));
        }
        return facts;
    }

    /** As weighed for the shelf; else that of the nitrogen solution it is. */
    private static OptionalDouble density_kgL(Product p) {
        NitrogenProduct n = p.nitrogen();
        if (Double.isNaN(p.density_kgL())) {
            return n != null && n.isLiquid() ? OptionalDouble.of(n.density_kgL()) : OptionalDouble.empty();
        }
        return OptionalDouble.of(p.density_kgL());
    }

    private static void nitrogen(List<Fact> facts, NitrogenProduct n) {
        add(facts, "Nitrogen", Format.number(100 * n.nitrogen_share(), 0) + " % by weight");
        add(
                facts,
                "Of its nitrogen",
                Format.number(100 * n.ureaShare(), 1) + " % urea, " + Format.number(100 * n.ammoniumShare(), 1)
                        + " % ammonium, " + Format.number(100 * n.nitrateShare(), 1) + " % nitrate");
    }

    private static String density(double kgL, Format format) {
        return format.isMetric()
                ? Figure.text(kgL, 3) + " kg/L"
                : Figure.text(Dimension.DENSITY.outside(kgL * 1000, "lb/gal"), 4) + " lb/gal";
    }

    private static void add(List<Fact> facts, String name, String entry) {
        if (!entry.isBlank()) {
            facts.add(new Fact(name, entry));
        }
    }

    private static List<Lot> lots(String product, Farm farm, List<LotStock> free, Format format) {
        List<Lot> lots = new ArrayList<>();
        for (Stock s : farm.shelf().stock()) {
            if (!s.product().equalsIgnoreCase(product)) {
                continue;
            }
            boolean mass = Double.isNaN(s.amount_L());
            double onHand = mass ? s.amount_kg() : s.amount_L() / 1000;
            double left = free.stream()
                    .filter(f ->
                            f.product().equalsIgnoreCase(product) && f.lot().equals(s.lot()))
                    .mapToDouble(LotStock::free)
                    .sum();
            boolean held = onHand - left > NEAR;
            lots.add(new Lot(
                    s.lot().isEmpty() ? "no number" : s.lot(),
                    s.place(),
                    amount(onHand, mass, s.unit(), format.isMetric()),
                    held ? amount(onHand - left, mass, s.unit(), format.isMetric()) : "nothing",
                    left < -NEAR ? "short" : amount(left, mass, s.unit(), format.isMetric()),
                    left < -NEAR ? Marks.out("less than was drawn") : held ? Marks.soon("held") : Marks.done("free")));
        }
        return lots;
    }

    /** An amount in the unit in which it is measured out. */
    static String amount(double inside, boolean isMass, String unit, boolean metric) {
        return Amounts.text(new Amount(inside, isMass, unit), metric);
    }
}
