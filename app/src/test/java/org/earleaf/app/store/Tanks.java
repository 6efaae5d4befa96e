// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.app.RecordCopy;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Stock;
import org.earleaf.field.FieldPart;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.DropletClass;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.load.BeforeMixing;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.MixStart;
import org.earleaf.load.TankLoad;
import org.earleaf.mix.Amount;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** Loads of one invented product on the small farm; 1 fl oz/ac on 32 ha is 79.07 fl oz. */
public final class Tanks {
    public static final Instant T = Instant.parse("2026-06-08T12:00:00Z");
    public static final LocalDate DAY = LocalDate.of(2026, 6, 8);
    public static final double HA = 32;

    /** All that is looked at before mixing, on a calibration that holds. */
    public static final MixStart LOOKED = new MixStart(Set.of(BeforeMixing.values()), Optional.empty(), "");

    private Tanks() {}

    /** At most 12 fl oz/ac in a pass, 20 in a season, 3 passes. */
    public static LabelEntry label() {
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        Map<LabelItem, String> said = Map.of(
                LabelItem.SINGLE,
                "12 fl oz/ac",
                LabelItem.SEASON,
                "20 fl oz/ac",
                LabelItem.PASSES,
                "3",
                LabelItem.REENTRY,
                "12 h",
                LabelItem.WIND_MOST,
                "10 mph");
        for (LabelItem item : LabelItem.values()) {
            String usual = item.kind() == LabelItem.Kind.YES_NO ? "no" : "none";
            figures.put(
                    item,
                    item.parse(
                            said.getOrDefault(item, item.isNeeded() ? usual : ""), false, "corn", Said.text("Demo P")));
        }
        ActiveIngredient active = new ActiveIngredient(
                "demostrobin", .2, 1, List.of("FRAC 11"), LabelLimit.noneStated(), LabelLimit.of(Units.kgHa(.3)));
        return new LabelEntry(
                        new LabelEntry.Title("Demo P", "corn", false, "INVENTED-7", "1"),
                        LabelEntry.Clock.CALENDAR_YEAR,
                        List.of(active),
                        figures,
                        LabelEntry.InTank.NOTHING,
                        Map.of(),
                        LabelEntry.Look.first("A. Grower", T))
                .checkedBy("B. Helper", T);
    }

    public static Farm farm() {
        return RecordCopy.with(Farms.small(), "shelf.stock", List.of(lot("A", 8), lot("B", 6)));
    }

    static Stock lot(String lot, double gal) {
        return new Stock("Demo P", gal, "gal", gal * Units.L_PER_GAL, Double.NaN, lot, "shed");
    }

    public static TankLoad load(String id, String job, String rig, double flozAc, double share, double gal) {
        double perHa = flozAc / 128 * Units.LHA_PER_GALAC;
        double area_ha = HA * share;
        LoadLine line = new LoadLine(
                1,
                new LoadLine.Goods("Demo P", false, true, Set.of("INVENTED-7"), Set.of("SC", "fungicide")),
                perHa,
                Amount.volume(perHa * area_ha / 1000, "fl oz"),
                Double.NaN,
                List.of());
        LoadGround ground = new LoadGround(
                new FieldPart("Home Eighty", ""),
                new LabelWork.Ground(HA, area_ha, 60, 60),
                new LabelWork.Standing(
                        "corn", LocalDate.of(2025, 10, 1), 12, 1.2, Optional.of(LocalDate.of(2026, 9, 20))),
                DAY);
        return new TankLoad(
                TankLoad.Ticket.of(id, job, rig, DAY),
                new TankLoad.Fill(gal * Units.M3_PER_GAL, 0, 15 * Units.M3M2_PER_GALAC, false),
                new LabelWork.Driving(Optional.of(DropletClass.M), .5, 4, true),
                List.of(ground),
                List.of(line),
                LoadState.PLANNED,
                "",
                List.of(),
                new ArrayList<>());
    }

    static LoadLine.Key key(TankLoad load, String person) {
        LoadLine line = load.lines().get(0);
        return new LoadLine.Key("INVENTED-7", line.planned().inside(), person, T, "");
    }
}
