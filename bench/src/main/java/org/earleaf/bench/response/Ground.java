// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.soil.Texture;

/** The four soils of the reference run: one texture to 60 in, organic matter by layer, pH 6.5. */
public enum Ground {
    SILT_LOAM("silt loam", 20, 24, List.of(3.5, 3.5, 2.8, 1.5, .8, .4), 18, 13, 75),
    SILTY_CLAY_LOAM("silty clay loam", 10, 35, List.of(5., 5., 4., 2.2, 1.2, .6), 26, 13, 78),
    LOAM("loam", 40, 20, List.of(2.5, 2.5, 2., 1., .6, .3), 14, 13, 75),
    SANDY_LOAM("sandy loam", 65, 10, List.of(1.2, 1.2, .8, .4, .2, .1), 8, 60, 67);

    private final String word;
    private final double sand_pct;
    private final double clay_pct;
    private final List<Double> om_pct;
    private final double cec_cmolKg;
    private final double drainMax_mm;
    private final double curveNumber;

    Ground(
            String word,
            double sand_pct,
            double clay_pct,
            List<Double> om_pct,
            double cec_cmolKg,
            double drainMax_mm,
            double curveNumber) {
        this.word = word;
        this.sand_pct = sand_pct;
        this.clay_pct = clay_pct;
        this.om_pct = om_pct;
        this.cec_cmolKg = cec_cmolKg;
        this.drainMax_mm = drainMax_mm;
        this.curveNumber = curveNumber;
    }

    static Ground of(String word) {
        return java.util.Arrays.stream(values())
                .filter(v -> v.word.equals(word))
                .findFirst()
                .orElseThrow();
    }

    public String word() {
        return word;
    }

    double drainMax_mm() {
        return drainMax_mm;
    }

    double curveNumber() {
        return curveNumber;
    }

    SoilProfile soil() {
        List<SoilWater> water = new ArrayList<>();
        List<Double> density = new ArrayList<>();
        for (double om : om_pct) {
            SoilWater w = SoilWater.ofTexture(sand_pct, clay_pct, om);
            water.add(w);
            density.add(w.bulkDensity_gcm3());
        }
        List<Double> ph = Collections.nCopies(SoilProfile.LAYERS, 6.5);
        List<Double> cec = Collections.nCopies(SoilProfile.LAYERS, cec_cmolKg);
        return new SoilProfile(
                water, density, om_pct, ph, cec, Texture.findByWord(word).orElseThrow());
    }
}
