// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.DropletClass;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** Invented labels of invented products, on five crops. */
public final class Labels {
    public static final Instant NOW = Instant.parse("2026-06-01T12:00:00Z");
    public static final double KGL = Units.KGM3_PER_LBGAL / 1000;

    private Labels() {}

    public static ActiveIngredient active(String name, double content, String group, double season_lbAc) {
        return new ActiveIngredient(
                name,
                content,
                1,
                List.of(group),
                LabelLimit.noneStated(),
                Double.isNaN(season_lbAc) ? LabelLimit.noneStated() : LabelLimit.of(Units.kgHa(season_lbAc)));
    }

    public static List<ActiveIngredient> f1() {
        return List.of(
                active("demostrobin", 1.2 * KGL, "FRAC 11", 0.26), active("democonazole", .9 * KGL, "FRAC 3", 0.20));
    }

    /** Every needed item, none stated where nothing else is said. */
    public static LabelEntry entry(
            String product, String crop, boolean dry, List<ActiveIngredient> actives, Map<LabelItem, String> said) {
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        for (LabelItem item : LabelItem.values()) {
            String usual = item.kind() == LabelItem.Kind.YES_NO ? "no" : "none";
            String text = said.getOrDefault(item, item.isNeeded() ? usual : "");
            figures.put(item, item.parse(text, dry, crop, Said.text(product + " on " + crop)));
        }
        return new LabelEntry(
                        new LabelEntry.Title(product, crop, dry, "INVENTED-" + product, "2026"),
                        LabelEntry.Clock.CROP,
                        actives,
                        figures,
                        LabelEntry.InTank.NOTHING,
                        Map.of(),
                        LabelEntry.Look.first("A. Grower", NOW))
                .checkedBy("B. Helper", NOW);
    }

    public static LabelEntry with(LabelEntry e, LabelItem item, String text) {
        Map<LabelItem, LabelFigure> figures = new HashMap<>(e.figures());
        figures.put(item, item.parse(text, e.dry(), e.crop(), Said.text(e.product())));
        return new LabelEntry(e.title(), e.clock(), e.actives(), figures, e.inTank(), Map.of(), e.look());
    }

    public static LabelEntry with(
            LabelEntry e, LabelEntry.Clock clock, List<ActiveIngredient> actives, Set<String> never) {
        return new LabelEntry(
                e.title(), clock, actives, e.figures(), new LabelEntry.InTank(never, e.after()), Map.of(), e.look());
    }

    public static final LabelEntry F1 = entry(
            "Demo F1",
            "corn",
            false,
            f1(),
            Map.ofEntries(
                    Map.entry(LabelItem.SINGLE, "12 fl oz/ac"),
                    Map.entry(LabelItem.LEAST, "8 fl oz/ac"),
                    Map.entry(LabelItem.SEASON, "32 fl oz/ac"),
                    Map.entry(LabelItem.PASSES, "3"),
                    Map.entry(LabelItem.INTERVAL, "14 days"),
                    Map.entry(LabelItem.HARVEST, "30 d"),
                    Map.entry(LabelItem.REENTRY, "12 h"),
                    Map.entry(LabelItem.FIRST_STAGE, "VT"),
                    Map.entry(LabelItem.LAST_STAGE, "R4"),
                    Map.entry(LabelItem.CARRIER, "10 gal/ac"),
                    Map.entry(LabelItem.FINEST, "M"),
                    Map.entry(LabelItem.WIND_LEAST, "3 mph"),
                    Map.entry(LabelItem.WIND_MOST, "10 mph"),
                    Map.entry(LabelItem.RAINFAST, "2 h"),
                    Map.entry(LabelItem.BOOM, "24 in"),
                    Map.entry(LabelItem.WATER, "50 ft"),
                    Map.entry(LabelItem.INVERSION, "yes")));
    public static final LabelEntry F2 = entry(
            "Demo F2",
            "corn",
            false,
            List.of(active("democonazole", 3.6 * KGL, "FRAC 3", 0.20)),
            Map.of(LabelItem.SINGLE, "4 fl oz/ac", LabelItem.INTERVAL, "14", LabelItem.LAST_STAGE, "R3"));
    public static final LabelEntry I2 = entry(
            "Demo I2",
            "corn",
            true,
            List.of(active("demopyrid", .5, "IRAC 4A", 0.19)),
            Map.of(LabelItem.SINGLE, "2 oz/ac", LabelItem.REENTRY, "24 h"));
    public static final LabelBook BOOK = new LabelBook(List.of(F1, F2, I2));

    public static double flozAc(double v) {
        return v / 128 * Units.LHA_PER_GALAC;
    }

    public static LabelWork.Part f1(double flozAc) {
        return new LabelWork.Part("Demo F1", flozAc(flozAc), false, true, Set.of());
    }

    public static LabelWork.Part f2(double flozAc) {
        return new LabelWork.Part("Demo F2", flozAc(flozAc), false, true, Set.of());
    }

    public static LabelWork work(LabelWork.Part... parts) {
        return work(LocalDate.of(2026, 7, 20), parts);
    }

    public static LabelWork work(LocalDate date, LabelWork.Part... parts) {
        return new LabelWork(
                "job",
                "Mill Eighty",
                date,
                new LabelWork.Ground(32, 32, 40, 40),
                new LabelWork.Standing(
                        "corn", LocalDate.of(2025, 10, 1), 31, 2.4, Optional.of(LocalDate.of(2026, 9, 25))),
                new LabelWork.Carrier(15 * Units.LHA_PER_GALAC, false, false),
                new LabelWork.Driving(Optional.of(DropletClass.M), .5, 4, true),
                List.of(parts));
    }

    public static GroundUse made(String job, LocalDate date, String product, double perHa) {
        return new GroundUse(job, date, product, perHa, 32, true, GroundUse.State.MADE);
    }

    public static GroundUse reserved(String job, LocalDate date, String product, double perHa, double area_ha) {
        return new GroundUse(job, date, product, perHa, area_ha, true, GroundUse.State.RESERVED);
    }
}
