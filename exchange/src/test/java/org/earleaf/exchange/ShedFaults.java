// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in boundaries, products, rigs, recipes and stock. */
final class ShedFaults {
    private static final String SQUARE = """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"field":"Home"},"geometry":{"type":"Polygon","coordinates":
            [[[-90.5,41.5],[-90.4932,41.5],[-90.4932,41.50514],[-90.5,41.50514],[-90.5,41.5]]]}}]}
            """;

    private ShedFaults() {}

    private static Fault outline(String name, String from, String to, String where, String... parts) {
        return Fault.of(
                name, t -> t.with("boundaries.geojson", SQUARE.replace(from, to)), "boundaries.geojson" + where, parts);
    }

    static Stream<Fault> boundaries() {
        return Stream.of(
                outline(
                        "no JSON",
                        "{\"field\":\"Home\"}",
                        "{field:Home}",
                        ", row 2",
                        "geojson.unreadable",
                        "found.no-json"),
                outline("no features", "features", "shapes", "", "geojson.no-features"),
                outline("no field", "\"field\"", "\"name\"", ", feature 1", "boundary.no-field", "found.properties"),
                outline("unknown field", "Home", "Away", ", feature 1", "\"Away\"", "boundary.field-unknown"),
                outline(
                        "crossing itself",
                        "[-90.4932,41.5],[-90.4932,41.50514]",
                        "[-90.4932,41.50514],[-90.4932,41.5]",
                        ", feature 1",
                        "boundary.crosses-itself",
                        "found.crossing"),
                outline("latitude first", "-90.5,41.5]", "41.5,-90.5]", ", feature 1", "boundary.no-degrees"),
                Fault.of(
                        "a point",
                        t -> t.with(
                                "boundaries.geojson",
                                "{\"features\":[{\"properties\":{\"field\":\"Home\"},\"geometry\":"
                                        + "{\"type\":\"Point\",\"coordinates\":[-90.5,41.5]}}]}"),
                        "boundaries.geojson, feature 1",
                        "boundary.no-area"),
                outline("not closed", ",[-90.5,41.5]]]", "]]", ", feature 1", "boundary.unreadable"));
    }

    static Stream<Fault> shed() {
        return Stream.of(
                Fault.of(
                        "shares that do not add up",
                        "products.csv",
                        "0.5,0.3,0.2",
                        "0.5,0.3,",
                        "products.csv, row 2, column urea_share",
                        "product.shares-not-one",
                        "0.8"),
                Fault.of(
                        "unknown form",
                        "products.csv",
                        ",SC,",
                        ",liquid,",
                        "products.csv, row 3, column form",
                        "\"liquid\"",
                        "SC"),
                Fault.of(
                        "a price by the jug",
                        "products.csv",
                        "usd/gal",
                        "usd/jug",
                        "products.csv, row 3, column price_unit",
                        "\"usd/jug\"",
                        "usd/gal"),
                Fault.of(
                                "a product twice",
                                "products.csv",
                                "Leaf Guard",
                                "Starter 10",
                                "products.csv, row 3, column product",
                                "row.twice")
                        .problems(3),
                Fault.of(
                        "kilograms a litre in pounds a gallon",
                        "products.csv",
                        "SL,11,",
                        "SL,1.32,",
                        "products.csv, row 2, column density_lb_gal",
                        "1.32"),
                Fault.of(
                        "unknown kind of rig",
                        "rigs.csv",
                        "self-propelled",
                        "sprayer",
                        "rigs.csv, row 2, column kind",
                        "\"sprayer\"",
                        "self-propelled, pulled"),
                Fault.of(
                        "unknown placement of a rig",
                        "rigs.csv",
                        "over the top",
                        "on top",
                        "rigs.csv, row 2, column placements",
                        "\"on top\"",
                        "placement.unknown"),
                Fault.of(
                        "fastest below slowest",
                        "rigs.csv",
                        ",5,12,",
                        ",5,4,",
                        "rigs.csv, row 2, column speed_max_mph",
                        "range.turned"),
                Fault.of(
                        "half an outlet",
                        "rigs.csv",
                        ",60,2,",
                        ",60,1.5,",
                        "rigs.csv, row 2, column outlets_per_row",
                        "number.not-whole"),
                Fault.of(
                        "a sprayer without clearance",
                        "rigs.csv",
                        "self-propelled,72",
                        "self-propelled,",
                        "rigs.csv, row 2, column clearance_in",
                        "cell.empty"),
                Fault.of("a rig twice", "rigs.csv", "Trailer", "High", "rigs.csv, row 3, column rig", "row.twice"),
                Fault.of(
                        "unknown product in a recipe",
                        "recipes.csv",
                        "Leaf Guard",
                        "Leaf Gard",
                        "recipes.csv, row 2, column product",
                        "\"Leaf Gard\""),
                Fault.of(
                        "two carriers in a recipe",
                        t -> t.with("recipes.csv", t.text("recipes.csv") + "Tassel,UAN 32,1,% v/v,20\n"),
                        "recipes.csv, row 3, column carrier_gal_ac",
                        "recipe.two-carriers"),
                Fault.of(
                        "stock by the jug",
                        "stock.csv",
                        "gal",
                        "jug",
                        "stock.csv, row 2, column unit",
                        "\"jug\"",
                        "gal, qt"),
                Fault.of("negative stock", "stock.csv", "12", "-12", "stock.csv, row 2, column amount", "-12"));
    }
}
