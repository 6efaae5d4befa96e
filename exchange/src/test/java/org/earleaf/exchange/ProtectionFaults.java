// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in what is told of disease and scouting. */
final class ProtectionFaults {
    static final String DISEASE = "disease_rating,gray_leaf_spot_rating,disease_history,wet_place";
    static final String COUNT = "found,positive,plants,leaf";

    private ProtectionFaults() {}

    /** The folder with disease told of its first field. */
    static TinyFolder disease(TinyFolder folder, String cells) {
        return folder.wider("fields.csv", DISEASE, 2, cells);
    }

    /** The folder with a reading of plants more. */
    static TinyFolder count(TinyFolder folder, String kind, String value, String note, String cells) {
        String unit = value.contains(",") ? "" : ",";
        String row = "Home,2012-07-05," + kind + "," + value + unit + ",,,,," + note + "\n";
        return folder.with("readings.csv", folder.text("readings.csv") + row).wider("readings.csv", COUNT, 7, cells);
    }

    static Stream<Fault> disease() {
        String at = "fields.csv, row 2, column ";
        return Stream.of(
                told("a rating beyond the scale", "10,,,", at + "disease_rating", "10", "1 to 9"),
                told("a rating in words", "good,,,", at + "disease_rating", "\"good\"", "number.unreadable"),
                told("a rating of one disease", ",0,,", at + "gray_leaf_spot_rating", "0", "1 to 9"),
                told(
                        "an unknown disease",
                        ",,blight of sorts,",
                        at + "disease_history",
                        "\"blight of sorts\"",
                        "tar spot"),
                told("a place half wet", ",,,often", at + "wet_place", "\"often\"", "yes, no"));
    }

    private static Fault told(String name, String cells, String where, String... parts) {
        return Fault.of(name, t -> disease(t, cells), where, parts);
    }

    static Stream<Fault> counts() {
        String at = "readings.csv, row 7, column ";
        return Stream.of(
                seen(
                        "more plants than looked at",
                        "lesions",
                        "",
                        "gray leaf spot,120,100,-3",
                        at + "positive",
                        "count.more-than-looked-at",
                        "\"120\"",
                        "plants=100"),
                seen(
                        "one number of two",
                        "lesions",
                        "",
                        "gray leaf spot,58,,-3",
                        at + "plants",
                        "found.nothing",
                        "count.not-whole"),
                seen(
                        "half a plant",
                        "lesions",
                        "",
                        "gray leaf spot,5.5,10,-3",
                        at + "positive",
                        "\"5.5\"",
                        "count.not-whole"),
                seen(
                        "an unknown disease",
                        "lesions",
                        "",
                        "spots,58,100,-3",
                        at + "found",
                        "\"spots\"",
                        "gray leaf spot"),
                seen("a leaf in words", "lesions", "", "tar spot,58,100,low", at + "leaf", "\"low\"", "leaf.unknown"),
                seen(
                        "a leaf under the ground",
                        "lesions",
                        "",
                        "tar spot,58,100,-20",
                        at + "leaf",
                        "-20",
                        "leaf.unknown"),
                seen("a leaf of aphids", "insects", "60", "aphids,40,100,-3", at + "leaf", "count.not-of-this-kind"),
                seen(
                                "plants of a height",
                                "height",
                                "60",
                                ",40,100,",
                                at + "positive",
                                "HEIGHT",
                                "count.not-of-this-kind")
                        .problems(2),
                seen(
                        "insects without a number on them",
                        "insects",
                        "",
                        "aphids,40,100,",
                        at + "value",
                        "reading.value-missing"),
                Fault.of(
                        "more than the whole leaf",
                        t -> count(t, "lesions", "140,% of leaf", "", "tar spot,,,"),
                        at + "value",
                        "140 % of leaf",
                        "reading.impossible"),
                Fault.of(
                        "lady beetles on lesions",
                        t -> enemies(t, "lesions", "gray leaf spot,58,100,-3,0.3,"),
                        at + "lady_beetles",
                        "count.not-of-this-kind"),
                Fault.of(
                        "a threshold of nothing",
                        t -> enemies(t, "insects", ",,,,,yes"),
                        at + "found",
                        "insect.not-named"));
    }

    /** A reading of plants with the enemies of aphids. */
    private static TinyFolder enemies(TinyFolder folder, String kind, String cells) {
        String row = "Home,2012-07-05," + kind + ",3,,,,,,\n";
        return folder.with("readings.csv", folder.text("readings.csv") + row)
                .wider("readings.csv", COUNT + ",lady_beetles,above_threshold", 7, cells);
    }

    private static Fault seen(String name, String kind, String value, String cells, String where, String... parts) {
        return Fault.of(name, t -> count(t, kind, value, "", cells), where, parts);
    }

    static Stream<Fault> rigs() {
        return Stream.of(Fault.of(
                "sprays in lower corn than it clears",
                t -> t.wider("rigs.csv", "spray_clearance_in", 2, "60"),
                "rigs.csv, row 2, column spray_clearance_in",
                "rig.spray-clearance-below-clearance",
                "\"60\""));
    }
}
