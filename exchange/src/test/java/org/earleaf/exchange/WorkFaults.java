// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in passes, readings, irrigation, manure and past years. */
final class WorkFaults {

    private WorkFaults() {}

    static Stream<Fault> passes() {
        String f = "passes.csv";
        return Stream.of(
                Fault.of(
                        "unknown field",
                        f,
                        "Home,2012-04-20",
                        "Hom,2012-04-20",
                        f + ", row 2, column field",
                        "\"Hom\"",
                        "Home, Creek"),
                Fault.of(
                        "unknown zone",
                        f,
                        "flat,,,",
                        "knoll,,,",
                        f + ", row 4, column zone",
                        "\"knoll\"",
                        "hill, flat"),
                Fault.of(
                        "a zone of a field without",
                        f,
                        "incorporated,,",
                        "incorporated,hill,",
                        f + ", row 2, column zone",
                        "zone.none-here",
                        "field=Home"),
                Fault.of(
                        "a pass after harvest",
                        f,
                        "2012-06-20",
                        "2012-12-20",
                        f + ", row 3, column date",
                        "date.after-harvest",
                        "first=2011-08-01, last=2012-11-20"),
                Fault.of(
                        "a pass in the year after",
                        f,
                        "2012-06-20",
                        "2013-04-20",
                        f + ", row 3, column date",
                        "date.after-harvest"),
                Fault.of(
                        "a season without planting",
                        f,
                        "2012-06-20",
                        "2011-06-20",
                        f + ", row 3, column date",
                        "date.before-the-season",
                        "planted=2012-05-04"),
                Fault.of(
                        "unknown product",
                        f,
                        "UAN 32",
                        "UAN 34",
                        f + ", row 3, column product",
                        "\"UAN 34\"",
                        "product.unknown",
                        "ammonium sulfate"),
                Fault.of(
                        "unknown unit of rate",
                        f,
                        "gal/ac",
                        "gallons",
                        f + ", row 3, column rate_unit",
                        "\"gallons\"",
                        "gal/ac",
                        "lb N/ac"),
                Fault.of(
                        "negative rate",
                        f,
                        "urea,100",
                        "urea,-100",
                        f + ", row 2, column rate",
                        "\"-100\"",
                        "rate.not-above-zero"),
                Fault.of(
                        "more nitrogen than can be meant",
                        f,
                        "UAN 32,10",
                        "UAN 32,1000",
                        f + ", row 3, column rate",
                        "1000 gal/ac",
                        "rate.above-most-nitrogen",
                        "most=126 gal/ac"),
                Fault.of("no rate at all", f, "urea,100", "urea,0", f + ", row 2, column rate", "rate.not-above-zero"),
                Fault.of(
                        "gallons of a dry product",
                        f,
                        "urea,100,lb N/ac",
                        "urea,100,gal/ac",
                        f + ", row 2, column rate_unit",
                        "rate.volume-of-dry",
                        "product=urea"),
                Fault.of(
                        "ounces of a liquid",
                        f,
                        "40,lb/ac",
                        "40,oz/ac",
                        f + ", row 4, column rate_unit",
                        "rate.ounces-of-liquid"),
                Fault.of(
                        "nitrogen of what has none",
                        f,
                        "UAN 32,10,gal/ac",
                        "Leaf Guard,10,lb N/ac",
                        f + ", row 3, column rate_unit",
                        "rate.no-nitrogen"),
                Fault.of(
                        "nitrogen as a share of the tank",
                        f,
                        "10,gal/ac",
                        "10,% v/v",
                        f + ", row 3, column rate_unit",
                        "rate.share-of-tank"),
                Fault.of(
                        "unknown placement",
                        f,
                        "mid-row coulter",
                        "coulter",
                        f + ", row 3, column placement",
                        "\"coulter\"",
                        "mid-row coulter"),
                Fault.of(
                        "ammonia on top",
                        f,
                        "urea,100,lb N/ac,incorporated",
                        "anhydrous ammonia,100,lb N/ac,broadcast",
                        f + ", row 2, column placement",
                        "pass.ammonia-not-knifed",
                        "\"broadcast\"",
                        "knifed"),
                Fault.of("unknown inhibitor", f, ",both,", ",yes,", f + ", row 3, column inhibitor", "none, urease"),
                Fault.of(
                        "planned and made",
                        f,
                        ",none,yes,",
                        ",none,yes,yes",
                        f + ", row 2, column planned",
                        "pass.planned-and-made"));
    }

