// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.earleaf.units.Units.HA_PER_AC;
import static org.earleaf.units.Units.KGHA_PER_BUAC;
import static org.earleaf.units.Units.KGHA_PER_LBAC;
import static org.earleaf.units.Units.KG_PER_LB;
import static org.earleaf.units.Units.L_PER_GAL;
import static org.earleaf.units.Units.M2_PER_AC;
import static org.earleaf.units.Units.MM_PER_IN;
import static org.earleaf.units.Units.MS_PER_MPH;
import static org.earleaf.units.Units.M_PER_FT;
import static org.earleaf.units.Units.M_PER_MI;
import static org.earleaf.units.Units.PA_PER_PSI;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A kind of quantity with its unit inside Earleaf and every unit that people may write for it. Unit words are compared
 * without case and inner blanks ("Gal / ac" is gal/ac).
 */
public enum Dimension {
    LENGTH(
            "m",
            "m 1 cm .01 mm .001 km 1000 in .0254 inch .0254 inches .0254 ft " + M_PER_FT + " feet " + M_PER_FT + " mi "
                    + M_PER_MI),
    /** Rain, soil water, irrigation. */
    WATER_DEPTH("mm", "mm 1 cm 10 in " + MM_PER_IN + " inch " + MM_PER_IN + " inches " + MM_PER_IN),
    AREA("m2", "m2 1 ha 10000 ac " + M2_PER_AC + " acre " + M2_PER_AC + " acres " + M2_PER_AC),
    SPEED("m/s", "m/s 1 km/h " + 1 / 3.6 + " mph " + MS_PER_MPH + " knots " + 1852.0 / 3600),
    VOLUME(
            "m3",
            "m3 1 l .001 ml .000001 gal " + L_PER_GAL / 1e3 + " qt " + L_PER_GAL / 4e3 + " pt " + L_PER_GAL / 8e3
                    + " floz " + L_PER_GAL / 128e3),
    MASS("kg", "kg 1 g .001 t 1000 lb " + KG_PER_LB + " oz " + KG_PER_LB / 16 + " ton " + 2000 * KG_PER_LB),
    FLOW("m3/s", "m3/s 1 l/min " + 1e-3 / 60 + " l/s .001 gal/min " + L_PER_GAL / 60e3 + " gpm " + L_PER_GAL / 60e3),
    PRESSURE("Pa", "pa 1 kpa 1000 bar 100000 psi " + PA_PER_PSI),
    /** Carrier or liquid product on ground. */
    VOLUME_RATE("m3/m2", volumeRates()),
    /** Dry product or nutrient on ground; "lb N/ac" and "kg N/ha" are mass of the element. */
    MASS_RATE(
            "kg/ha",
            "kg/ha 1 kgn/ha 1 g/ha .001 t/ha 1000 lb/ac " + KGHA_PER_LBAC + " lbn/ac " + KGHA_PER_LBAC + " oz/ac "
                    + KGHA_PER_LBAC / 16 + " ton/ac " + 2000 * KGHA_PER_LBAC),
    /** Corn as traded, at 15.5 % moisture. */
    GRAIN("kg/ha", "bu/ac " + KGHA_PER_BUAC + " kg/ha 1 t/ha 1000"),
    DENSITY("kg/m3", "kg/m3 1 kg/l 1000 g/cm3 1000 lb/gal " + KG_PER_LB / L_PER_GAL * 1e3),
    TEMPERATURE("°C", "c 1 °c 1 f " + 1 / 1.8 + " °f " + 1 / 1.8),
    RADIATION("MJ/m2", "mj/m2 1 mj/m2/d 1 wh/m2 .0036 kwh/m2 3.6 w/m2 .0864 langley .04184 ly .04184"),
    /** Soil test nitrogen. */
    CONCENTRATION("mg/kg", "mg/kg 1 ppm 1"),
    SHARE("1", "% .01 pct .01 share 1 1 1");

    private final String inside;
    private final Map<String, Double> factors = new LinkedHashMap<>();

    Dimension(String inside, String pairs) {
        this.inside = inside;
        String[] words = pairs.split(" ");
        for (int k = 0; k < words.length; k += 2) {
            factors.put(words[k], Double.parseDouble(words[k + 1]));
        }
    }

    private static String volumeRates() {
        StringBuilder pairs = new StringBuilder("m3/m2 1 mm .001");
        String[] volumes = {
            "l 1",
            "ml .001",
            "gal " + L_PER_GAL,
            "qt " + L_PER_GAL / 4,
            "pt " + L_PER_GAL / 8,
            "floz " + L_PER_GAL / 128
        };
        for (String volume : volumes) {
            String[] word = volume.split(" ");
            double litres = Double.parseDouble(word[1]);
            pairs.append(' ').append(word[0]).append("/ha ").append(litres / 1e7);
            pairs.append(' ').append(word[0]).append("/ac ").append(litres / 1e7 / HA_PER_AC);
        }
        return pairs.append(" gpa ").append(L_PER_GAL / 1e7 / HA_PER_AC).toString();
    }

    /** The unit used inside Earleaf. */
    public String inside() {
        return inside;
    }

    /** Every unit word that is understood, for messages. */
    public String words() {
        return String.join(", ", factors.keySet());
    }

    /** Value in the inside unit, or empty when the unit is none of this dimension. */
    public Optional<Double> findInside(double value, String unit) {
        Double factor = factors.get(normal(unit));
        if (factor == null) {
            return Optional.empty();
        }
        boolean fahrenheit = this == TEMPERATURE && normal(unit).endsWith("f");
        return Optional.of(fahrenheit ? Units.celsius(value) : value * factor);
    }

    /** Value of an inside amount in the given unit; the unit must be one of {@link #words()}. */
    public double outside(double inside, String unit) {
        Double factor = factors.get(normal(unit));
        if (factor == null) {
            throw EarleafException.coded("unit.unknown", "unit", unit, "units", words());
        }
        boolean fahrenheit = this == TEMPERATURE && normal(unit).endsWith("f");
        return fahrenheit ? Units.fahrenheit(inside) : inside / factor;
    }

    private static String normal(String unit) {
        return unit.toLowerCase(Locale.ROOT)
                .replaceAll("[\\s_]", "")
                .replace("²", "2")
                .replace("liter", "l");
    }
}
