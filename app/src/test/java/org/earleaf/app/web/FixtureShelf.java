// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.app.RecordCopy;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Stock;
import org.earleaf.field.Placement;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** Two sprayers, invented products with invented limits, and a recipe, on the farm of {@link Fixture}. */
final class FixtureShelf {
    static final Instant MORNING = Instant.parse("2026-06-30T12:00:00Z");
    static final String RECIPE = "Leaf pass";

    private FixtureShelf() {}

    static Farm stocked(Farm farm) {
        List<Rig> rigs = new ArrayList<>(farm.rigs());
        rigs.add(sprayer("tall sprayer", 1.9));
        rigs.add(sprayer("pull sprayer", .9));
        Farm shelf = RecordCopy.with(farm, "shelf.rigs", rigs);
        shelf = RecordCopy.with(
                shelf,
                "shelf.products",
                List.of(
                        product("Demo F1", "SC", 1.09, 245, "INVENTED-1", "Invented limits: goggles and gloves"),
                        product("Demo I1", "EC", .947, 88, "INVENTED-2", "Invented limits: dangerous to bees and fish"),
                        product("Demo Spreader", "NIS", 1.006, 26, "", "")));
        shelf = RecordCopy.with(
                shelf,
                "shelf.recipes",
                List.of(new Recipe(
                        RECIPE,
                        15 * Units.LHA_PER_GALAC,
                        List.of(
                                new Recipe.Line("Demo F1", 10, "fl oz/ac"),
                                new Recipe.Line("Demo I1", 2.8, "fl oz/ac"),
                                new Recipe.Line("Demo Spreader", .25, "% v/v")))));
        return RecordCopy.with(
                shelf,
                "shelf.stock",
                List.of(
                        stock("UAN 32", 12_000, ""),
                        stock("Demo F1", 14, "F1-0426"),
                        stock("Demo F1", 20, "F1-0512"),
                        stock("Demo I1", 12, "I1-1125"),
                        stock("Demo Spreader", 30, "SP-26")));
    }

    private static Rig sprayer(String name, double clearance_m) {
        return new Rig(
                RigId.called(name),
                "self-propelled",
                new Rig.Clearance(clearance_m, Double.NaN),
                new Rig.Boom(27.4, 2, 1e5, 4e5),
                new Rig.Tank(3.8, .03, .02),
                new Rig.Pace(2, 6, .65),
                Set.of(Placement.OVER_THE_TOP, Placement.BROADCAST),
                20);
    }

    private static Product product(
            String name, String form, double kgL, double usdGal, String registration, String caution) {
        return new Product(name, form, kgL, usdGal, "usd/gal", null, registration, caution);
    }

    private static Stock stock(String product, double gal, String lot) {
        return new Stock(product, gal, "gal", gal * Units.L_PER_GAL, Double.NaN, lot, "shed");
    }

    /** Looked at by two people. */
    static List<LabelEntry> labels() {
        Map<LabelItem, String> f1 = Map.of(
                LabelItem.SINGLE, "12 fl oz/ac",
                LabelItem.SEASON, "24 fl oz/ac",
                LabelItem.PASSES, "2",
                LabelItem.REENTRY, "12 h",
                LabelItem.WIND_MOST, "10 mph",
                LabelItem.CARRIER, "10 gal/ac",
                LabelItem.FINEST, "M",
                LabelItem.WATER, "50 ft");
        Map<LabelItem, String> i1 = Map.of(
                LabelItem.SINGLE, "3.2 fl oz/ac",
                LabelItem.PASSES, "2",
                LabelItem.REENTRY, "24 h",
                LabelItem.WIND_MOST, "15 mph",
                LabelItem.WATER, "100 ft",
                LabelItem.RESTRICTED, "yes");
        return List.of(
                label("Demo F1", "INVENTED-1", f1, "demostrobin", "FRAC 11"),
                label("Demo I1", "INVENTED-2", i1, "demothrin", "IRAC 3A"));
    }

    private static LabelEntry label(
            String product, String registration, Map<LabelItem, String> said, String active, String group) {
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        for (LabelItem item : LabelItem.values()) {
            String usual = item.kind() == LabelItem.Kind.YES_NO ? "no" : "none";
            figures.put(
                    item,
                    item.parse(
                            said.getOrDefault(item, item.isNeeded() ? usual : ""), false, "corn", Said.text(product)));
        }
        return new LabelEntry(
                        new LabelEntry.Title(product, "corn", false, registration, "1"),
                        LabelEntry.Clock.CALENDAR_YEAR,
                        List.of(new ActiveIngredient(
                                active, .14, 1, List.of(group), LabelLimit.noneStated(), LabelLimit.noneStated())),
                        figures,
                        LabelEntry.InTank.NOTHING,
                        Map.of(),
                        LabelEntry.Look.first("A. Grower", MORNING))
                .checkedBy("B. Helper", MORNING);
    }
}
