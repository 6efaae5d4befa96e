// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;

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
        Optional<LocalTime> start,
        Optional<LocalTime> end,
        String location,
        String licence,
        Map<String, String> extras,
        String why,
        String person) {
    private static final Pattern RATE = Pattern.compile("([0-9.]+) (.+)");
    /** Ends of the names of passes that one load makes, one for each product. */
    private static final Pattern OF_LOAD = Pattern.compile("(load .*, )(\\d{1,9})");

    private static final MathContext DIGITS = new MathContext(4);

    public RecordCorrection {
        amounts = List.copyOf(amounts);
        extras = Map.copyOf(extras);
    }

    /** The further record; refused when it says nothing else than the old one. */
    public FiledRecord record(String id, ZoneId zone, Instant filed) {
        List<ProductUse> uses = new ArrayList<>();
        for (int k = 0; k < amounts.size(); k++) {
            ProductUse p = wrong.products().get(k);
            uses.add(new ProductUse(
                    p.name(), p.registration(), amounts.get(k), rate(p.rate(), factor(k)), p.lot(), p.reentry_h()));
        }
        TreeMap<String, String> all = new TreeMap<>(wrong.extras());
        all.putAll(extras);
        all.values().removeIf(String::isBlank);
        Applicator a = wrong.applicator();
        Applicator by = new Applicator(
                a.kind(), a.name(), licence, a.customer(), a.customerAddress(), a.helper(), a.helperTraining());
        Optional<ZonedDateTime> from = start.map(t -> ZonedDateTime.of(wrong.date(), t, zone));
        Optional<ZonedDateTime> to = end.map(t -> {
            boolean nextDay = start.isPresent() && t.isBefore(start.get());
            return ZonedDateTime.of(nextDay ? wrong.date().plusDays(1) : wrong.date(), t, zone);
        });
        boolean same = uses.equals(wrong.products())
                && all.equals(wrong.extras())
                && area.equals(wrong.area())
                && from.equals(wrong.start())
                && to.equals(wrong.end())
                && location.equals(wrong.location())
                && by.equals(a);
        if (same) {
            throw EarleafException.of(
                    "correction", "the same as the record", "something that is otherwise", "Change what is wrong.");
        }
        return new FiledRecord(
                id,
                wrong.id(),
                why,
                wrong.passId(),
                wrong.field(),
                wrong.zone(),
                location,
                wrong.crop(),
                area,
                wrong.placement(),
                wrong.rig(),
                uses,
                wrong.date(),
                from,
                to,
                by,
                all,
                filed,
                person);
    }

    /** The passes that the record stands for, at the rates of the correction. */
    public List<Pass> passes(Farm farm) {
        Matcher m = OF_LOAD.matcher(wrong.passId());
        boolean load = m.matches();
        // By place and not by name: a product may be called otherwise by now.
        List<Pass> of = farm.passes().stream()
                .filter(p -> load ? p.id().startsWith(m.group(1)) : p.id().equals(wrong.passId()))
                .sorted(Comparator.comparingInt(RecordCorrection::place))
                .toList();
        List<Pass> passes = new ArrayList<>();
        for (int k = 0; k < Math.min(amounts.size(), of.size()); k++) {
            passes.add(of.get(k).times(factor(k)));
        }
        return passes;
    }

    private static int place(Pass pass) {
        Matcher m = OF_LOAD.matcher(pass.id());
        return m.matches() ? Integer.parseInt(m.group(2)) : 0;
    }

    /** By how much the rate of a product is other than was filed. */
    private double factor(int k) {
        ProductUse was = wrong.products().get(k);
        Dimension kind =
                Dimension.VOLUME.findInside(1, was.amount().unit()).isPresent() ? Dimension.VOLUME : Dimension.MASS;
        String where = "amount of " + was.name();
        double more = amounts.get(k).inside(kind, where) / was.amount().inside(kind, where);
        double ground = area.inside(Dimension.AREA, "ground") / wrong.area().inside(Dimension.AREA, "ground");
        return more / ground;
    }

    private static String rate(String said, double factor) {
        Matcher m = RATE.matcher(said);
        boolean scaled = m.matches() && (factor < 1 - 1e-9 || factor > 1 + 1e-9);
        return scaled
                ? new BigDecimal(m.group(1))
                                .multiply(BigDecimal.valueOf(factor))
                                .round(DIGITS)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " " + m.group(2)
                : said;
    }
}
