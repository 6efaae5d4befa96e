// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.earleaf.units.Units.DRY_SHARE_OF_TRADE_CORN;
import static org.earleaf.units.Units.KGHA_PER_BUAC;
import static org.earleaf.units.Units.MS_PER_MPH;

import java.util.Optional;
import org.earleaf.farm.Setting;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.label.LabelItem;
import org.earleaf.rig.FanHeight;
import org.earleaf.units.Dimension;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;

/**
 * The range of every number that people enter. Where the season model holds for less than what is possible, the model's
 * range is the inner one. Bounds without another word are common practice, no source: beyond them a number is a slip of
 * the pen or of the unit.
 */
public final class Ranges {
    private static final double MM = 1000;
    private static final double HA = 1e-4;
    private static final double LHA = 1e7;
    private static final double KGL = 1e-3;

    // The farm
    public static final Allowed LATITUDE =
            Allowed.plain("farm.latitude", -90, 90).clamped(25, 55);
    public static final Allowed LONGITUDE = Allowed.plain("farm.longitude", -180, 180);
    public static final Allowed ELEVATION =
            Allowed.of("farm.elevation", Dimension.LENGTH, -430, 6000).clamped(-50, 2500);
    public static final Allowed CORN_PRICE = Allowed.plain("price.corn", .2, 100);
    public static final Allowed HARVEST_COST = Allowed.plain("price.harvest-cost", 0, 10);
    public static final Allowed NITROGEN_PRICE = Allowed.plain("price.nitrogen", .02, 20);
    public static final Allowed FERTILIZER_PRICE = Allowed.plain("price.fertilizer", .005, 10);

    // Fields
    public static final Allowed FIELD_AREA =
            Allowed.of("field.area", Dimension.AREA, .004, 20_000).times(HA);
    public static final Allowed MATURITY =
            Allowed.plain("field.relative-maturity", 50, 200).clamped(75, 120);
    public static final Allowed POPULATION =
            Allowed.plain("field.population", .5, 30).clamped(5, 10.5);
    public static final Allowed ROW_SPACING =
            Allowed.of("field.row-spacing", Dimension.LENGTH, .1, 3).clamped(.38, 1.02);
    public static final Allowed RESIDUE_COVER = share("field.residue-cover");
    public static final Allowed CURVE_NUMBER =
            Allowed.plain("field.curve-number", 1, 100).clamped(30, 98);
    public static final Allowed HEAT_TO_SILK = Allowed.plain("field.gdd-silk", 800, 2200);
    public static final Allowed HEAT_TO_BLACK_LAYER = Allowed.plain("field.gdd-black-layer", 1500, 4000);
    public static final Allowed YIELD_GOAL = Allowed.plain("field.yield-goal", 0, 30_000);
    public static final Allowed DISEASE_RATING =
            Allowed.plain("field.disease-rating", DiseaseFacts.MOST_SUSCEPTIBLE, DiseaseFacts.MOST_RESISTANT);

    // Soils
    public static final Allowed SOIL_TOP =
            Allowed.of("soil.top", Dimension.LENGTH, 0, 10_000).times(MM);
    public static final Allowed SOIL_BOTTOM =
            Allowed.of("soil.bottom", Dimension.LENGTH, 0, 10_000).times(MM);
    public static final Allowed SAND = percent("soil.sand");
    public static final Allowed CLAY = percent("soil.clay");
    public static final Allowed ORGANIC_MATTER = percent("soil.organic-matter");
    public static final Allowed PH = Allowed.plain("soil.ph", 2, 11);
    public static final Allowed CEC = Allowed.plain("soil.cec", 0, 200);
    public static final Allowed BULK_DENSITY =
            Allowed.of("soil.bulk-density", Dimension.DENSITY, .05, 2.65).times(KGL);
    public static final Allowed WILTING_POINT = share("soil.wilting-point");
    public static final Allowed FIELD_CAPACITY = share("soil.field-capacity");

    // Weather
    public static final Allowed AIR = Allowed.of("weather.temperature", Dimension.TEMPERATURE, -100, 150);
    public static final Allowed RAIN = Allowed.of("weather.rain", Dimension.WATER_DEPTH, 0, 10_000);
    public static final Allowed SOLAR = Allowed.of("weather.solar", Dimension.RADIATION, 0, 100);
    public static final Allowed WIND = Allowed.of("weather.wind", Dimension.SPEED, 0, 60);
    public static final Allowed HUMIDITY =
            Allowed.of("weather.humidity", Dimension.SHARE, 0, 110).times(100).clamped(0, 100);
    public static final Allowed DEW_POINT = Allowed.of("weather.dew-point", Dimension.TEMPERATURE, -80, 40);
    public static final Allowed RAIN_CHANCE = share("weather.rain-chance");
    public static final Allowed HOUR_AIR = Allowed.of("weather.hour-temperature", Dimension.TEMPERATURE, -55, 55);
    public static final Allowed HOUR_WIND = Allowed.of("weather.hour-wind", Dimension.SPEED, 0, 80);
    public static final Allowed WIND_FROM = Allowed.plain("weather.wind-from", 0, 360);
    public static final Allowed HOUR_RAIN = Allowed.of("weather.hour-rain", Dimension.WATER_DEPTH, 0, 400);
    public static final Allowed CLOUD = share("weather.cloud");

