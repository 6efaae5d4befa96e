// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.load.JarTest;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Cleanout;
import org.earleaf.mix.WaterQuality;
import org.earleaf.units.Figure;

/** What is to be known of a mix before it is poured, in sentences that commands, pages and sheets share. */
public final class MixTold {
    private static final double ML = 1e6;
    private static final double THOUSANDTHS = 1000;

    private MixTold() {}

    public static String hardness(WaterQuality water) {
        String ppm = Figure.text(water.hardness(), 3);
        return water.isHard() ? tell("mix.water-hard", "ppm", ppm) : tell("mix.water", "ppm", ppm);
    }

    /** Likewise, behind the name of the water. */
    public static String hardness(String source, WaterQuality water) {
        String ppm = Figure.text(water.hardness(), 3);
        return water.isHard()
                ? tell("mix.water-hard-of", "source", source, "ppm", ppm)
                : tell("mix.water-of", "source", source, "ppm", ppm);
    }

    public static String conditioner(WaterQuality water, double volume_m3, boolean metric) {
        Amount sulfate = new Amount(water.ammoniumSulfate_kgM3() * volume_m3, true, "lb");
        return tell("mix.conditioner", "amount", Amounts.text(sulfate, metric));
    }

    /** What goes in the jar, in the order of mixing. */
    public static String jar(JarTest jar) {
        return tell(
                "mix.jar",
                "volume",
                Figure.text(jar.jar_m3() * ML, 3),
                "products",
                jar.amounts().stream()
                        .map(g -> tell(
                                "mix.jar-product",
                                "amount",
                                Figure.text(g.amount().inUnit(), 3),
                                "unit",
                                g.amount().unit(),
                                "product",
                                g.product()))
                        .toList());
    }

    /** How many rinses bring the rest below the aim; the label's own cleaning stands above it. */
    public static List<String> rinses(Cleanout clean, boolean metric) {
        List<String> lines = new ArrayList<>();
        if (clean.heel_m3() > 0) {
            String code = clean.isEnough() ? "mix.rinses" : "mix.rinses-not-enough";
            lines.add(tell(
                    code,
                    "rinses",
                    clean.rinses(),
                    "rinse",
                    Amounts.volume(clean.rinse_m3(), metric),
                    "left",
                    Figure.text(THOUSANDTHS * clean.left(), 2),
                    "heel",
                    Amounts.volume(clean.heel_m3(), metric),
                    "aim",
                    Figure.text(THOUSANDTHS * clean.aim(), 2)));
        }
        return lines;
    }
}
