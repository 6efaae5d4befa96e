// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.label.LabelBook;
import org.earleaf.mix.Dose;
import org.earleaf.mix.LoadCautions;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.MixOrder;
import org.earleaf.mix.MixStep;
import org.earleaf.rig.Liquid;
import org.earleaf.units.Said;

/** A kept load as the hand at the tank needs it: every step with water and reason, and the cautions of its mix. */
public final class LoadSteps {
    private static final double M2_PER_HA = 10_000;
    private static final double LHA_PER_M3M2 = 1e7;

    private LoadSteps() {}

    /**
     * One step.
     *
     * @param line the product with its keys; empty for water and for the rest of what carries the mix
     */
    public record Step(MixStep mix, Optional<LoadLine> line) {}

    /**
     * Steps in order; a product that goes in in two parts has its keys with the first.
     *
     * @param labels what they say on the order, where that is its reason
     */
    public static List<Step> of(TankLoad load, Farm farm, LabelBook labels) {
        Set<MixOrder.Before> order = new LinkedHashSet<>();
        for (int k = 1; k < load.lines().size(); k++) {
            order.add(new MixOrder.Before(
                    load.lines().get(k - 1).product(), load.lines().get(k).product()));
        }
        List<MixStep> mixed = LoadPlanner.plan(new LoadJob(
                        lines(load, farm),
                        load.volume_m3() / load.rate_m3m2(),
                        load.rate_m3m2(),
                        load.volume_m3() * (1 + 1e-6),
                        0,
                        0,
                        LoadJob.Split.EQUAL,
                        order))
                .loads()
                .get(0)
                .steps();
        List<Step> steps = new ArrayList<>();
        for (MixStep s : mixed) {
            boolean rest = s.part() == MixStep.Part.CARRIER_LAST;
            Optional<LoadLine> line = load.lines().stream()
                    .filter(l -> !rest && l.product().equals(s.product()))
                    .findFirst();
            steps.add(new Step(saidBy(s, load, labels), line));
        }
        return steps;
    }

    /** The order was locked as a whole; only what a label asks for is told as its wish. */
    private static MixStep saidBy(MixStep s, TankLoad load, LabelBook labels) {
        Set<String> after = new TreeSet<>();
        load.grounds().forEach(g -> labels.find(s.product(), g.crop())
                .ifPresent(e -> e.after().forEach(word -> after.add(word.strip().toLowerCase(Locale.ROOT)))));
        return s.after(load.lines().stream()
                .filter(l -> !l.product().equals(s.product()))
                .filter(l -> after.contains(l.product().toLowerCase(Locale.ROOT))
                        || l.classes().stream().anyMatch(c -> after.contains(c.toLowerCase(Locale.ROOT))))
                .map(LoadLine::product)
                .toList());
    }

    /** What to mind at the tank. */
    public static List<LoadCautions.Caution> cautions(TankLoad load, Farm farm) {
        return LoadCautions.of(lines(load, farm), load.rate_m3m2());
    }

    /** What flows out of the rig: the nitrogen solution that carries the mix or goes on alone; else as water. */
    public static Liquid liquid(TankLoad load, Farm farm) {
        return load.lines().stream()
                .filter(l -> load.fill().nitrogenCarrier() || load.lines().size() == 1)
                .flatMap(l -> farm.findNitrogen(l.product()).stream())
                .filter(NitrogenProduct::isLiquid)
                .findFirst()
                .map(n -> Liquid.of(n))
                .orElse(Liquid.WATER);
    }

    /** Products of a load with their rates, for another load like it. */
    public static List<MixLine> lines(TankLoad load, Farm farm) {
        return load.lines().stream().map(l -> line(l, farm)).toList();
    }

    private static MixLine line(LoadLine l, Farm farm) {
        Optional<Product> product = farm.findProduct(l.product());
        NitrogenProduct nitrogen = farm.findNitrogen(l.product())
                .orElse(product.map(Product::nitrogen).orElse(null));
        boolean mass = l.planned().isMass();
        double inside = l.perHa() / (mass ? M2_PER_HA : LHA_PER_M3M2);
        Dose dose = new Dose(
                true,
                mass,
                inside,
                l.perHa(),
                mass ? "kg/ha" : "L/ha",
                l.planned().unit());
        return new MixLine(l.product(), dose, form(l, product), nitrogen);
    }

    /** As on the shelf; a product that has left it goes by what the load says of it. */
    private static MixForm form(LoadLine l, Optional<Product> product) {
        return product.flatMap(p -> MixForm.find(p.form()))
                .or(() -> l.classes().stream()
                        .filter(c -> c.equals(c.toUpperCase(Locale.ROOT)))
                        .flatMap(c -> MixForm.find(c).stream())
                        .findFirst())
                .orElseGet(() -> MixForm.parse("SL", Said.of("where.form", "product", l.product())));
    }
}
