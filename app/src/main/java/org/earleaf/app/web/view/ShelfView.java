// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
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
                        add(facts, tell("page.shelf.density"), density(n.density_kgL(), format));
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
            return new Say()
                    .sentence(tell("page.shelf.nothing-is-on-the-shelf"))
                    .done();
        }
        long waiting = goods.stream()
                .flatMap(g -> g.labels().stream())
                .filter(LabelFacts.Label::waiting)
                .count();
        Say say = new Say().sentence(tell("page.shelf.on-the-shelf", "n", goods.size()));
        return waiting == 0
                ? say.done()
                : say.sentence(tell("page.shelf.to-be-looked-at-again", "n", (int) waiting))
                        .done();
    }

    private static List<Fact> facts(Product p, LabelFacts labels, Format format) {
        List<Fact> facts = new ArrayList<>();
        add(facts, tell("page.shelf.form"), p.form());
        density_kgL(p).ifPresent(kgL -> add(facts, tell("page.shelf.density"), density(kgL, format)));
        add(facts, tell("page.shelf.active-ingredients"), labels.actives(p.name()));
        add(facts, tell("page.shelf.mode-of-action"), labels.groups(p.name()));
        Optional.ofNullable(p.nitrogen()).ifPresent(n -> nitrogen(facts, n));
        add(facts, tell("page.shelf.registration"), p.registration());
        if (!Double.isNaN(p.price())) {
            add(
                    facts,
                    tell("page.shelf.price"),
                    tell(
                            "page.shelf.price-of",
                            "price",
                            p.price(),
                            "unit",
                            p.priceUnit().toLowerCase(Locale.ROOT).replace("usd/", "")));
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
        add(
                facts,
                tell("page.shelf.nitrogen"),
                tell("page.shelf.by-weight", "number", Format.number(100 * n.nitrogen_share(), 0)));
        add(
                facts,
                tell("page.shelf.of-its-nitrogen"),
                tell(
                        "page.shelf.urea-ammonium-nitrate",
                        "number",
                        Format.number(100 * n.ureaShare(), 1),
                        "number2",
                        Format.number(100 * n.ammoniumShare(), 1),
                        "number3",
                        Format.number(100 * n.nitrateShare(), 1)));
    }

    private static String density(double kgL, Format format) {
        return format.isMetric()
                ? tell("page.shelf.kg-l", "kgL", Figure.text(kgL, 3))
                : tell("page.shelf.lb-gal", "outside", Figure.text(Dimension.DENSITY.outside(kgL * 1000, "lb/gal"), 4));
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
                    s.lot().isEmpty() ? tell("page.shelf.no-number") : s.lot(),
                    s.place(),
                    amount(onHand, mass, s.unit(), format.isMetric()),
                    held ? amount(onHand - left, mass, s.unit(), format.isMetric()) : tell("page.shelf.nothing"),
                    left < -NEAR ? tell("page.shelf.short") : amount(left, mass, s.unit(), format.isMetric()),
                    left < -NEAR
                            ? Marks.out(tell("page.shelf.less-than-was-drawn"))
                            : held ? Marks.soon(tell("page.shelf.held")) : Marks.done(tell("page.shelf.all-free"))));
        }
        return lots;
    }

    /** An amount in the unit in which it is measured out. */
    static String amount(double inside, boolean isMass, String unit, boolean metric) {
        return Amounts.text(new Amount(inside, isMass, unit), metric);
    }
}
