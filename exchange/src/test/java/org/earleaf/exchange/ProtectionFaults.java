// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in what is told of disease, labels and scouting. */
final class ProtectionFaults {
    static final String DISEASE = "disease_rating,gray_leaf_spot_rating,disease_history,wet_place";
    static final String LABEL = "kind,group,label_wind_min_mph,label_wind_max_mph,label_temperature_max_f,"
            + "label_rainfast_h,label_inversion_ban,label_droplet_min,label_pre_harvest_d,label_stage_first,"
            + "label_stage_last";
    static final String COUNT = "found,positive,plants,leaf";
    private static final String GOOD_LABEL = "fungicide,11+3,3,10,none,2,yes,M,30,VT,R4";

    private ProtectionFaults() {}

    /** The folder with disease told of its first field. */
    static TinyFolder disease(TinyFolder folder, String cells) {
        return folder.wider("fields.csv", DISEASE, 2, cells);
    }

    /** The folder with the label of its second product. */
    static TinyFolder label(TinyFolder folder, String cells) {
        return folder.wider("products.csv", LABEL, 3, cells);
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

    static Stream<Fault> labels() {
        String at = "products.csv, row 3, column ";
        return Stream.of(
                limit("a kind of product", "fungicide", "spray", at + "kind", "\"spray\"", "fungicide, insecticide"),
                limit("a group in words", "11+3", "strobi", at + "group", "\"strobi\"", "11+3"),
                limit("wind in words", ",3,10,", ",3,light,", at + "label_wind_max_mph", "\"light\"", "a number"),
                limit("a storm allowed", ",3,10,", ",3,60,", at + "label_wind_max_mph", "60", "0 to 40 mph"),
                limit("wind turned round", ",3,10,", ",12,10,", at + "label_wind_max_mph", "10, below", "in order"),
                limit("hot beyond air", "none,2", "150,2", at + "label_temperature_max_f", "150"),
                limit("a week to rainfast", "none,2", "none,168", at + "label_rainfast_h", "168", "0 to 72"),
                limit(
                        "an inversion perhaps",
                        ",yes,",
                        ",perhaps,",
                        at + "label_inversion_ban",
                        "\"perhaps\"",
                        "yes, no"),
                limit("droplets by size", ",M,", ",250,", at + "label_droplet_min", "\"250\"", "XF VF F M", "none"),
                limit("days before harvest", ",30,VT", ",-30,VT", at + "label_pre_harvest_d", "-30", "0 to 365"),
                limit("a stage in words", ",R4", ",dough", at + "label_stage_last", "\"dough\"", "VT", "none"),
                limit("stages turned round", "VT,R4", "R4,VT", at + "label_stage_last", "VT, below", "in order"));
    }

    private static Fault limit(String name, String from, String to, String where, String... parts) {
        return Fault.of(name, t -> label(t, GOOD_LABEL.replace(from, to)), where, parts);
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
