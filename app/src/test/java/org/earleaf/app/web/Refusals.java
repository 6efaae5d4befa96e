// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.web.Refusal.COMMAND;
import static org.earleaf.app.web.Refusal.FILE;
import static org.earleaf.app.web.Refusal.PAGE;
import static org.earleaf.app.web.Refusal.boom;
import static org.earleaf.app.web.Refusal.cell;
import static org.earleaf.app.web.Refusal.key;
import static org.earleaf.app.web.Refusal.load;
import static org.earleaf.app.web.Refusal.pass;
import static org.earleaf.app.web.Refusal.reading;
import static org.earleaf.app.web.Refusal.recipe;
import static org.earleaf.app.web.Refusal.record;
import static org.earleaf.app.web.Refusal.rig;

import java.util.stream.Stream;

/** What nobody may enter, by kind; {@code without} names the doors that have no such part, and says why in a remark. */
final class Refusals {
    private static final String RANGE = "number.out-of-range ";

    private Refusals() {}

    static Stream<Refusal> all() {
        return Stream.of(
                        numbers(),
                        soilTests(),
                        crops(),
                        plants(),
                        PastRefusals.all(),
                        passes(),
                        records(),
                        loads(),
                        rigs(),
                        recipes(),
                        files())
                .flatMap(s -> s);
    }

    private static Stream<Refusal> numbers() {
        return Stream.of(
                reading("number.unreadable", "value", "low"),
                reading("number.unreadable", "value", "NaN"),
                reading("number.unreadable", "value", "Infinity"),
                reading("reading.unit-unknown", "value", "0x10"),
                reading("number.unreadable", "value", "1.2.3"),
                reading("number.comma-unclear", "value", "1,234"),
                reading("number.comma-unclear", "kind", "stand", "value", "32,000", "unit", "plants/ac"),
                reading("number.too-large", "value", "1e99999999"),
                reading("number.too-large", "value", "1e999999999"),
                reading("number.too-long", "value", "9".repeat(45)),
                reading("reading.value-missing", "value", "", "unit", ""),
                reading("reading.impossible", "value", "-1"),
                reading("reading.impossible", "value", "501"),
                reading("reading.impossible", "value", "1e9"));
    }

    private static Stream<Refusal> soilTests() {
        return Stream.of(
                reading("entry.look-again reading.beyond-the-model", "value", "90")
                        .without(FILE),
                reading("reading.unit-unknown", "unit", ""),
                reading("reading.unit-unknown", "unit", "gal/ac"),
                // The page always has a depth.
                reading("reading.depth-missing", "value", "60", "unit", "lb N/ac")
                        .without(PAGE),
                reading(RANGE + "reading.bottom", "top", "0 in", "bottom", "400 in"),
                reading(RANGE + "reading.bottom", "top", "0 in", "bottom", "1e9 in"),
                // The page chooses among depths, and parts them by a dash.
                reading(RANGE + "reading.top", "top", "-1 in", "bottom", "12 in")
                        .without(PAGE),
                reading("reading.depths-turned", "top", "12 in", "bottom", "6 in"),
                reading("reading.depths-turned", "top", "12 in", "bottom", "12 in"),
                reading("quantity.unreadable", "top", "NaN in", "bottom", "NaN in"),
                reading("reading.one-depth", "top", "0 in").without(PAGE),
                reading("reading.position-unknown", "top", "0 in", "bottom", "12 in", "position", "headland"),
                reading("reading.kind-unknown", "kind", "potash"),
                // The page has no field that is not there.
                reading("field.unknown", "field", "Away").without(PAGE),
                reading("zone.none-here", "zone", "north").without(PAGE),
                reading("date.out-of-range", "date", "0001-01-01"),
                reading("date.out-of-range", "date", "1989-12-31"),
                reading("date.out-of-range", "date", "2100-01-01"),
                // A file is read without a clock.
                reading("date.in-future", "date", "2026-07-15").without(FILE),
                // The option of the day is read before any rule.
                reading("date.unreadable", "date", "06/10/2026").without(COMMAND),
                reading("date.unreadable", "date", "2026-02-30").without(COMMAND),
                reading("note.too-long", "note", "n".repeat(501)),
                reading("reading.impossible", "kind", "moisture", "value", "130", "unit", "%"),
                reading("reading.impossible", "kind", "moisture", "value", "1.3", "unit", "share"),
                reading("reading.impossible", "kind", "ammonium", "value", "900", "unit", "ppm"));
    }

