// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Stock;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Zone;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Dose;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixForm;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.MixOrder;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Loads as they are first planned: a recipe on one piece of ground by one rig, parted into equal tanks. The first also
 * fills heel and lines: their product is used and put on no ground.
 *
 */
public record LoadDraft(Farm farm, LabelBook labels, Trip trip, List<MixLine> lines, Tanks tanks, Seen seen) {
    private static final double M2_PER_HA = 10_000;
    private static final double LHA_PER_M3M2 = 1e7;

    /** A year of a field begins when the crop before it is off; earlier is stricter. Common practice, no source. */
    private static final int HARVEST_MONTH = 10;

    /**
     * Who goes where and when.
     *
     * @param job by which the loads are known to belong together
     */
    public record Trip(String job, Zone zone, Rig rig, LocalDate date) {}

    /**
     * How much is mixed.
     *
     * @param rate_m3m2 finished liquid on ground; NaN: the product goes on alone
     * @param tank_m3 the most that goes in one load
     * @param unapplied_m3 what fills heel and lines, once; 0 where they still hold this mix
     */
    public record Tanks(double rate_m3m2, double area_m2, double tank_m3, double unapplied_m3) {}

    /**
     * What was looked at before. NaN and empty: not known.
     *
     * @param stage on the scale of the crop
     * @param water_m to the nearest water in any direction
     * @param sensitive_m to the nearest crop or place that the mix hurts
     */
    public record Seen(
            double stage,
            LocalDate day,
            double height_m,
            Optional<LocalDate> harvest,
            LabelWork.Driving driving,
            double water_m,
            double sensitive_m) {
        /** Of plain fertiliser nothing more is asked. */
        public static Seen of(double stage, LocalDate day) {
            double no = Double.NaN;
            return new Seen(stage, day, no, Optional.empty(), LabelWork.Driving.NOT_KNOWN, no, no);
        }
    }

    public LoadDraft {
        lines = List.copyOf(lines);
    }

    /** Products of a recipe with what the shelf says of them. */
    public static List<MixLine> lines(Farm farm, Recipe recipe) {
        return recipe.lines().stream()
                .map(l -> line(farm, l.product(), l.rate(), l.rateUnit()))
                .toList();
    }

    /** One product at a rate. */
    public static MixLine line(Farm farm, String product, double rate, String rateUnit) {
        NitrogenProduct nitrogen = farm.findNitrogen(product)
                .orElse(farm.findProduct(product).map(Product::nitrogen).orElse(null));
        String form = farm.findProduct(product)
                .map(Product::form)
                .orElse(nitrogen != null && nitrogen.isLiquid() ? "SL" : "");
        MixForm place = MixForm.parse(form, Said.of("where.form", "product", product));
        return new MixLine(product, Dose.parse(rate, rateUnit, place, nitrogen, Said.text(product)), place, nitrogen);
    }

    /** Whether any of it carries a pesticide label. */
    public boolean isLabelled() {
        return lines.stream().anyMatch(MixLine::isLabelled);
    }

    /** @param ids names each load */
    public List<TankLoad> loads(Supplier<String> ids) {
        LoadPlan plan = LoadPlanner.plan(new LoadJob(
                lines,
                tanks.area_m2(),
                tanks.rate_m3m2(),
                tanks.tank_m3(),
                tanks.unapplied_m3(),
                0,
                LoadJob.Split.EQUAL,
                order()));
        List<TankLoad> loads = new ArrayList<>();
        for (Load load : plan.loads()) {
            double stays_m3 = load.number() == 1 ? tanks.unapplied_m3() : 0;
            loads.add(tank(ids.get(), load.volume_m3(), stays_m3, load.area_m2() / M2_PER_HA, plan));
        }
        return loads;
    }

    /** What labels say on the order of mixing. */
    private Set<MixOrder.Before> order() {
        Set<MixOrder.Before> all = new LinkedHashSet<>();
        for (MixLine then : lines) {
            Set<String> after = new HashSet<>();
            label(then.product()).map(LabelEntry::after).orElse(Set.of()).forEach(word -> after.add(plain(word)));
            lines.stream()
                    .filter(first -> first != then)
                    .filter(first -> after.contains(plain(first.product()))
                            || after.contains(plain(first.form().code())))
                    .forEach(first -> all.add(new MixOrder.Before(first.product(), then.product())));
        }
        return all;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(java.util.Locale.ROOT);
    }

