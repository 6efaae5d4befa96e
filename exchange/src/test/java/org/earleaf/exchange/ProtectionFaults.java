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
        String row = "Home,2012-07-05," + kind + "," + value + ",,,,,," + note + "\n";
        return folder.with("readings.csv", folder.text("readings.csv") + row).wider("readings.csv", COUNT, 7, cells);
    }

    static Stream<Fault> disease() {
        String at = "fields.csv, row 2, column ";
        return Stream.of(
                told("a rating beyond the scale", "10,,,", at + "disease_rating", "10", "1 to 9"),
                told("a rating in words", "good,,,", at + "disease_rating", "\"good\"", "a number"),
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
                        "120 of 100"),
                seen(
                        "one number of two",
                        "lesions",
                        "",
                        "gray leaf spot,58,,-3",
                        at + "plants",
                        "nothing",
                        "looked at"),
                seen(
                        "half a plant",
                        "lesions",
                        "",
                        "gray leaf spot,5.5,10,-3",
                        at + "positive",
                        "\"5.5\"",
                        "whole number"),
                seen(
                        "an unknown disease",
                        "lesions",
                        "",
                        "spots,58,100,-3",
                        at + "found",
                        "\"spots\"",
                        "gray leaf spot"),
                seen("a leaf in words", "lesions", "", "tar spot,58,100,low", at + "leaf", "\"low\"", "the ear leaf"),
                seen(
                        "a leaf under the ground",
                        "lesions",
                        "",
                        "tar spot,58,100,-20",
                        at + "leaf",
                        "-20",
                        "ear leaf (0)"),
                seen("a leaf of aphids", "insects", "60", "aphids,40,100,-3", at + "leaf", "nothing with insects"),
                seen("plants of a height", "height", "60", ",40,100,", at + "plants", "height", "lesions or insects"),
                seen(
                        "insects without a number on them",
                        "insects",
                        "",
                        "aphids,40,100,",
                        at + "value",
                        "an empty cell"),
                Fault.of(
                        "a note that cannot be",
                        t -> count(t, "lesions", "2", "gray leaf spot on 120 of 100 plants", ",,,"),
                        at + "note",
                        "120 of 100"),
                Fault.of(
                        "more than the whole leaf",
                        t -> count(t, "lesions", "2", "tar spot on 140 % of the ear leaf", ",,,"),
                        at + "note",
                        "140 %",
                        "0 to 100 %"));
    }

    private static Fault seen(String name, String kind, String value, String cells, String where, String... parts) {
        return Fault.of(name, t -> count(t, kind, value, "", cells), where, parts);
    }

    static Stream<Fault> rigs() {
        return Stream.of(Fault.of(
                "sprays in lower corn than it clears",
                t -> t.wider("rigs.csv", "spray_clearance_in", 2, "60"),
                "rigs.csv, row 2, column spray_clearance_in",
                "60, below the clearance"));
    }
}
