// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.earleaf.app.store.Names.Kind.PRODUCT;
import static org.earleaf.app.store.Names.Kind.RIG;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductId;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Stock;
import org.earleaf.field.Placement;
import org.earleaf.units.Called;
import org.jspecify.annotations.Nullable;

/** Prices, products, rigs, recipes and stock. */
final class ShelfTables {
    static final Table<Price> PRICES = Table.named(
                    "price", (Price p) -> "price of " + p.product(), p -> Names.product(p.product()))
            .called("product", PRODUCT, Price::product)
            .number("nitrogen_usd_kg", "nitrogen", Price::nitrogen_usdKg, Shown.NITROGEN_PRICE)
            .read(r -> new Price(r.called(PRODUCT, "product"), r.number("nitrogen_usd_kg")));

    static final Table<NitrogenProduct> NITROGEN = Table.named(
                    "nitrogen_product",
                    (NitrogenProduct n) -> "nitrogen product " + n.name(),
                    n -> Names.product(n.name()))
            .called("name", PRODUCT, NitrogenProduct::name)
            .number("nitrogen", "nitrogen", NitrogenProduct::nitrogen_share, Shown.SHARE)
            .number("density_kg_l", "density", NitrogenProduct::density_kgL, Shown.DENSITY)
            .number("urea_share", "urea", NitrogenProduct::ureaShare, Shown.SHARE)
            .number("ammonium_share", "ammonium", NitrogenProduct::ammoniumShare, Shown.SHARE)
            .number("nitrate_share", "nitrate", NitrogenProduct::nitrateShare, Shown.SHARE)
            .text("source", "source", NitrogenProduct::source)
            .read(r -> nitrogen(r, ""));

    static final Table<Product> PRODUCTS = Table.named(
                    "product", (Product p) -> "product " + p.name(), p -> Names.product(p.name()))
            .called("name", PRODUCT, Product::name)
            .text("form", "form", Product::form)
            .number("density_kg_l", "density", Product::density_kgL, Shown.DENSITY)
            .number("price", "price", Product::price, Shown.PLAIN)
            .text("price_unit", "unit of the price", Product::priceUnit)
            .text("registration", "registration", Product::registration)
            .text("caution", "caution", Product::caution)
            .called(
                    "n_name",
                    PRODUCT,
                    p -> p.nitrogen() == null ? null : p.nitrogen().name())
            .number("n_nitrogen", "nitrogen", of(NitrogenProduct::nitrogen_share), Shown.SHARE)
            .number("n_density_kg_l", "", of(NitrogenProduct::density_kgL), Shown.DENSITY)
            .number("n_urea_share", "urea", of(NitrogenProduct::ureaShare), Shown.SHARE)
            .number("n_ammonium_share", "ammonium", of(NitrogenProduct::ammoniumShare), Shown.SHARE)
            .number("n_nitrate_share", "nitrate", of(NitrogenProduct::nitrateShare), Shown.SHARE)
            .key("n_source", p -> p.nitrogen() == null ? null : p.nitrogen().source())
            .text("kind", "kind", Product::kind)
            .read(ShelfTables::product);

    static final Table<Rig> RIGS = Table.named("rig", (Rig r) -> "rig " + r.name(), r -> Names.rig(r.name()))
            .called("name", RIG, Rig::name)
            .text("kind", "kind", Rig::kind)
            .number("clearance_m", "clearance", Rig::clearance_m, Shown.SPACING)
            .number("width_m", "width", Rig::width_m, Shown.WIDTH)
            .number("tank_m3", "tank", Rig::tank_m3, Shown.TANK)
            .number("speed_min_m_s", "slowest speed", r -> r.pace().slowest_ms(), Shown.GROUND_SPEED)
            .number("speed_max_m_s", "fastest speed", r -> r.pace().fastest_ms(), Shown.GROUND_SPEED)
            .number("pressure_min_pa", "lowest pressure", r -> r.boom().lowest_Pa(), Shown.PRESSURE)
            .number("pressure_max_pa", "highest pressure", r -> r.boom().highest_Pa(), Shown.PRESSURE)
            .text("outlets_per_row", "outlets a row", r -> r.boom().outletsPerRow())
            .text("placements", "placements", r -> words(r.placements()))
            .number("cost_usd_ha", "cost of a pass", Rig::cost_usdHa, Shown.PASS_COST)
            .number("heel_m3", "heel", r -> r.tank().heel_m3(), Shown.TANK)
            .number("prime_m3", "prime", r -> r.tank().prime_m3(), Shown.TANK)
            .number("field_efficiency", "field efficiency", r -> r.pace().fieldEfficiency(), Shown.SHARE)
            .number(
                    "spray_clearance_m",
                    "clearance for spraying",
                    r -> r.clearance().spray_m(),
                    Shown.SPACING)
            .read(ShelfTables::rig);

    static final Table<RecipeHead> RECIPES = Table.named(
                    "recipe", (RecipeHead h) -> "recipe " + h.name(), RecipeHead::name)
            .key("name", RecipeHead::name)
            .number("carrier_l_ha", "carrier", RecipeHead::carrier_LHa, Shown.CARRIER)
            .read(r -> new RecipeHead(r.text("name"), r.number("carrier_l_ha")));

