// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** Faults in farm.csv, fields.csv and soil.csv. */
final class FarmFaults {

    private FarmFaults() {}

    static Stream<Fault> farm() {
        String f = "farm.csv";
        return Stream.of(
                Fault.of("no farm.csv", t -> t.without(f), f, "folder.file-missing", "found.other-files", "fields.csv"),
                Fault.of("farm.csv empty", t -> t.with(f, ""), f, "file.empty", "found.empty-file"),
                Fault.of("farm.csv header alone", t -> t.with(f, "key,value\n"), f + ", row 1", "file.no-rows"),
                Fault.of(
                        "latitude beyond the pole",
                        f,
                        "latitude,41.5",
                        "latitude,95",
                        f + ", row 3, column value of latitude",
                        "found 95",
                        "25 to 55"),
                Fault.of(
                        "a minus sign forgotten",
                        f,
                        "longitude,-90.5",
                        "longitude,90.5",
                        f + ", row 4, column longitude",
                        "farm.longitude-not-of-zone",
                        "America/Chicago"),
                Fault.of(
                        "longitude beyond the date line",
                        f,
                        "-90.5",
                        "-190",
                        f + ", row 4, column value of longitude",
                        "-180 to 180"),
                Fault.of(
                        "text in a number",
                        f,
                        "elevation_ft,700",
                        "elevation_ft,seven hundred",
                        f + ", row 5, column value of elevation_ft",
                        "\"seven hundred\"",
                        "number.unreadable"),
                Fault.of(
                        "no price of corn",
                        f,
                        "corn_price_usd_bu,4.50\n",
                        "",
                        f + ", column key",
                        "key.missing",
                        "n_price_usd_lb",
                        "corn_price_usd_bu"),
                Fault.of(
                        "unknown time zone",
                        f,
                        "America/Chicago",
                        "Central",
                        f + ", row 6, column value of time_zone",
                        "\"Central\"",
                        "time-zone.unknown"),
                Fault.of(
                        "a setting that is neither yes nor no",
                        f,
                        "elevation_ft,700",
                        "elevation_ft,700\nhired_rig_near,perhaps",
                        f + ", row 6, column value of hired_rig_near",
                        "\"perhaps\"",
                        "word.not-yes-or-no"),
                Fault.of(
                        "a weight above 1",
                        f,
                        "elevation_ft,700",
                        "elevation_ft,700\nbad_case_weight,2",
                        f + ", row 6, column value of bad_case_weight",
                        "found 2",
                        "0 to 1"),
                Fault.of(
                        "a key twice",
                        f,
                        "longitude,-90.5",
                        "latitude,42\nlongitude,-90.5",
                        f + ", row 4, column key",
                        "row.twice",
                        "found.second-time-row"),
                Fault.of(
                        "unknown unit in a key",
                        f,
                        "elevation_ft",
                        "elevation_furlong",
                        f + ", column key",
                        "key.missing",
                        "elevation_m"),
                Fault.of(
                        "a price in a unit it cannot have",
                        f,
                        "n_price_usd_lb",
                        "n_price_usd_bu",
                        f + ", row 9, column key",
                        "n_price_usd_bu",
                        "key.unit-unknown"),
                Fault.of(
                        "a price for the ton where the bushel is meant",
                        f,
                        "corn_price_usd_bu,4.50",
                        "corn_price_usd_bu,177",
                        f + ", row 7, column value of corn_price_usd_bu",
                        "177"));
    }