    private static Stream<Refusal> crops() {
        return Stream.of(
                reading("reading.stage-unknown", "kind", "stage", "value", "V25", "unit", ""),
                reading("reading.stage-unknown", "kind", "stage", "value", "R7", "unit", ""),
                reading("reading.stage-unknown", "kind", "stage", "value", "knee high", "unit", ""),
                // The page sends no unit with a stage.
                reading("reading.unit-unknown", "kind", "stage", "value", "V9", "unit", "ppm")
                        .without(PAGE),
                reading("reading.impossible", "kind", "height", "value", "9000", "unit", "cm"),
                reading("reading.impossible", "kind", "height", "value", "-4", "unit", "in"),
                reading("reading.unit-unknown", "kind", "height", "value", "18", "unit", "hands"),
                reading("reading.unit-unknown", "kind", "height", "value", "18", "unit", ""),
                reading("reading.impossible", "kind", "stand", "value", "32000", "unit", "plants/m2"),
                reading("reading.unit-unknown", "kind", "stand", "value", "32", "unit", "thousand"),
                reading("reading.impossible", "kind", "rain", "value", "20", "unit", "in"),
                reading("reading.impossible", "kind", "rain", "value", "-1", "unit", "in"),
                reading("number.unreadable", "kind", "rain", "value", "trace", "unit", "in"),
                reading("reading.impossible", "kind", "cover", "value", "150", "unit", "%"));
    }

    private static Refusal lesions(String code, String... pairs) {
        return reading(code, joined(pairs, "kind", "lesions", "value", "", "unit", ""));
    }

    private static Refusal aphids(String code, String... pairs) {
        return reading(code, joined(pairs, "kind", "insects", "value", "60", "unit", "per plant"));
    }

    private static String[] joined(String[] pairs, String... usual) {
        return Stream.concat(Stream.of(usual), Stream.of(pairs)).toArray(String[]::new);
    }

    private static Stream<Refusal> plants() {
        return Stream.of(
                lesions("count.more-than-looked-at", "positive", "120", "plants", "100"),
                lesions("count.not-whole", "positive", "5.5", "plants", "10"),
                lesions("count.not-whole", "positive", "58", "plants", ""),
                lesions("count.not-whole", "positive", "", "plants", "100"),
                lesions("count.not-whole", "positive", "1e9", "plants", "100"),
                lesions("count.no-plants", "positive", "0", "plants", "0"),
                lesions("disease.unknown", "found", "mildew", "positive", "12", "plants", "50"),
                lesions("leaf.unknown", "positive", "12", "plants", "50", "leaf", "low"),
                lesions("leaf.unknown", "positive", "12", "plants", "50", "leaf", "-20"),
                // The page shows enemies with insects alone, and the leaf with lesions alone.
                lesions("count.not-of-this-kind", "positive", "12", "plants", "50", "lady_beetles", "1")
                        .without(PAGE),
                reading("reading.impossible", "kind", "lesions", "value", "140", "unit", "% of leaf"),
                reading("reading.impossible", "kind", "lesions", "value", "101", "unit", "% of plants"),
                reading("reading.unit-unknown", "kind", "lesions", "value", "3", "unit", "%"),
                reading("reading.impossible", "kind", "insects", "value", "1e9", "unit", "per plant"),
                reading(
                        "reading.value-missing",
                        "kind",
                        "insects",
                        "value",
                        "",
                        "unit",
                        "",
                        "positive",
                        "4",
                        "plants",
                        "9"),
                aphids("count.not-of-this-kind", "leaf", "-3").without(PAGE),
                aphids("number.comma-unclear", "lady_beetles", "1,234"),
                aphids("number.unreadable", "mummies", "many"),
                aphids(RANGE + "reading.enemies", "lacewings", "-1"),
                aphids(RANGE + "reading.enemies", "lady_beetles", "1e9"),
                aphids("insect.not-named", "found", "", "above_threshold", "yes"),
                // A command has the word or has it not.
                aphids("word.not-yes-or-no", "found", "beetles", "above_threshold", "perhaps")
                        .without(COMMAND),
                aphids("insect.name-too-long", "found", "b".repeat(61)),
                reading(
                                "count.not-of-this-kind",
                                "kind",
                                "height",
                                "value",
                                "40",
                                "unit",
                                "in",
                                "positive",
                                "4",
                                "plants",
                                "9")
                        .without(PAGE));
    }