    // Readings and what is given to fields
    /** Nobody cores deeper than 120 in. */
    public static final Allowed READING_TOP =
            Allowed.of("reading.top", Dimension.LENGTH, 0, 3048).times(MM);

    public static final Allowed READING_BOTTOM =
            Allowed.of("reading.bottom", Dimension.LENGTH, 0, 3048).times(MM);
    public static final Allowed ENEMIES = Allowed.plain("reading.enemies", 0, 1000);
    public static final Allowed IRRIGATION =
            Allowed.of("irrigation.depth", Dimension.WATER_DEPTH, 0, 400).clamped(0, 150);
    public static final Allowed MANURE_ORGANIC =
            Allowed.of("manure.organic-n", Dimension.MASS_RATE, 0, 3000).clamped(0, 600);
    public static final Allowed MANURE_AMMONIUM =
            Allowed.of("manure.ammonium-n", Dimension.MASS_RATE, 0, 3000).clamped(0, 600);

    // Past years
    /** Dry grain of corn, 400 bu/ac: more is grown in contests only. */
    public static final Allowed PAST_YIELD = Allowed.of(
                    "past.yield", Dimension.GRAIN, 0, 400 * DRY_SHARE_OF_TRADE_CORN * KGHA_PER_BUAC)
            .times(DRY_SHARE_OF_TRADE_CORN);

    /** Above 320 bu/ac a field's yield is asked about. */
    public static final Allowed USUAL_PAST_YIELD = Allowed.of(
                    "past.yield", Dimension.GRAIN, 0, 320 * DRY_SHARE_OF_TRADE_CORN * KGHA_PER_BUAC)
            .times(DRY_SHARE_OF_TRADE_CORN);

    public static final Allowed PAST_NITROGEN = Allowed.of("past.nitrogen", Dimension.MASS_RATE, 0, 450);

    // Rigs
    public static final Allowed CLEARANCE = Allowed.of("rig.clearance", Dimension.LENGTH, .2, 4);
    public static final Allowed SPRAY_CLEARANCE = Allowed.of("rig.spray-clearance", Dimension.LENGTH, .2, 4);
    public static final Allowed WIDTH = Allowed.of("rig.width", Dimension.LENGTH, 1, 60);
    public static final Allowed TANK = Allowed.of("rig.tank", Dimension.VOLUME, .05, 40);
    public static final Allowed SPEED = Allowed.of("rig.speed", Dimension.SPEED, .2, 30 * MS_PER_MPH);
    public static final Allowed PRESSURE = Allowed.of("rig.pressure", Dimension.PRESSURE, 3e4, 2e6);
    public static final Allowed OUTLETS_PER_ROW = Allowed.plain("rig.outlets-per-row", 1, 4);
    public static final Allowed RIG_COST = Allowed.plain("rig.cost", 0, 500);
    public static final Allowed HEEL = Allowed.of("rig.heel", Dimension.VOLUME, 0, 2);
    public static final Allowed PRIME = Allowed.of("rig.prime", Dimension.VOLUME, 0, 2);
    public static final Allowed EFFICIENCY = Allowed.of("rig.field-efficiency", Dimension.SHARE, .05, 1);

    // One outlet, and the search for outlets
    public static final Allowed OUTLET_WIDTH = Allowed.of("outlet.width", Dimension.LENGTH, .02, 10);
    public static final Allowed OUTLET_FLOW = Allowed.of("outlet.flow", Dimension.FLOW, 1e-7, 1e-2);
    public static final Allowed OUTLET_PRESSURE = Allowed.of("outlet.pressure", Dimension.PRESSURE, 7e3, 2e6);
    /** 0.1 to 1,000 gal/ac; what an outlet can give is the solver's to say. */
    public static final Allowed CARRIER = Allowed.of("spray.rate", Dimension.VOLUME_RATE, 1e-7, 1e-3);

    public static final Allowed ROWS = Allowed.of("outlet.rows", Dimension.LENGTH, .1, 3);
    public static final Allowed FAN = Allowed.plain("boom.fan", FanHeight.LEAST_DEG, FanHeight.MOST_DEG);
    /** Nozzles that pulse do so 10 to 15 times a second, the quickest about 100 times. */
    public static final Allowed PULSES = Allowed.plain("boom.pulses", 1, 120);

