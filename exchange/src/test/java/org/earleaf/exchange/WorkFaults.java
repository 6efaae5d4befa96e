// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in passes, readings, irrigation and manure. */
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
                        "Home has no zones"),
                Fault.of(
                        "a pass after harvest",
                        f,
                        "2012-06-20",
                        "2012-12-20",
                        f + ", row 3, column date",
                        "after harvest",
                        "2011-08-01 to 2012-11-20"),
                Fault.of(
                        "a pass in the year after",
                        f,
                        "2012-06-20",
                        "2013-04-20",
                        f + ", row 3, column date",
                        "after harvest"),
                Fault.of(
                        "a season without planting",
                        f,
                        "2012-06-20",
                        "2011-06-20",
                        f + ", row 3, column date",
                        "a season without planting",
                        "planted on 2012-05-04"),
                Fault.of(
                        "unknown product",
                        f,
                        "UAN 32",
                        "UAN 34",
                        f + ", row 3, column product",
                        "\"UAN 34\"",
                        "ammonium sulfate",
                        "products.csv"),
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
                        "found -100",
                        "0 or more"),
                Fault.of(
                        "more nitrogen than can be meant",
                        f,
                        "UAN 32,10",
                        "UAN 32,1000",
                        f + ", row 3, column rate",
                        "1000 gal/ac",
                        "3966.9 kg N/ha",
                        "268 lb N/ac"),
                Fault.of(
                        "gallons of a dry product",
                        f,
                        "urea,100,lb N/ac",
                        "urea,100,gal/ac",
                        f + ", row 2, column rate_unit",
                        "urea is dry",
                        "lb/ac"),
                Fault.of("ounces of a liquid", f, "40,lb/ac", "40,oz/ac", f + ", row 4, column rate_unit", "fl oz/ac"),
                Fault.of(
                        "nitrogen of what has none",
                        f,
                        "UAN 32,10,gal/ac",
                        "Leaf Guard,10,lb N/ac",
                        f + ", row 3, column rate_unit",
                        "carries no nitrogen"),
                Fault.of(
                        "nitrogen as a share of the tank",
                        f,
                        "10,gal/ac",
                        "10,% v/v",
                        f + ", row 3, column rate_unit",
                        "a share of the tank"),
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
                        "broadcast of anhydrous ammonia",
                        "knifed"),
                Fault.of("unknown inhibitor", f, ",both,", ",yes,", f + ", row 3, column inhibitor", "none, urease"),
                Fault.of(
                        "planned and made",
                        f,
                        ",none,yes,",
                        ",none,yes,yes",
                        f + ", row 2, column planned",
                        "both planned and made"));
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
                Fault.of("no unit", f, "0.6,in,", "0.6,,", f + ", row 6, column unit", "no unit", "in, mm"),
                Fault.of(
                        "nitrogen by area without depth",
                        f,
                        "18,ppm,,0,12",
                        "60,lb N/ac,,,",
                        f + ", row 2, column unit",
                        "without a depth",
                        "ppm"),
                Fault.of("no such stage", f, "V6", "V99", f + ", row 3, column value", "\"V99\"", "R1 to R6"),
                Fault.of("text for a number", f, "nitrate,18", "nitrate,low", f + ", row 2, column value", "\"low\""),
                Fault.of(
                        "a stand of trees",
                        f,
                        "31000,plants/ac",
                        "31000,plants/m2",
                        f + ", row 5, column value",
                        "31000 plants/m2",
                        "0 to 30 plants/m2"),
                Fault.of("one depth of two", f, ",0,12,", ",0,,", f + ", row 2, column bottom_in", "one depth of two"),
                Fault.of(
                        "depths turned round",
                        f,
                        ",0,12,",
                        ",12,0,",
                        f + ", row 2, column bottom_in",
                        "a bottom below the top"),
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
                        "after harvest"),
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
}