    static final Table<RecipeLine> LINES = Table.named(
                    "recipe_line",
                    (RecipeLine l) -> "recipe " + l.recipe() + ", line " + (l.line() + 1),
                    l -> List.of(l.recipe(), l.line()))
            .key("recipe", RecipeLine::recipe)
            .key("line", RecipeLine::line)
            .called("product", "product", PRODUCT, l -> l.what().product())
            .number("rate", "rate", l -> l.what().rate(), Shown.PLAIN)
            .text("rate_unit", "unit of the rate", l -> l.what().rateUnit())
            .read(r -> new RecipeLine(
                    r.text("recipe"),
                    r.whole("line"),
                    new Recipe.Line(r.called(PRODUCT, "product"), r.number("rate"), r.text("rate_unit"))));

    static final Table<Stock> STOCK = Table.named(
                    "stock",
                    (Stock s) -> "stock of " + s.product(),
                    s -> List.of(Names.product(s.product()), s.lot(), s.place()))
            .called("product", PRODUCT, Stock::product)
            .number("amount", "amount", Stock::amount, Shown.PLAIN)
            .text("unit", "unit", Stock::unit)
            .number("amount_l", "", Stock::amount_L, Shown.PLAIN)
            .number("amount_kg", "", Stock::amount_kg, Shown.PLAIN)
            .key("lot", Stock::lot)
            .key("place", Stock::place)
            .read(r -> new Stock(
                    r.called(PRODUCT, "product"),
                    r.number("amount"),
                    r.text("unit"),
                    r.number("amount_l"),
                    r.number("amount_kg"),
                    r.text("lot"),
                    r.text("place")));

    private ShelfTables() {}

    /** What a kilogram of nitrogen in a product costs. */
    record Price(String product, double nitrogen_usdKg) {
        static List<Price> of(Map<String, Double> prices) {
            return new TreeMap<>(prices)
                    .entrySet().stream()
                            .map(e -> new Price(e.getKey(), e.getValue()))
                            .toList();
        }
    }

    /** A recipe without its lines. */
    record RecipeHead(String name, double carrier_LHa) {}

    /** One line of a recipe, counted from 0. */
    record RecipeLine(String recipe, int line, Recipe.Line what) {
        static List<RecipeLine> of(Recipe recipe) {
            List<RecipeLine> lines = new ArrayList<>();
            for (int k = 0; k < recipe.lines().size(); k++) {
                lines.add(new RecipeLine(recipe.name(), k, recipe.lines().get(k)));
            }
            return lines;
        }
    }

    static List<Recipe> recipes(List<RecipeHead> heads, List<RecipeLine> lines) {
        return heads.stream()
                .map(h -> new Recipe(
                        h.name(),
                        h.carrier_LHa(),
                        lines.stream()
                                .filter(l -> l.recipe().equals(h.name()))
                                .sorted(Comparator.comparingInt(RecipeLine::line))
                                .map(RecipeLine::what)
                                .toList()))
                .toList();
    }

    private static ToDoubleFunction<Product> of(ToDoubleFunction<NitrogenProduct> part) {
        return p -> p.nitrogen() == null ? Double.NaN : part.applyAsDouble(p.nitrogen());
    }

    private static NitrogenProduct nitrogen(Row r, String prefix) {
        return new NitrogenProduct(
                r.called(PRODUCT, prefix + "name"),
                r.number(prefix + "nitrogen"),
                r.number(prefix + "density_kg_l"),
                r.number(prefix + "urea_share"),
                r.number(prefix + "ammonium_share"),
                r.number(prefix + "nitrate_share"),
                r.text(prefix + "source"));
    }

    private static Product product(Row r) {
        @Nullable NitrogenProduct n = r.findText("n_name").isPresent() ? nitrogen(r, "n_") : null;
        return new Product(
                new Called<>(new ProductId(r.text("name")), r.called(PRODUCT, "name")),
                r.text("form"),
                r.number("density_kg_l"),
                r.number("price"),
                r.text("price_unit"),
                n,
                r.text("registration"),
                r.text("caution"),
                r.word(ProductKind.class, "kind"));
    }

    private static String words(Set<Placement> placements) {
        return placements.stream().sorted().map(Placement::word).collect(Collectors.joining(", "));
    }

    private static Set<Placement> placements(String words) {
        return Arrays.stream(words.split(", "))
                .filter(w -> !w.isEmpty())
                .map(w -> Placement.findByWord(w).orElseThrow())
                .collect(Collectors.toSet());
    }

    private static Rig rig(Row r) {
        return new Rig(
                new Called<>(new RigId(r.text("name")), r.called(RIG, "name")),
                r.text("kind"),
                new Rig.Clearance(r.number("clearance_m"), r.number("spray_clearance_m")),
                new Rig.Boom(
                        r.number("width_m"),
                        r.whole("outlets_per_row"),
                        r.number("pressure_min_pa"),
                        r.number("pressure_max_pa")),
                new Rig.Tank(r.number("tank_m3"), r.number("heel_m3"), r.number("prime_m3")),
                new Rig.Pace(r.number("speed_min_m_s"), r.number("speed_max_m_s"), r.number("field_efficiency")),
                placements(r.text("placements")),
                r.number("cost_usd_ha"));
    }
}
