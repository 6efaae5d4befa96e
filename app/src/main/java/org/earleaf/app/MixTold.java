// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
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
        return "Hardness " + Figure.text(water.hardness(), 3) + " ppm as CaCO3"
                + (water.isHard() ? ": hard; weak acids (HRAC 1, 4, 9, 10) are hurt by it." : ".");
    }

    public static String conditioner(WaterQuality water, double volume_m3, boolean metric) {
        return Amounts.text(new Amount(water.ammoniumSulfate_kgM3() * volume_m3, true, "lb"), metric)
                + " ammonium sulfate ties up what is dissolved; a label that asks for more wins.";
    }

    /** What goes in the jar, in the order of mixing. */
    public static String jar(JarTest jar) {
        return "In " + Figure.text(jar.jar_m3() * ML, 3) + " mL: "
                + jar.amounts().stream()
                        .map(g -> Figure.text(g.amount().inUnit(), 3) + " "
                                + g.amount().unit() + " " + g.product())
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** How many rinses bring the rest below the aim; the label's own cleaning stands above it. */
    public static List<String> rinses(Cleanout clean, boolean metric) {
        List<String> lines = new ArrayList<>();
        if (clean.heel_m3() > 0) {
            lines.add(clean.rinses() + " rinses of " + Amounts.volume(clean.rinse_m3(), metric) + " leave "
                    + Figure.text(THOUSANDTHS * clean.left(), 2) + " thousandths of the mix in "
                    + Amounts.volume(clean.heel_m3(), metric) + " that do not drain"
                    + (clean.isEnough() ? "" : ": not enough") + " (aim "
                    + Figure.text(THOUSANDTHS * clean.aim(), 2)
                    + " thousandths: assumption; the label's clean-out decides).");
        }
        return lines;
    }
}