    private Optional<LabelEntry> label(String product) {
        return labels.find(product, trip.zone().crop());
    }

    private TankLoad tank(String id, double volume_m3, double stays_m3, double area_ha, LoadPlan plan) {
        List<MixLine> order = new ArrayList<>(MixOrder.of(lines, order()));
        // What carries the mix goes in first.
        order.sort(Comparator.comparing(line -> !carries(line, plan.rate_m3m2())));
        List<LoadLine> parts = new ArrayList<>();
        for (MixLine line : order) {
            parts.add(part(parts.size() + 1, line, volume_m3, plan.rate_m3m2()));
        }
        return TankLoad.planned(
                TankLoad.Ticket.of(id, trip.job(), trip.rig().name(), trip.date()),
                new TankLoad.Fill(
                        volume_m3,
                        stays_m3,
                        plan.rate_m3m2(),
                        lines.size() > 1 && lines.stream().anyMatch(l -> carries(l, plan.rate_m3m2()))),
                seen.driving(),
                List.of(ground(area_ha)),
                parts);
    }

    private static boolean carries(MixLine line, double rate_m3m2) {
        return line.isNitrogenSolution() && line.dose().onGround(rate_m3m2) >= rate_m3m2 / 2;
    }

    /** The most that its label allows is counted at the strength of the tank, heel and lines with it. */
    private LoadLine part(int order, MixLine line, double volume_m3, double rate_m3m2) {
        Amount amount = line.dose().in(volume_m3, rate_m3m2);
        boolean mass = line.dose().isMass();
        double perHa = line.dose().onGround(rate_m3m2) * (mass ? M2_PER_HA : LHA_PER_M3M2);
        LabelFigure single =
                label(line.product()).map(e -> e.figure(LabelItem.SINGLE)).orElse(LabelFigure.NOT_ENTERED);
        double most = single.isStated()
                ? single.limit().value() * volume_m3 / rate_m3m2 / M2_PER_HA / (mass ? 1 : 1000)
                : Double.NaN;
        return new LoadLine(
                order,
                new LoadLine.Goods(
                        line.product(), line.form().isDry(), line.isLabelled(), codes(line.product()), classes(line)),
                perHa,
                amount,
                line.isLabelled() ? most : Double.NaN,
                List.of());
    }

    /** By what its containers are known: the registration number, the lots; the name where there is neither. */
    private Set<String> codes(String product) {
        Set<String> codes = new TreeSet<>();
        farm.findProduct(product).map(Product::registration).ifPresent(codes::add);
        label(product).map(LabelEntry::registration).ifPresent(codes::add);
        farm.shelf().stock().stream()
                .filter(s -> s.product().equalsIgnoreCase(product))
                .map(Stock::lot)
                .forEach(codes::add);
        codes.remove("");
        return codes.isEmpty() ? Set.of(product) : codes;
    }

    private Set<String> classes(MixLine line) {
        Set<String> classes = new TreeSet<>(Set.of(line.form().code()));
        farm.findProduct(line.product()).ifPresent(p -> classes.add(p.kind().word()));
        return classes;
    }

    private LoadGround ground(double area_ha) {
        Zone zone = trip.zone();
        if (area_ha > zone.area_ha() * (1 + 1e-6)) {
            throw new EarleafException(Problem.of(
                    "load.more-than-ground",
                    Said.of("where.ground", "ground", zone.label()),
                    Said.of("found.area", "area", Measure.AREA.of(area_ha)),
                    "most",
                    Measure.AREA.of(zone.area_ha())));
        }
        return new LoadGround(
                FieldPart.of(zone),
                new LabelWork.Ground(zone.area_ha(), area_ha, seen.water_m(), seen.sensitive_m()),
                new LabelWork.Standing(
                        zone.crop(),
                        zone.planted().minusYears(1).withMonth(HARVEST_MONTH).withDayOfMonth(1),
                        seen.stage(),
                        seen.height_m(),
                        seen.harvest()),
                seen.day());
    }
}
