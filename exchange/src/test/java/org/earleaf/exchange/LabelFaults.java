// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in labels.csv. */
final class LabelFaults {
    static final String GOOD = """
            product,crop,item,of,value,unit,entered_by,entered_on,second_look_by,second_look_on
            Leaf Guard,,season_is,,365 days,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,version,,12-A,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,content,Guardin,1.2,lb/gal,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,counts,guardin,80,%,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,group,guardin,FRAC 11,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,group,guardin,frac 3,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,active_single,guardin,none,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,active_season,guardin,0.26,lb/ac,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,single,,12,fl oz/ac,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,least,,8,fl oz/ac,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,wind_least,,none,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,wind_most,,10,mph,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,rainfast,,2,h,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,inversion,,yes,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,finest,,medium,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,never_with,,COC,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,never_with,,calcium,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,after,,WC,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,,plant_back,alfalfa,30,days,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,corn,harvest,,30,days,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,corn,first_stage,,VT,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,corn,last_stage,,R4,,Ann,2012-02-01,Ben,2012-02-02
            Leaf Guard,wheat,last_stage,,Z69,,Ann,2012-02-01,Ben,2012-02-02
            """;

    private LabelFaults() {}

    /** The folder with a fungicide whose label is entered. */
    static TinyFolder label(TinyFolder folder) {
        return folder.wider("products.csv", "kind", 3, "fungicide").with("labels.csv", GOOD);
    }

