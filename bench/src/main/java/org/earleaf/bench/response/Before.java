// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.List;
import org.earleaf.field.PreviousCrop;

/** What grew before, and what it left: residue [kg/ha], its carbon to nitrogen and cover, nitrate by layer [mg/kg]. */
public enum Before {
    CORN("corn", PreviousCrop.CORN, 9000, 60, .5, List.of(6., 5., 4., 3., 2., 1.5)),
    SOYBEAN("soybean", PreviousCrop.SOYBEAN, 3500, 30, .3, List.of(8., 7., 6., 4., 3., 2.));

    private final String word;
    private final PreviousCrop crop;
    private final double residue_kgHa;
    private final double cn;
    private final double cover;
    private final List<Double> nitrate_ppm;

    Before(String word, PreviousCrop crop, double residue_kgHa, double cn, double cover, List<Double> nitrate_ppm) {
        this.word = word;
        this.crop = crop;
        this.residue_kgHa = residue_kgHa;
        this.cn = cn;
        this.cover = cover;
        this.nitrate_ppm = nitrate_ppm;
    }

    static Before of(String word) {
        return java.util.Arrays.stream(values())
                .filter(v -> v.word.equals(word))
                .findFirst()
                .orElseThrow();
    }

    public String word() {
        return word;
    }

    PreviousCrop crop() {
        return crop;
    }

    double residue_kgHa() {
        return residue_kgHa;
    }

    double cn() {
        return cn;
    }

    double cover() {
        return cover;
    }

    List<Double> nitrate_ppm() {
        return nitrate_ppm;
    }
}