    private static Stream<Refusal> passes() {
        return Stream.of(
                pass("rate.above-most-nitrogen", "product", "anhydrous ammonia", "rate", "2000", "placement", "knifed"),
                pass("pass.ammonia-not-knifed", "product", "anhydrous ammonia", "placement", "broadcast"),
                // Asked about before it is kept; a folder takes it, and remarks.
                pass("entry.look-again rate.beyond-the-model", "rate", "380").without(FILE),
                pass("rate.above-most-nitrogen", "rate", "2000"),
                pass("rate.above-most-nitrogen", "rate", "1e9"),
                pass("rate.above-most-nitrogen", "rate", "1000", "rate_unit", "gal/ac"),
                pass("rate.above-most-nitrogen", "rate", "600", "rate_unit", "kg N/ha"),
                pass("rate.not-above-zero", "rate", "0"),
                pass("rate.not-above-zero", "rate", "-5"),
                pass("number.comma-unclear", "rate", "1,234"),
                pass("number.too-large", "rate", "1e99999999"),
                pass("number.too-large", "rate", "1e999999999"),
                pass("rate.unit-unknown", "rate_unit", "gallons"),
                pass("rate.unreadable", "rate", "forty", "rate_unit", ""),
                pass("rate.unreadable", "rate_unit", ""),
                pass("rate.ounces-of-liquid", "rate_unit", "oz/ac"),
                pass("rate.share-of-tank", "rate", "2", "rate_unit", "% v/v"),
                pass("date.out-of-range", "date", "0001-01-01"),
                pass("date.out-of-range", "date", "2100-01-01"),
                pass("date.before-the-season", "date", "2025-06-20"),
                // A file is read without a clock; at the other doors such a day is still to come.
                pass("date.after-harvest", "date", "2026-12-20").without(COMMAND, PAGE),
                pass("date.in-future", "date", "2026-07-15").without(FILE),
                pass("date.unreadable", "date", "6/10/2026"),
                pass("rate.above-most-of-kind", "product", "Demo F1", "rate", "28000", "rate_unit", "fl oz/ac"),
                pass("rate.above-most-of-kind", "product", "Demo F1", "rate", "100", "rate_unit", "qt/ac"),
                pass("rate.above-most-of-unit", "product", "Demo N1", "rate", "700", "rate_unit", "fl oz/ac"),
                pass("rate.ounces-of-liquid", "product", "Demo F1", "rate", "10", "rate_unit", "oz/ac"),
                pass("rate.weight-of-liquid", "product", "Demo F1", "rate", "1", "rate_unit", "lb/ac"),
                pass("rate.volume-of-dry", "product", "Demo I2", "rate", "10", "rate_unit", "fl oz/ac"),
                pass("rate.volume-of-dry", "product", "urea", "rate", "10", "rate_unit", "gal/ac"),
                pass("rate.no-nitrogen", "product", "Demo F1"),
                pass("pass.dry-dribbled", "product", "urea"),
                pass("product.unknown", "product", "UAN 34"),
                pass("field.unknown", "field", "Away"),
                pass("field.missing", "field", ""),
                pass("zone.none-here", "zone", "north"),
                pass("placement.unknown", "placement", "beside"),
                pass("placement.unknown", "placement", ""),
                pass("inhibitor.unknown", "inhibitor", "yes"));
    }

