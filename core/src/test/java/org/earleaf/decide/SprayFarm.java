// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Incidence;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Zone;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Units;

/** The invented farm with sprays on its shelf. */
public final class SprayFarm {
    private LabelEntry fungicide = label("F1", "FRAC 11", LabelLimit.of(30), LabelLimit.of(34), LabelLimit.of(30));
    private double clearance_in = 160;
    private final List<Reading> readings = new ArrayList<>();

    /** Looked at twice. */
    public static LabelEntry label(
            String product, String group, LabelLimit first, LabelLimit last, LabelLimit harvest_d) {
        Map<LabelItem, LabelLimit> said = Map.of(
                LabelItem.WIND_LEAST, LabelLimit.noneStated(),
                LabelItem.WIND_MOST, LabelLimit.of(4.4),
                LabelItem.AIR_MOST, LabelLimit.noneStated(),
                LabelItem.RAINFAST, LabelLimit.of(2),
                LabelItem.INVERSION, LabelLimit.of(0),
                LabelItem.FINEST, LabelLimit.of(3),
                LabelItem.HARVEST, harvest_d,
                LabelItem.FIRST_STAGE, first,
                LabelItem.LAST_STAGE, last);
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        said.forEach((item, limit) -> figures.put(item, new LabelFigure(limit, "as on the label")));
        ActiveIngredient active = new ActiveIngredient(
                "works in " + product, .1, 1, List.of(group), LabelLimit.noneStated(), LabelLimit.noneStated());
        return new LabelEntry(
                new LabelEntry.Title(product, "corn", false, "", ""),
                LabelEntry.Clock.CROP,
                List.of(active),
                figures,
                LabelEntry.InTank.NOTHING,
                Map.of(),
                new LabelEntry.Look("A", Instant.EPOCH, "B", Instant.EPOCH));
    }

    SprayFarm label(LabelEntry entered) {
        fungicide = entered;
        return this;
    }

    SprayFarm clearance(double inches) {
        clearance_in = inches;
        return this;
    }

    public SprayFarm lesions(LocalDate date, int of100) {
        return lesions(Disease.NORTHERN_LEAF_BLIGHT, date, of100);
    }

    SprayFarm lesions(Disease disease, LocalDate date, int of100) {
        readings.add(new Reading(
                        "l",
                        new FieldPart("Home", ""),
                        date,
                        Reading.Kind.LESIONS,
                        of100 / 100.0,
                        "",
                        Reading.Sampled.NO_SOIL,
                        "",
                        Scouted.NOTHING)
                .with(new Scouted(
                        Optional.of(disease),
                        "",
                        OptionalInt.of(-1),
                        Optional.of(new Incidence(of100, 100)),
                        Scouted.By.PER_PLANT,
                        Scouted.Enemies.NONE,
                        false)));
        return this;
    }

    private static Product product(String name, String form, double usdGal, ProductKind kind) {
        return new Product(name, form, 1.1, usdGal, "usd/gal", null, "", "", kind);
    }

    public Farm farm() {
        Farm f = new TestFarm().farm();
        DiseaseFacts facts = new DiseaseFacts(5, Map.of(Disease.NORTHERN_LEAF_BLIGHT, 3.0), Set.of(), true);
        Zone susceptible = RecordCopy.with(f.zones().get(0), "disease", facts);
        Rig high = new Rig(
                RigId.called("high"),
                "self-propelled",
                new Rig.Clearance(clearance_in * .0254, Double.NaN),
                new Rig.Boom(27, 2, 1e5, 4e5),
                new Rig.Tank(4, 0, 0),
                new Rig.Pace(2, 5, .65),
                Set.of(Placement.OVER_THE_TOP, Placement.BOTH),
                7 / Units.HA_PER_AC);
        List<Product> products = List.of(
                product("F1", "SC", 120, ProductKind.FUNGICIDE),
                product("I1", "EC", 88, ProductKind.INSECTICIDE),
                product("Spreader", "NIS", 26, ProductKind.HELPER),
                product("H1", "SL", 20, ProductKind.HERBICIDE));
        LabelLimit none = LabelLimit.noneStated();
        LabelBook labels = new LabelBook(List.of(
                fungicide,
                label("I1", "IRAC 3A", none, none, LabelLimit.of(21)),
                label("H1", "HRAC 9", LabelLimit.of(2), LabelLimit.of(8), LabelLimit.of(7))));
        List<Recipe> recipes = List.of(
                new Recipe(
                        "Tassel",
                        140,
                        List.of(
                                new Recipe.Line("F1", 10, "fl oz/ac"),
                                new Recipe.Line("I1", 3, "fl oz/ac"),
                                new Recipe.Line("Spreader", .25, "% v/v"))),
                new Recipe("Weeds", 112, List.of(new Recipe.Line("H1", 30, "fl oz/ac"))));
        return new Farm(
                f.name(),
                f.site(),
                f.timeZone(),
                new Farm.Ground(List.of(susceptible), f.ground().boundaries()),
                new Farm.Work(
                        f.passes(), readings, f.work().irrigation(), f.work().manure()),
                new Farm.Shelf(
                        f.shelf().nitrogen(),
                        products,
                        List.of(high),
                        recipes,
                        f.shelf().stock()),
                f.weather(),
                new Farm.Rules(f.prices(), f.settings(), labels),
                f.flags());
    }
}
