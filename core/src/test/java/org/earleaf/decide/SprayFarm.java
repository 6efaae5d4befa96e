// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.ProductLabel;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Placement;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Units;
import org.earleaf.weather.LabelLimit;
import org.earleaf.weather.SprayLabel;

/** The invented farm with sprays on its shelf. */
public final class SprayFarm {
    static final ProductLabel READ = label(ProductKind.FUNGICIDE, "11", LabelLimit.of(30), LabelLimit.of(34), 30);

    private ProductLabel fungicide = READ;
    private double clearance_in = 160;
    private final List<Reading> readings = new ArrayList<>();

    static ProductLabel label(ProductKind kind, String group, LabelLimit first, LabelLimit last, double phi_d) {
        SprayLabel weather = new SprayLabel(
                LabelLimit.noneStated(),
                LabelLimit.of(4.4),
                LabelLimit.noneStated(),
                LabelLimit.of(2),
                Optional.of(false));
        return new ProductLabel(
                kind,
                List.of(group.split("\\+")),
                weather,
                LabelLimit.of(3),
                LabelLimit.of(phi_d),
                first,
                last,
                Optional.empty());
    }

    SprayFarm label(ProductLabel entered) {
        fungicide = entered;
        return this;
    }

    SprayFarm clearance(double inches) {
        clearance_in = inches;
        return this;
    }

    public SprayFarm lesions(LocalDate date, int of100) {
        readings.add(new Reading(
                "l",
                "Home",
                "",
                date,
                Reading.Kind.LESIONS,
                of100 / 100.0,
                "",
                Double.NaN,
                Double.NaN,
                Reading.Position.RANDOM,
                "northern leaf blight, " + of100 + " of 100 plants, ear leaf -1"));
        return this;
    }

    private static Product product(String name, String form, double usdGal, ProductLabel label) {
        return new Product(name, form, 1.1, usdGal, "usd/gal", null, "", "", label);
    }

    public Farm farm() {
        Farm f = new TestFarm().farm();
        DiseaseFacts disease = new DiseaseFacts(5, Map.of(Disease.NORTHERN_LEAF_BLIGHT, 3.0), Set.of(), true);
        Zone susceptible = RecordCopy.with(f.zones().get(0), "disease", disease);
        Rig high = new Rig(
                "high",
                "self-propelled",
                clearance_in * .0254,
                27,
                4,
                2,
                5,
                1e5,
                4e5,
                2,
                Set.of(Placement.OVER_THE_TOP, Placement.BOTH),
                7 / Units.HA_PER_AC,
                0,
                0,
                .65);
        ProductLabel insecticide =
                label(ProductKind.INSECTICIDE, "3A", LabelLimit.noneStated(), LabelLimit.noneStated(), 21);
        List<Product> products = List.of(
                product("F1", "SC", 120, fungicide),
                product("I1", "EC", 88, insecticide),
                product("Spreader", "NIS", 26, helper()),
                product("H1", "SL", 20, label(ProductKind.HERBICIDE, "9", LabelLimit.of(2), LabelLimit.of(8), 7)));
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
                f.prices(),
                List.of(susceptible),
                f.passes(),
                readings,
                f.irrigation(),
                f.manure(),
                f.nitrogen(),
                products,
                List.of(high),
                recipes,
                f.stock(),
                f.boundaries(),
                f.weather(),
                f.flags());
    }

    private static ProductLabel helper() {
        ProductLabel none = ProductLabel.NOT_ENTERED;
        return new ProductLabel(
                ProductKind.HELPER,
                List.of(),
                none.weather(),
                none.droplet_class(),
                none.preHarvest_d(),
                none.firstStage(),
                none.lastStage(),
                none.byAir());
    }
}