    private static Stream<Refusal> records() {
        return Stream.of(
                record("record.area-above-field", "area", "90 ac"),
                record("record.area-above-field", "area", "5000 ha"),
                record(RANGE + "record.area", "area", "0 ac"),
                record(RANGE + "record.area", "area", "-5 ac"),
                record("unit.unknown", "area", "70 gal"),
                record("quantity.unreadable", "area", "all of it"),
                record("number.comma-unclear", "area", "1,234 ac"),
                record("number.too-large", "area", "1e99999999 ac"),
                record("time.unreadable", "start", "noon"),
                record("time.unreadable", "end", "25:00"),
                record("stock.unit-unknown", "amount", "12 ac"),
                record(RANGE + "record.amount", "amount", "0 gal"),
                record(RANGE + "record.amount", "amount", "99999999 gal"));
    }

    private static Stream<Refusal> loads() {
        return Stream.of(
                load(RANGE + "load.area", "area", "0 ac"),
                load(RANGE + "load.area", "area", "-5 ac"),
                load("quantity.unreadable", "area", "72"),
                load("number.comma-unclear", "area", "1,234 ac"),
                load("number.too-large", "area", "1e99999999 ac"),
                load(RANGE + "spray.rate", "rate", "0 gal/ac"),
                load(RANGE + "spray.rate", "rate", "99999 gal/ac"),
                load("unit.unknown", "rate", "15 psi"),
                load(RANGE + "rig.heel", "heel", "-1 gal"),
                load(RANGE + "rig.heel", "heel", "9000 gal"),
                load(RANGE + "rig.speed", "speed", "90 mph"),
                load(RANGE + "rig.speed", "speed", "0 mph"),
                load(RANGE + "rig.tank", "tank", "0 gal"),
                load(RANGE + "rig.tank", "tank", "90000 gal"),
                load(RANGE + "rig.prime", "prime", "-1 gal"),
                load(RANGE + "rig.field-efficiency", "efficiency", "5"),
                load(RANGE + "rig.field-efficiency", "efficiency", "0"),
                load(RANGE + "rig.width", "width", "900 ft"),
                load(RANGE + "load.fill", "fill", "-1"),
                load(RANGE + "load.travel", "travel", "1e9"),
                load(RANGE + "load.round", "round", "0"),
                load("number.unreadable", "round", "an hour"),
                load(RANGE + "load.rigs", "rigs", "0"),
                load(RANGE + "load.height", "height", "90 ft"),
                load(RANGE + "load.boom", "boom", "-2 in"),
                load(RANGE + "load.distance", "water", "-1 ft"),
                load("date.out-of-range", "date", "0001-01-01"),
                load("date.unreadable", "date", "tomorrow"),
                load("placement.unknown", "placement", "beside"),
                load("rig.unknown", "rig", "nobody's"),
                load("recipe.unknown", "recipe", "none"));
    }

