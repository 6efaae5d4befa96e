// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Pass;
import org.earleaf.label.LabelBook;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A further record that says what is right, and the passes made as they are by it. Rates follow amounts and ground.
 *
 * @param amounts of each product, in the order of the record
 * @param extras wind, temperature and so on; an empty one is taken out
 */
public record RecordCorrection(
        FiledRecord wrong,
        List<Amount> amounts,
        Amount area,
        Hours hours,
        String location,
        String licence,
        Map<String, String> extras,
        String why,
        String person) {
    private static final MathContext DIGITS = new MathContext(4);

    public RecordCorrection {
        amounts = List.copyOf(amounts);
        extras = Map.copyOf(extras);
    }

    /**
     * The further record; refused when it says nothing else than the old one.
     *
     * @param labels what they say of the wind is held against the wind as corrected
     * @param clerk puts that into words
     */
    public FiledRecord record(String id, ZoneId zone, Instant filed, LabelBook labels, LoadAccount.Clerk clerk) {
        List<ProductUse> uses = new ArrayList<>();
        for (int k = 0; k < amounts.size(); k++) {
            ProductUse p = wrong.products().get(k);
            uses.add(new ProductUse(
                    p.name(), p.registration(), amounts.get(k), rate(p, factor(k)), p.lot(), p.reentry_h()));
        }
        TreeMap<String, String> all = new TreeMap<>(wrong.extras());
        all.putAll(extras);
        all.values().removeIf(String::isBlank);
        all.remove(WindDeviation.KEY);
        deviation(all, labels).ifPresent(said -> all.put(WindDeviation.KEY, clerk.write(said)));
        Applicator a = wrong.applicator();
        Applicator by = new Applicator(
                a.kind(), a.name(), licence, a.customer(), a.customerAddress(), a.helper(), a.helperTraining());
        FiledRecord.Treated was = wrong.treated();
        FiledRecord right = new FiledRecord(
                new FiledRecord.Filing(id, wrong.id(), why, filed, person),
                wrong.passId(),
                new FiledRecord.Treated(was.part(), location, was.crop(), area),
                new FiledRecord.Work(
                        wrong.placement(),
                        wrong.rig(),
                        wrong.date(),
                        hours.startOn(wrong.date(), zone),
                        hours.endOn(wrong.date(), zone)),
                uses,
                by,
                all);
        if (saysTheSame(right)) {
            throw new EarleafException(Problem.of(
                    "record.nothing-corrected", Said.of("where.correction"), Said.of("found.same-as-record")));
        }
        return right;
    }

    /** Worked out anew. Where nobody told the wind, then as now, none is asked for. */
    private Optional<Said> deviation(Map<String, String> all, LabelBook labels) {
        String wind = all.getOrDefault(WindDeviation.WIND, "");
        return wind.isEmpty()
                ? Optional.empty()
                : WindDeviation.find(
                        wrong.products().stream().map(ProductUse::name).toList(),
                        wrong.treated().crop(),
                        labels,
                        wind);
    }

    private boolean saysTheSame(FiledRecord right) {
        return right.products().equals(wrong.products())
                && right.extras().equals(wrong.extras())
                && right.treated().equals(wrong.treated())
                && right.work().equals(wrong.work())
                && right.applicator().equals(wrong.applicator());
    }

    /** The passes that the record stands for, at the rates of the correction. */
    public List<Pass> passes(Farm farm) {
        // A load makes a pass for each of its products; its record names the first of them.
        Optional<String> load = Optional.ofNullable(wrong.extras().get(LoadAccount.LOAD))
                .map(id -> PassOfLoad.start(id, new FieldPart(wrong.field(), wrong.zone()).label()))
                .filter(wrong.passId()::startsWith);
        // By place and not by name: a product may be called otherwise by now.
        List<Pass> of = farm.passes().stream()
                .filter(p -> load.map(p.id()::startsWith).orElse(p.id().equals(wrong.passId())))
                .sorted(Comparator.comparingInt(
                        p -> load.map(start -> PassOfLoad.order(p.id(), start)).orElse(0)))
                .toList();
        List<Pass> passes = new ArrayList<>();
        for (int k = 0; k < Math.min(amounts.size(), of.size()); k++) {
            passes.add(of.get(k).times(factor(k)));
        }
        return passes;
    }

    /** By how much the rate of a product is other than was filed. */
    private double factor(int k) {
        ProductUse was = wrong.products().get(k);
        Dimension kind =
                Dimension.VOLUME.findInside(1, was.amount().unit()).isPresent() ? Dimension.VOLUME : Dimension.MASS;
        double more = amounts.get(k).inside(kind, was.name()) / was.amount().inside(kind, was.name());
        double ground = area.inside(Dimension.AREA, "ground") / wrong.area().inside(Dimension.AREA, "ground");
        return more / ground;
    }

    private static String rate(ProductUse p, double factor) {
        boolean same = factor >= 1 - 1e-9 && factor <= 1 + 1e-9;
        Optional<Amount> asked = p.asked().filter(a -> !same);
        return asked.map(a -> scaled(a, factor).text()).orElse(p.rate());
    }

    private static Amount scaled(Amount rate, double factor) {
        BigDecimal number = rate.number().multiply(BigDecimal.valueOf(factor)).round(DIGITS);
        return new Amount(number.stripTrailingZeros(), rate.unit());
    }
}
