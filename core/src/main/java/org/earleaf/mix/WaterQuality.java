// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * What is dissolved in the water for a tank [mg/L].
 *
 * <pre>
 * hardness = 2.497 Ca + 4.118 Mg, as CaCO3                                    [mg/L]
 * ammonium sulfate = 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe      [lb/100 gal]
 *
 * Range  0 to a few thousand mg/L
 * Source Nalewaja & Matysiak 1993, as in state weed guides; hardness by molar masses
 * Check  RinseTest
 * </pre>
 */
public record WaterQuality(double calcium, double magnesium, double sodium, double potassium, double iron) {
    /** From here on weak acids (HRAC 1, 4, 9, 10) are hurt: state weed guides. */
    private static final double HARD = 200;

    private static final Pattern PART =
            Pattern.compile("(?i)(ca|mg|na|k|fe)\\s+(\\d{1,5}(?:\\.\\d+)?)(?:\\s*(?:ppm|mg/l))?");

    /** Reads "Ca 120, Mg 40, Na 30, K 5, Fe 0.5"; what is not named is taken as none. */
    public static WaterQuality parse(String text, Said where) {
        Map<String, Double> found = new HashMap<>();
        for (String part : text.split(",")) {
            Matcher m = PART.matcher(part.strip());
            if (!m.matches()
                    || found.putIfAbsent(m.group(1).toLowerCase(Locale.ROOT), Double.valueOf(m.group(2))) != null) {
                throw new EarleafException(Problem.of("water.unreadable", where, Said.text(part.strip())));
            }
        }
        return new WaterQuality(
                found.getOrDefault("ca", 0.0),
                found.getOrDefault("mg", 0.0),
                found.getOrDefault("na", 0.0),
                found.getOrDefault("k", 0.0),
                found.getOrDefault("fe", 0.0));
    }

    public double hardness() {
        return 2.497 * calcium + 4.118 * magnesium;
    }

    public boolean isHard() {
        return hardness() >= HARD;
    }

    /** Ammonium sulfate that ties up what is dissolved [kg/m3]; labels ask for more. */
    public double ammoniumSulfate_kgM3() {
        double lb100gal = .002 * potassium + .005 * sodium + .009 * calcium + .014 * magnesium + .042 * iron;
        return lb100gal * Units.KG_PER_LB / (100 * Units.M3_PER_GAL);
    }
}