    public static final Allowed GROUP_SHARE = Allowed.of("boom.group-share", Dimension.SHARE, 0, 1);
    public static final Allowed GROUP_OUTLETS = Allowed.plain("boom.group-outlets", .1, 20);
    public static final Allowed CATCH_TIME = Allowed.plain("catch.seconds", 1, 3600);
    public static final Allowed CATCH_VOLUME = Allowed.of("catch.volume", Dimension.VOLUME, 1e-6, .1);

    // Products, recipes, stock
    public static final Allowed PRODUCT_DENSITY =
            Allowed.of("product.density", Dimension.DENSITY, .3, 2.5).times(KGL);
    public static final Allowed PRODUCT_PRICE = Allowed.plain("product.price", 0, 100_000);
    /** Ammonia, the richest, holds 82.3 %. */
    public static final Allowed NITROGEN_SHARE =
            Allowed.of("product.nitrogen", Dimension.SHARE, 0, 82.3).times(100);

    public static final Allowed UREA_SHARE = Allowed.plain("product.urea-share", 0, 1);
    public static final Allowed AMMONIUM_SHARE = Allowed.plain("product.ammonium-share", 0, 1);
    public static final Allowed NITRATE_SHARE = Allowed.plain("product.nitrate-share", 0, 1);
    public static final Allowed RECIPE_CARRIER =
            Allowed.of("recipe.carrier", Dimension.VOLUME_RATE, 5, 2000).times(LHA);
    /** Half a million gallons, or two thousand tons, are a dealer's. */
    public static final Allowed STOCK_VOLUME = Allowed.of("stock.amount", Dimension.VOLUME, 0, 2000);

    public static final Allowed STOCK_MASS = Allowed.of("stock.amount", Dimension.MASS, 0, 2_000_000);

    // Loads
    public static final Allowed LOAD_AREA = Allowed.of("load.area", Dimension.AREA, 1, 2e8);
    public static final Allowed LOAD_HEIGHT = Allowed.of("load.height", Dimension.LENGTH, 0, 5);
    public static final Allowed BOOM = Allowed.of("load.boom", Dimension.LENGTH, 0, 5);
    public static final Allowed DISTANCE = Allowed.of("load.distance", Dimension.LENGTH, 0, 200_000);
    public static final Allowed TENDER = Allowed.of("load.tender", Dimension.VOLUME, .05, 200);
    public static final Allowed ROUND = Allowed.plain("load.round", 1, 1440);
    public static final Allowed FILL = Allowed.plain("load.fill", 0, 600);
    public static final Allowed TRAVEL = Allowed.plain("load.travel", 0, 600);
    public static final Allowed RIGS = Allowed.plain("load.rigs", 1, 50);

    // Records
    public static final Allowed RECORD_AREA = Allowed.of("record.area", Dimension.AREA, 1, 2e8);

    public static final Allowed RECORD_VOLUME = Allowed.of("record.amount", Dimension.VOLUME, 1e-9, 2000);
    public static final Allowed RECORD_MASS = Allowed.of("record.amount", Dimension.MASS, 1e-6, 2_000_000);

    // Plans
    public static final Allowed SEARCH = Allowed.plain("plan.seconds", 0, 3600);

    // Cards
    public static final Allowed CARD_MARGIN = Allowed.of("card.margin", Dimension.LENGTH, 0, .2);
    public static final Allowed CARD_DPI = Allowed.plain("card.dpi", 50, 10_000);

    private Ranges() {}

    /** What a setting of the farm may be. */
    public static Allowed of(Setting setting) {
        return Allowed.plain("farm.setting", setting.low(), setting.high());
    }

    /** The most that a figure of a label may be; empty: any. */
    public static Optional<Measured> most(LabelItem item) {
        return switch (item) {
            case WIND_LEAST, WIND_MOST, SPEED -> Optional.of(Measure.WIND.of(40 * MS_PER_MPH));
            case AIR_MOST -> Optional.of(Measure.TEMPERATURE.of(55));
            case RAINFAST -> Optional.of(Measure.HOURS.of(72));
            case INTERVAL, HARVEST, GRAZING -> Optional.of(Measure.DAYS.of(365));
            case REENTRY -> Optional.of(Measure.HOURS.of(365 * 24));
            default -> Optional.empty();
        };
    }

    private static Allowed share(String what) {
        return Allowed.of(what, Dimension.SHARE, 0, 1);
    }

    private static Allowed percent(String what) {
        return Allowed.of(what, Dimension.SHARE, 0, 100).times(100);
    }
}
