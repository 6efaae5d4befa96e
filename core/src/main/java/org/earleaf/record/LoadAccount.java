// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LotStock;
import org.earleaf.load.TankLoad;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * Makes the record of a load on one field: what was measured, by lot, with registration and re-entry from the labels;
 * a person adds only what the load cannot know (start, stop, wind, certificate, where the field lies).
 */
public final class LoadAccount {
    /** Name of the entry that tells of which load a record is. */
    public static final String LOAD = "load";

    private final TankLoad load;
    private final LoadGround ground;
    private final LabelBook labels;
    private final List<LotStock.Draw> draws;
    private final Told told;
    private final Clerk clerk;

    /** Writes what is to stand on the record, in the words of the day on which it is filed. */
    @FunctionalInterface
    public interface Clerk {
        String write(Said said);
    }

    /**
     * What a record is made of beside the load.
     *
     * @param passId pass that it stands for
     * @param draws lots that the products of the load came out of
     * @param told what only a person knows
     */
    public record Filing(
            String passId, String placement, LabelBook labels, List<LotStock.Draw> draws, ZoneId zone, Told told) {
        public Filing {
            draws = List.copyOf(draws);
        }
    }

    private LoadAccount(TankLoad load, LoadGround ground, Filing filing, Clerk clerk) {
        this.load = load;
        this.ground = ground;
        this.labels = filing.labels();
        this.draws = filing.draws();
        this.told = filing.told();
        this.clerk = clerk;
    }

    /**
     * The record of an applied load on one piece of its ground.
     *
     * @param clerk puts into words what is no entry of the law
     */
    public static FiledRecord of(String id, TankLoad load, LoadGround ground, Filing filing, Clerk clerk) {
        return new LoadAccount(load, ground, filing, clerk)
                .record(id, filing.passId(), filing.placement(), filing.zone());
    }

    private FiledRecord record(String id, String passId, String placement, ZoneId zone) {
        TreeMap<String, String> extras = new TreeMap<>(told.extras());
        extras.put(LOAD, load.id());
        extras.put("mixed by", mixedBy());
        deviation().ifPresent(said -> extras.put(WindDeviation.KEY, said));
        if (load.unapplied_m3() > 0) {
            extras.put("not applied", notApplied());
        }
        if (!load.overridden().isEmpty()) {
            extras.put(
                    "set aside",
                    load.overridden().stream().map(o -> clerk.write(o.said())).collect(Collectors.joining("; ")));
        }
        return new FiledRecord(
                FiledRecord.Filing.first(id, told.filed(), told.applicator().name()),
                passId,
                new FiledRecord.Treated(
                        ground.part(),
                        told.location(),
                        ground.crop(),
                        new Amount(rounded(ground.area_ha() / Units.HA_PER_AC, 1), "ac")),
                new FiledRecord.Work(
                        placement,
                        load.rig(),
                        load.date(),
                        told.hours().startOn(load.date(), zone),
                        told.hours().endOn(load.date(), zone)),
                uses(),
                told.applicator(),
                extras);
    }

    private List<ProductUse> uses() {
        double all_ha = load.grounds().stream().mapToDouble(LoadGround::area_ha).sum();
        double share = load.appliedShare() * ground.area_ha() / all_ha;
        List<ProductUse> uses = new ArrayList<>();
        for (LoadLine line : load.lines()) {
            Optional<LabelEntry> label = label(line);
            double amount = line.measured().times(share).inUnit();
            double perAc = amount / (ground.area_ha() / Units.HA_PER_AC);
            uses.add(new ProductUse(
                    line.product(),
                    label.map(LabelEntry::registration).orElse(""),
                    new Amount(rounded(amount, 2), line.planned().unit()),
                    rounded(perAc, 3).stripTrailingZeros().toPlainString() + " "
                            + line.planned().unit() + "/ac",
                    lots(line.product()),
                    reentry_h(label)));
        }
        return uses;
    }

    /** What stays in heel and lines: used, and put on no ground. */
    private String notApplied() {
        double share = 1 - load.appliedShare();
        List<Said> left = load.lines().stream()
                .map(l -> Said.of(
                        "record.left",
                        "amount",
                        rounded(l.measured().times(share).inUnit(), 2) + " "
                                + l.planned().unit(),
                        "product",
                        l.product()))
                .toList();
        return clerk.write(
                Said.of("record.not-applied", "volume", Measure.VOLUME.of(load.unapplied_m3()), "left", left));
    }

    private Optional<LabelEntry> label(LoadLine line) {
        return line.labelled() ? labels.find(line.product(), ground.crop()) : Optional.empty();
    }

    private static OptionalInt reentry_h(Optional<LabelEntry> label) {
        LabelFigure stated = label.map(l -> l.figure(LabelItem.REENTRY)).orElse(LabelFigure.NOT_ENTERED);
        return stated.isStated() ? OptionalInt.of((int) Math.ceil(stated.limit().value())) : OptionalInt.empty();
    }

    private String lots(String product) {
        TreeSet<String> lots = new TreeSet<>();
        draws.stream().filter(d -> d.product().equalsIgnoreCase(product)).forEach(d -> lots.add(d.lot()));
        lots.remove("");
        return String.join(", ", lots);
    }

    /** Who turned the keys, and whether one person turned both. */
    private String mixedBy() {
        TreeSet<String> people = new TreeSet<>();
        load.lines().forEach(l -> l.keys().forEach(k -> people.add(k.person().strip())));
        boolean single = load.lines().stream().anyMatch(LoadLine::isSingle);
        List<String> all = List.copyOf(people);
        return clerk.write(
                single ? Said.of("record.mixed-by-one", "people", all) : Said.of("record.mixed-by", "people", all));
    }

    private Optional<String> deviation() {
        List<String> labelled = load.lines().stream()
                .filter(LoadLine::labelled)
                .map(LoadLine::product)
                .toList();
        return WindDeviation.find(labelled, ground.crop(), labels, told.extras().getOrDefault(WindDeviation.WIND, ""))
                .map(clerk::write);
    }

    private static BigDecimal rounded(double value, int digits) {
        return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    }
}