    private static Stream<Refusal> rigs() {
        return Stream.of(
                rig(RANGE + "rig.width", "width_ft", "0.5", "boom", "0.5 ft"),
                rig(RANGE + "rig.width", "width_ft", "300", "boom", "300 ft"),
                rig(RANGE + "rig.tank", "tank_gal", "1", "tank", "1 gal"),
                rig(RANGE + "rig.tank", "tank_gal", "99999", "tank", "99999 gal"),
                rig(RANGE + "rig.speed", "speed_min_mph", "0.1", "speeds", "0.1 to 12 mph"),
                rig(RANGE + "rig.speed", "speed_max_mph", "90", "speeds", "4 to 90 mph"),
                rig(RANGE + "rig.pressure", "pressure_min_psi", "1", "pressures", "1 to 60 psi"),
                rig(RANGE + "rig.pressure", "pressure_max_psi", "900", "pressures", "15 to 900 psi"),
                rig("range.turned", "speed_max_mph", "4", "speeds", "12 to 4 mph"),
                rig("range.turned", "pressure_max_psi", "10", "pressures", "60 to 15 psi"),
                rig("number.comma-unclear", "tank_gal", "1,200", "tank", "1,200 gal"),
                rig("range.unreadable", "", "", "speeds", "10 mph"),
                rig(RANGE + "spray.rate", "", "", "rate", "0 gal/ac"),
                rig("quantity.unreadable", "", "", "rate", "15"),
                rig(RANGE + "rig.speed", "", "", "speed", "90 mph"),
                rig(RANGE + "outlet.rows", "", "", "rows", "900 in"),
                rig("placement.unknown", "placements", "beside", "placement", "beside"),
                cell(RANGE + "rig.clearance", "rigs.csv", "clearance_in", "720"),
                cell(RANGE + "rig.outlets-per-row", "rigs.csv", "outlets_per_row", "9"),
                cell("number.not-whole", "rigs.csv", "outlets_per_row", "1.5"),
                cell(RANGE + "rig.field-efficiency", "rigs.csv", "field_efficiency", "5"),
                cell(RANGE + "rig.cost", "rigs.csv", "cost_usd_ac", "9000"),
                cell("word.unknown", "rigs.csv", "kind", "sprayer"),
                cell("cell.empty", "rigs.csv", "kind", ""),
                cell("cell.empty", "rigs.csv", "clearance_in", ""),
                cell("cell.empty", "rigs.csv", "placements", ""),
                cell(RANGE + "rig.heel", "rigs.csv", "heel_gal", "-1"),
                cell(RANGE + "rig.prime", "rigs.csv", "prime_gal", "9000"),
                cell("rig.spray-clearance-below-clearance", "rigs.csv", "spray_clearance_in", "60"),
                boom(RANGE + "boom.fan", "fan", "170"),
                boom("number.unreadable", "fan", "wide"),
                boom(RANGE + "boom.pulses", "pulses", "0"),
                boom("number.comma-unclear", "pulses", "1,000"),
                boom("split.unreadable", "split", "top 40, ear 60"),
                boom("split.shares", "split", "top 40% 1.5, ear 50% 4"),
                boom(RANGE + "boom.group-share", "split", "top 140% 1.5, ear 60% 4"),
                boom(RANGE + "boom.group-outlets", "split", "top 40% 99, ear 60% 4"));
    }

    /** Recipes that stand alone are held to the rates of those of the farm. */
    private static Stream<Refusal> recipes() {
        return Stream.of(
                recipe("rate.above-most-of-unit", "Demo F1,2800,fl oz/ac,SC"),
                recipe("rate.above-most-of-unit", "Demo F1,100,qt/ac,SC"),
                recipe("rate.above-most-nitrogen", "UAN 32,600,kg N/ha,"),
                recipe("rate.not-above-zero", "Demo F1,0,fl oz/ac,SC"),
                recipe("number.too-large", "Demo F1,1e999999999,fl oz/ac,SC"),
                recipe("cell.empty", "Demo F1,,fl oz/ac,SC"),
                recipe("cell.empty", ",10,fl oz/ac,SC"),
                recipe("form.missing", "Demo F1,10,fl oz/ac,"),
                recipe("form.unknown", "Demo F1,10,fl oz/ac,XX"),
                recipe("form.never", "Demo G1,10,lb/ac,GR"),
                recipe("dose.unit-unknown", "Demo F1,10,stone/ac,SC"),
                recipe("dose.weight-of-liquid", "Demo F1,10,oz/ac,SC"),
                recipe("dose.volume-of-dry", "Demo I2,10,fl oz/ac,WG"));
    }