    static Stream<Fault> fields() {
        String f = "fields.csv";
        return Stream.of(
                Fault.of("no fields.csv", t -> t.without(f), f, "folder.file-missing"),
                Fault.of("fields.csv empty", t -> t.with(f, "\n\n"), f, "file.empty"),
                Fault.of(
                        "missing column",
                        f,
                        "previous_crop",
                        "before",
                        f + ", row 1, column previous_crop",
                        "column.missing",
                        "found.columns"),
                Fault.of(
                        "no unit in the header",
                        f,
                        "area_ac",
                        "area",
                        f + ", row 1, column area",
                        "area_m2, area_ha, area_ac"),
                Fault.of(
                        "unknown unit in the header",
                        f,
                        "row_spacing_in",
                        "row_spacing_psi",
                        f + ", row 1, column row_spacing",
                        "row_spacing_cm",
                        "column.missing"),
                Fault.of(
                        "one quantity in two columns",
                        f,
                        "hybrid,gdd",
                        "area_ha,gdd",
                        f + ", row 1, column area_ha",
                        "column.two-units"),
                Fault.of("a column twice", f, "hybrid,gdd", "crop,gdd", f + ", row 1, column crop", "column.twice"),
                Fault.of(
                        "text in a number",
                        f,
                        "32000",
                        "32k",
                        f + ", row 2, column population_ac",
                        "\"32k\"",
                        "number.unreadable"),
                Fault.of(
                        "separator of thousands",
                        f,
                        "32000",
                        "\"32,000\"",
                        f + ", row 2, column population_ac",
                        "\"32,000\"",
                        "number.comma-unclear",
                        "32.000"),
                Fault.of("no number at all", f, "Home,,80", "Home,,NaN", f + ", row 2, column area_ac", "\"NaN\""),
                Fault.of(
                        "two plantings",
                        f,
                        "Creek,flat",
                        "Creek,hill",
                        f + ", row 4, column field",
                        "field.planted-twice",
                        "found.planted-twice"),
                Fault.of(
                                "a field whole and in zones",
                                f,
                                "Home,,80",
                                "Creek,,80",
                                f + ", row 3, column zone",
                                "field.whole-and-zones",
                                "found.whole-and-zones")
                        .problems(2),
                Fault.of(
                        "unknown word",
                        f,
                        "30,soybean",
                        "30,beans",
                        f + ", row 2, column previous_crop",
                        "\"beans\"",
                        "corn, soybean, wheat"),
                Fault.of(
                        "unknown drainage",
                        f,
                        "tiled",
                        "wet",
                        f + ", row 2, column drainage",
                        "\"wet\"",
                        "tiled, poor, well"),
                Fault.of(
                        "date in another order",
                        f,
                        "2012-05-04",
                        "5/4/2012",
                        f + ", row 2, column planted",
                        "\"5/4/2012\"",
                        "date.unreadable"),
                Fault.of(
                        "no such day",
                        f,
                        "2012-05-04",
                        "2012-02-30",
                        f + ", row 2, column planted",
                        "\"2012-02-30\"",
                        "date.unreadable"),
                Fault.of(
                        "year of two digits",
                        f,
                        "2012-05-04",
                        "0012-05-04",
                        f + ", row 2, column planted",
                        "0012",
                        "date.out-of-range"),
                Fault.of(
                        "corn planted in November",
                        f,
                        "corn,2012-05-04",
                        "corn,2012-11-04",
                        f + ", row 2, column planted",
                        "2012-11-04",
                        "field.planting-day"),
                Fault.of("negative area", f, "Home,,80", "Home,,-80", f + ", row 2, column area_ac", "found -80"),
                Fault.of(
                        "metres in an inch column",
                        f,
                        "30,soybean",
                        "0.762,soybean",
                        f + ", row 2, column row_spacing_in",
                        "0.762",
                        "14.961 to 40.157 in"),
                Fault.of("cell.empty", f, "80,corn", "80,", f + ", row 2, column crop", "cell.empty"),
                Fault.of("a comma without quotes", f, "Early 8", "Early, 8", f + ", row 2", "row.cells", "found.cells"),
                Fault.of(
                        "a row cut short",
                        f,
                        ",30,78,Early 8,1350,2650,210",
                        "",
                        f + ", row 2",
                        "row.cells",
                        "found.cells"),
                Fault.of(
                        "a quote left open",
                        f,
                        "Creek,hill",
                        "\"Creek,hill",
                        f + ", row 3",
                        "csv.quote",
                        "found.odd-quote"),
                Fault.of(
                        "another encoding",
                        t -> t.withBytes(f, t.text(f).replace("Early", "Früh").getBytes(StandardCharsets.ISO_8859_1)),
                        f + ", row 2",
                        "file.not-utf-8",
                        "found.odd-byte"),
                Fault.of(
                        "two bytes a letter",
                        t -> t.withBytes(f, ("\uFEFF" + t.text(f)).getBytes(StandardCharsets.UTF_16LE)),
                        f + ", row 1",
                        "file.not-utf-8"),
                Fault.of(
                        "a workbook",
                        t -> t.withBytes(f, new byte[] {'P', 'K', 3, 4, 0}),
                        f + ", row 1",
                        "file.not-utf-8"));
    }

    static Stream<Fault> soil() {
        String f = "soil.csv";
        return Stream.of(
                Fault.of("no soil.csv", t -> t.without(f), f, "folder.file-missing"),
                Fault.of(
                        "sand and clay over 100",
                        f,
                        "12,24,3.6",
                        "80,24,3.6",
                        f + ", row 2, column clay_pct",
                        "soil.sand-and-clay-above-all",
                        "104 %"),
                Fault.of(
                        "a texture that is none",
                        t -> t.with(f, """
                                field,zone,top_in,bottom_in,texture,om_pct,ph
                                Home,,0,60,gumbo,3.6,6.4
                                Creek,,0,60,Silt-Loam,3,6.5
                                """),
                        f + ", row 2, column texture",
                        "\"gumbo\"",
                        "silty clay loam"),
                Fault.of(
                        "a gap below",
                        f,
                        "Home,,12,60",
                        "Home,,14,60",
                        f + ", row 3, column top_in",
                        "soil.horizons-apart",
                        "found.horizon-gap"),
                Fault.of(
                        "an overlap",
                        f,
                        "Home,,12,60",
                        "Home,,10,60",
                        f + ", row 3, column top_in",
                        "soil.horizons-apart"),
                Fault.of(
                        "soil that begins below",
                        f,
                        "Home,,0,12",
                        "Home,,2,12",
                        f + ", row 2, column top_in",
                        "soil.horizons-apart"),
                Fault.of(
                        "upside down",
                        f,
                        "Home,,0,12",
                        "Home,,12,0",
                        f + ", row 2, column bottom_in",
                        "soil.depths-turned"),
                Fault.of("pH without its point", f, "6.4", "64", f + ", row 2, column ph", "found 64"),
                Fault.of("no organic matter on top", f, ",3.6,", ",,", f + ", row 2, column om_pct", "cell.empty"),
                Fault.of(
                        "unknown field",
                        f,
                        "Home,,12",
                        "Homer,,12",
                        f + ", row 3, column field",
                        "\"Homer\"",
                        "Home, Creek"),
                Fault.of(
                        "unknown zone",
                        f,
                        "Creek,,9",
                        "Creek,knoll,9",
                        f + ", row 5, column zone",
                        "zone.unknown",
                        "\"knoll\"",
                        "field=Creek",
                        "hill, flat"),
                Fault.of(
                        "a zone without soil",
                        t -> t.edit(f, "Home,,0,12,12,24,3.6,6.4,22,1.35,14,31\nHome,,12,60,10,30,1.2,6.8,,,,\n", ""),
                        "fields.csv, row 2, column field",
                        "soil.missing",
                        "found.field-without-soil"));
    }
}