    static Stream<Fault> labels() {
        return Stream.of(
                Fault.of(
                        "a kind of product",
                        t -> t.wider("products.csv", "kind", 3, "spray"),
                        "products.csv, row 3, column kind",
                        "\"spray\"",
                        "fungicide, insecticide"),
                moved("label_wind_max_mph"),
                moved("label_pre_harvest_d"),
                moved("group"),
                told("an unknown product", "Leaf Guard,corn,harvest", "Leaf Gard,corn,harvest", 21, "product", "Gard"),
                told("an unknown item", ",rainfast,", ",dry,", 14, "item", "\"dry\"", "rainfast", "never_with"),
                told("a group in words", "FRAC 11", "strobi", 6, "value", "\"strobi\"", "label.group-unknown"),
                told("a group without its list", "FRAC 11", "11", 6, "value", "\"11\"", "label.group-unknown"),
                told("wind in words", ",10,mph", ",light,mph", 13, "value", "light mph", "quantity.unreadable"),
                told("a storm allowed", ",10,mph", ",60,mph", 13, "value", "60 mph", "label.implausible"),
                told("no unit", ",10,mph", ",10,", 13, "value", "10", "quantity.unreadable"),
                told("a week to rainfast", ",2,h", ",168,h", 14, "value", "168 h", "label.implausible"),
                told("an inversion perhaps", ",yes,", ",perhaps,", 15, "value", "\"perhaps\"", "label.not-yes-or-no"),
                told("an inversion of none", ",yes,", ",none,", 15, "value", "\"none\"", "label.not-yes-or-no"),
                told(
                        "droplets by size",
                        ",medium,",
                        ",250,",
                        16,
                        "value",
                        "\"250\"",
                        "label.unreadable",
                        "[XF, VF, F, M"),
                told(
                        "days before harvest",
                        ",30,days,Ann,2012-02-01,Ben,2012-02-02\nLeaf Guard,corn,first",
                        ",-30,days,Ann,2012-02-01,Ben,2012-02-02\nLeaf Guard,corn,first",
                        21,
                        "value",
                        "-30",
                        "label.example.days"),
                told("a stage in words", ",R4,", ",dough,", 23, "value", "\"dough\"", "label.unreadable", "VT"),
                told("a stage of another crop", ",Z69,", ",R4,", 24, "value", "\"R4\"", "first=Z0, last=Z99"),
                told("stages turned round", ",VT,", ",R5,", 23, "value", "label.turned", "most=R4"),
                told(
                        "wind turned round",
                        "wind_least,,none,",
                        "wind_least,,12,mph",
                        13,
                        "value",
                        "label.turned",
                        "most=10 mph"),
                told("rates turned round", ",8,fl", ",14,fl", 10, "value", "label.turned", "most=12 fl oz/ac"),
                told(
                        "a weight of a liquid",
                        ",12,fl oz/ac",
                        ",12,lb/ac",
                        10,
                        "value",
                        "unit.unknown",
                        "\"lb/ac\"",
                        "floz/ac"),
                told("nothing allowed of an active", ",0.26,", ",0,", 9, "value", "0 lb/ac", "label.not-above-zero"),
                told("more than all", ",80,%", ",180,%", 5, "value", "180 %", "label.share-above-all"),
                told(
                        "no content",
                        "content,Guardin,1.2,lb/gal",
                        "passes,,2,",
                        5,
                        "value",
                        "label.no-content",
                        "found.no-content"),
                told("a season of its own", "365 days", "summer", 2, "value", "\"summer\"", "label.season-unknown"),
                told(
                        "half a month of planting back",
                        ",30,days,Ann,2012-02-01,Ben,2012-02-02\nLeaf Guard,corn,harvest",
                        ",half,days,Ann,2012-02-01,Ben,2012-02-02\nLeaf Guard,corn,harvest",
                        20,
                        "value",
                        "half days",
                        "label.example.days"),
                told("content of nothing", "content,Guardin", "content,", 4, "of", "label.of-missing")
                        .problems(2),
                told(
                        "a wind of something",
                        "wind_most,,",
                        "wind_most,guardin,",
                        13,
                        "of",
                        "guardin",
                        "label.of-not-here"),
                told(
                        "an item twice",
                        "wheat,last_stage,,Z69",
                        "corn,last_stage,,R4",
                        24,
                        "item",
                        "label.item-twice",
                        "found.second-time"),
                told(
                        "for every crop and for one",
                        "wheat,last_stage,,Z69",
                        "wheat,single,,10 fl oz/ac",
                        24,
                        "item",
                        "label.item-twice"),
                told(
                        "no crop at all",
                        t -> GOOD.replace("Guard,corn", "Guard,")
                                .replace("Guard,wheat,last_stage,,Z69", "Guard,,height,,30 in"),
                        2,
                        "crop",
                        "label.no-crop",
                        "found.no-crop"),
                told("nobody entered it", "12-A,,Ann", "12-A,,", 3, "entered_by", "cell.empty"),
                told(
                                "another person entered one figure",
                                "12-A,,Ann",
                                "12-A,,Cid",
                                3,
                                "entered_by",
                                "label.two-looks",
                                "found.other-look")
                        .problems(2),
                told(
                                "one figure not looked at again",
                                "12-A,,Ann,2012-02-01,Ben,2012-02-02",
                                "12-A,,Ann,2012-02-01,,",
                                3,
                                "entered_by",
                                "label.two-looks")
                        .problems(2),
                told(
                        "a second look without its day",
                        "12-A,,Ann,2012-02-01,Ben,2012-02-02",
                        "12-A,,Ann,2012-02-01,Ben,",
                        3,
                        "second_look_on",
                        "label.look-half"),
                told(
                        "a second look without a name",
                        "12-A,,Ann,2012-02-01,Ben,2012-02-02",
                        "12-A,,Ann,2012-02-01,,2012-02-02",
                        3,
                        "second_look_by",
                        "label.look-half"),
                told(
                        "looked at again before",
                        "12-A,,Ann,2012-02-01,Ben,2012-02-02",
                        "12-A,,Ann,2012-02-01,Ben,2012-01-02",
                        3,
                        "second_look_on",
                        "label.looked-before-entered",
                        "found.before-entered"),
                told("no day", "12-A,,Ann,2012-02-01", "12-A,,Ann,1 Feb", 3, "entered_on", "1 Feb", "date.unreadable"));
    }

    private static Fault moved(String column) {
        return Fault.of(
                "labels in products.csv: " + column,
                t -> t.wider("products.csv", column, 3, "10"),
                "products.csv, row 1, column " + column,
                "column.moved-to-labels",
                "found.column-not-kept");
    }

    private static Fault told(String name, String from, String to, int row, String column, String... parts) {
        return told(name, t -> edited(from, to), row, column, parts);
    }

    private static Fault told(
            String name, java.util.function.UnaryOperator<String> text, int row, String column, String... parts) {
        return Fault.of(
                name,
                t -> label(t).with("labels.csv", text.apply(GOOD)),
                "labels.csv, row " + row + ", column " + column,
                parts);
    }

    private static String edited(String from, String to) {
        if (!GOOD.contains(from)) {
            throw new IllegalArgumentException("no " + from);
        }
        return GOOD.replaceFirst(java.util.regex.Pattern.quote(from), to);
    }
}