    static Stream<Fault> readings() {
        String f = "readings.csv";
        return Stream.of(
                Fault.of("unknown kind", f, "nitrate", "potash", f + ", row 2, column kind", "\"potash\"", "nitrate"),
                Fault.of(
                        "unknown unit",
                        f,
                        "18,in,",
                        "18,hands,",
                        f + ", row 4, column unit",
                        "\"hands\"",
                        "in, cm, ft, m"),
                Fault.of("no unit", f, "0.6,in,", "0.6,,", f + ", row 6, column unit", "found.nothing", "in, mm"),
                Fault.of(
                        "nitrogen by area without depth",
                        f,
                        "18,ppm,,0,12",
                        "60,lb N/ac,,,",
                        f + ", row 2, column unit",
                        "reading.depth-missing",
                        "lb N/ac"),
                Fault.of(
                        "no such stage",
                        f,
                        "V6",
                        "V99",
                        f + ", row 3, column value",
                        "\"V99\"",
                        "reading.stage-unknown"),
                Fault.of("text for a number", f, "nitrate,18", "nitrate,low", f + ", row 2, column value", "\"low\""),
                Fault.of(
                        "a stand of trees",
                        f,
                        "31000,plants/ac",
                        "31000,plants/m2",
                        f + ", row 5, column value",
                        "31000 plants/m2",
                        "reading.impossible",
                        "most=30.0 1/m2"),
                Fault.of("one depth of two", f, ",0,12,", ",0,,", f + ", row 2, column bottom_in", "reading.one-depth"),
                Fault.of(
                        "depths turned round",
                        f,
                        ",0,12,",
                        ",12,0,",
                        f + ", row 2, column bottom_in",
                        "reading.depths-turned",
                        "top=12 in"),
                Fault.of(
                        "unknown position",
                        f,
                        "random",
                        "headland",
                        f + ", row 2, column position",
                        "random, row, middle"),
                Fault.of("unknown field", f, "Creek", "Crick", f + ", row 5, column field", "\"Crick\""));
    }

    static Stream<Fault> given() {
        return Stream.of(
                Fault.of(
                        "negative water",
                        "irrigation.csv",
                        "0.75",
                        "-0.75",
                        "irrigation.csv, row 2, column depth_in",
                        "-0.75"),
                Fault.of(
                        "water after harvest",
                        "irrigation.csv",
                        "2012-07-03",
                        "2013-07-03",
                        "irrigation.csv, row 2, column date",
                        "date.after-harvest"),
                Fault.of(
                        "feet in an inch column",
                        "irrigation.csv",
                        "0.75",
                        "75",
                        "irrigation.csv, row 2, column depth_in",
                        "75",
                        "0 to 5.9055 in"),
                Fault.of(
                        "manure nowhere",
                        "manure.csv",
                        "knifed",
                        "spread",
                        "manure.csv, row 2, column placement",
                        "\"spread\""),
                Fault.of(
                        "gallons for nitrogen",
                        "manure.csv",
                        ",60,80",
                        ",6000,80",
                        "manure.csv, row 2, column organic_n_lb_ac",
                        "6000"),
                Fault.of(
                        "manure without ammonium",
                        "manure.csv",
                        "ammonium_n_lb_ac",
                        "p_lb_ac",
                        "manure.csv, row 1, column ammonium_n",
                        "ammonium_n_lb_ac"));
    }

    static Stream<Fault> past() {
        String f = "yields.csv";
        return Stream.of(
                Fault.of(
                        "unknown field",
                        f,
                        "Home,,2010",
                        "Hom,,2010",
                        f + ", row 3, column field",
                        "\"Hom\"",
                        "Home, Creek"),
                Fault.of("unknown zone", f, "flat", "knoll", f + ", row 4, column zone", "\"knoll\"", "hill, flat"),
                Fault.of(
                        "the year of the crop that stands",
                        f,
                        "2010",
                        "2012",
                        f + ", row 3, column year",
                        "past.year",
                        "\"2012\"",
                        "first=1950, last=2011"),
                Fault.of("before any record", f, "2010", "1949", f + ", row 3, column year", "past.year"),
                Fault.of("two digits", f, "2010", "10", f + ", row 3, column year", "past.year", "\"10\""),
                Fault.of("unknown crop", f, "soybean", "beans", f + ", row 2, column crop", "word.unknown", "soybean"),
                Fault.of(
                        "tons for bushels",
                        f,
                        "188",
                        "500",
                        f + ", row 3, column yield_bu_ac",
                        "500 bu/ac",
                        "0 to 400 bu/ac"),
                Fault.of("text for a yield", f, "188", "good", f + ", row 3, column yield_bu_ac", "good bu/ac"),
                Fault.of(
                        "more nitrogen than can be meant",
                        f,
                        "188,165",
                        "188,1650",
                        f + ", row 3, column nitrogen_lb_ac",
                        "1650 lb/ac",
                        "0 to 401.48 lb/ac"),
                Fault.of(
                        "a year that tells nothing",
                        f,
                        "corn,171,",
                        ",,",
                        f + ", row 4, column yield_bu_ac",
                        "past.nothing"),
                Fault.of(
                        "a year twice",
                        f,
                        "2011,soybean",
                        "2010,soybean",
                        f + ", row 3, column year",
                        "past.twice",
                        "found.past-twice"),
                Fault.of(
                        "a yield without its unit",
                        f,
                        "yield_bu_ac",
                        "yield",
                        f + ", row 1, column yield",
                        "yield_bu_ac, yield_kg_ha, yield_t_ha"));
    }
}