    /** Kinds that have no door but their file: fields, soils, weather, products, recipes, stock, water, prices. */
    private static Stream<Refusal> files() {
        return Stream.of(
                cell(RANGE + "field.area", "fields.csv", "area_ac", "-80"),
                cell(RANGE + "field.population", "fields.csv", "population_ac", "33"),
                cell("number.comma-unclear", "fields.csv", "population_ac", "33,000"),
                cell(RANGE + "field.row-spacing", "fields.csv", "row_spacing_in", "0.76"),
                cell(RANGE + "field.curve-number", "fields.csv", "curve_number", "300"),
                cell(RANGE + "field.disease-rating", "fields.csv", "disease_rating", "10"),
                cell("field.planting-day", "fields.csv", "planted", "2026-11-04"),
                cell("date.out-of-range", "fields.csv", "planted", "0026-05-04"),
                cell("word.unknown", "fields.csv", "previous_crop", "beans"),
                cell("soil.sand-and-clay-above-all", "soil.csv", "sand_pct", "80"),
                cell("soil.depths-turned", "soil.csv", "bottom_in", "0"),
                cell(RANGE + "soil.ph", "soil.csv", "ph", "65"),
                cell(RANGE + "soil.bulk-density", "soil.csv", "bulk_density_g_cm3", "135"),
                cell("weather.temperatures-turned", "weather.csv", "tmin_f", "90"),
                cell(RANGE + "weather.rain", "weather.csv", "rain_in", "-1"),
                cell(RANGE + "weather.solar", "weather.csv", "solar_mj_m2", "400"),
                cell(RANGE + "weather.wind", "weather.csv", "wind_mph", "500"),
                cell("number.too-large", "weather.csv", "rain_in", "1e999999999"),
                cell(RANGE + "product.density", "products.csv", "density_lb_gal", "1.1"),
                cell("price.unit-unknown", "products.csv", "price_unit", "usd/jug"),
                cell("rate.above-most-of-kind", "recipes.csv", "rate", "2800"),
                cell("rate.ounces-of-liquid", "recipes.csv", "rate_unit", "oz/ac"),
                cell("rate.not-above-zero", "recipes.csv", "rate", "0"),
                cell("product.unknown", "recipes.csv", "product", "Demo F9"),
                cell(RANGE + "recipe.carrier", "recipes.csv", "carrier_gal_ac", "1500"),
                cell("number.too-large", "stock.csv", "amount", "1e308"),
                cell(RANGE + "stock.amount", "stock.csv", "amount", "99999999"),
                cell(RANGE + "stock.amount", "stock.csv", "amount", "-12"),
                cell("stock.unit-unknown", "stock.csv", "unit", "jug"),
                cell(RANGE + "irrigation.depth", "irrigation.csv", "depth_in", "75"),
                cell("date.after-harvest", "irrigation.csv", "date", "2027-07-03"),
                cell("cell.empty", "fields.csv", "planted", ""),
                cell("cell.empty", "fields.csv", "crop", ""),
                cell(RANGE + "field.relative-maturity", "fields.csv", "relative_maturity_d", "300"),
                cell(RANGE + "field.yield-goal", "fields.csv", "yield_goal_bu_ac", "9000"),
                cell(RANGE + "field.residue-cover", "fields.csv", "residue_cover_pct", "130"),
                cell("soil.horizons-apart", "soil.csv", "top_in", "6"),
                cell("cell.empty", "soil.csv", "om_pct", ""),
                cell(RANGE + "soil.sand", "soil.csv", "sand_pct", "120"),
                cell("word.unknown", "products.csv", "form", "XX"),
                cell("word.unknown", "products.csv", "kind", "potion"),
                cell(RANGE + "product.price", "products.csv", "price", "1e9"),
                cell(RANGE + "product.nitrogen", "products.csv", "n_pct", "120"),
                cell("product.shares-not-one", "products.csv", "n_pct", "30"),
                key(RANGE + "price.harvest-cost", "harvest_cost_usd_bu", "50"),
                key(RANGE + "price.fertilizer", "urea_price_usd_ton", "1e9"),
                key("number.comma-unclear", "uan_price_usd_ton", "\"1,350\""),
                key("time-zone.unknown", "time_zone", "Central"),
                key(RANGE + "farm.latitude", "latitude", "95"),
                key(RANGE + "farm.longitude", "longitude", "-190"),
                key(RANGE + "price.corn", "corn_price_usd_bu", "177"),
                key(RANGE + "price.nitrogen", "n_price_usd_lb", "60"),
                key(RANGE + "farm.setting", "bad_case_weight", "2"));
    }
}
