// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.soil.SoilTest;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;

/**
 * What a person writes for a reading, turned into the inside unit of its kind ({@link Reading}); impossible values are
 * refused.
 */
public final class Observed {
    /** Bulk density [g/cm3] for a soil test given by area where the soil is not known: 1 ppm is 3.6 lb/ac a foot. */
    public static final double USUAL_BULK_DENSITY_GCM3 = 1.33;

    private static final Pattern STAGE = Pattern.compile("\\s*(V|R|)\\s*(\\d{1,2}(?:\\.\\d+)?|T|E)\\s*");
    private static final Set<String> COUNTS = Set.of("", "count", "per plant", "perplant", "/plant", "1/plant");
    private static final double VT = 30;

    private Observed() {}

    /** Text of the units that a kind may carry. */
    public static String units(Reading.Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> "ppm, mg/kg, lb N/ac, kg N/ha";
            case STAGE -> "collars, or empty";
            case HEIGHT -> "in, cm, ft, m";
            case STAND -> "plants/ac, plants/ha, plants/m2";
            case LESIONS, INSECTS -> "per plant, count, or empty";
            case RAIN -> "in, mm";
            case MOISTURE, COVER -> "%, share";
        };
    }

    /**
     * Value in the inside unit.
     *
     * @param text number, or a stage such as V9, VT, R1
     * @param depth_mm thickness of soil sampled, NaN when not given; needed for a soil test by area
     * @param bulkDensity_gcm3 of that soil
     */
    public static double inside(Reading.Kind kind, String text, String unit, double depth_mm, double bulkDensity_gcm3) {
        if (kind == Reading.Kind.STAGE) {
            return stage(text);
        }
        double value = number(text);
        double inside =
                switch (kind) {
                    case NITRATE, AMMONIUM -> soilTest(kind, value, unit, depth_mm, bulkDensity_gcm3);
                    case HEIGHT -> 100 * in(Dimension.LENGTH, kind, value, unit);
                    case STAND -> stand(kind, value, unit);
                    case RAIN -> in(Dimension.WATER_DEPTH, kind, value, unit);
                    case MOISTURE, COVER -> in(Dimension.SHARE, kind, value, unit);
                    default -> count(kind, value, unit);
                };
        return possible(kind, text, unit, inside);
    }

    private static double number(String text) {
        try {
            double value = Double.parseDouble(text.trim());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw EarleafException.of("value", "\"" + text + "\"", "a number", "Write the number alone.");
    }

    /** Leaf collars; VE is 0, VT is 30, R1 to R6 are 31 to 36. */
    private static double stage(String text) {
        Matcher m = STAGE.matcher(text.toUpperCase(Locale.ROOT));
        if (m.matches()) {
            String letter = m.group(1);
            String rest = m.group(2);
            if (rest.equals("T") || rest.equals("E")) {
                if (letter.equals("V")) {
                    return rest.equals("T") ? VT : 0;
                }
            } else {
                double number = Double.parseDouble(rest);
                if (letter.equals("R") && number >= 1 && number <= 6) {
                    return VT + number;
                }
                if (!letter.equals("R") && number <= 24) {
                    return number;
                }
            }
        }
        throw EarleafException.of(
                "stage",
                "\"" + text + "\"",
                "leaf collars 0 to 24, or VE, V1 to V24, VT, R1 to R6",
                "Write it like V9.");
    }

    private static double in(Dimension dimension, Reading.Kind kind, double value, String unit) {
        return dimension.findInside(value, unit).orElseThrow(() -> wrongUnit(kind, unit));
    }

    private static EarleafException wrongUnit(Reading.Kind kind, String unit) {
        String found = unit.isBlank() ? "no unit" : "the unit \"" + unit + "\"";
        return EarleafException.of(
                "unit of " + kind.word(), found, "one of " + units(kind), "Write the unit of the number.");
    }

    private static double soilTest(
            Reading.Kind kind, double value, String unit, double depth_mm, double bulkDensity_gcm3) {
        if (Dimension.CONCENTRATION.findInside(1, unit).isPresent()) {
            return value;
        }
        double kgHa = in(Dimension.MASS_RATE, kind, value, unit);
        if (Double.isNaN(depth_mm)) {
            throw EarleafException.of(
                    "unit of " + kind.word(),
                    unit + " without a depth",
                    "the depth sampled beside an amount by area",
                    "Give the depth from and to, or write ppm.");
        }
        return SoilTest.mgKg(kgHa, bulkDensity_gcm3, depth_mm);
    }

    private static double stand(Reading.Kind kind, double value, String unit) {
        return switch (unit.toLowerCase(Locale.ROOT).replaceAll("\\s+", "")) {
            case "plants/ac", "/ac", "ac" -> value / Units.M2_PER_AC;
            case "plants/ha", "/ha", "ha" -> value / 10_000;
            case "plants/m2", "/m2", "m2", "plants/m²" -> value;
            default -> throw wrongUnit(kind, unit);
        };
    }

    private static double count(Reading.Kind kind, double value, String unit) {
        if (!COUNTS.contains(unit.trim().toLowerCase(Locale.ROOT))) {
            throw wrongUnit(kind, unit);
        }
        return value;
    }

    private static double possible(Reading.Kind kind, String text, String unit, double inside) {
        double most =
                switch (kind) {
                    case NITRATE, AMMONIUM -> 500;
                    case HEIGHT -> 500;
                    case STAND -> 30;
                    case RAIN -> 400;
                    case MOISTURE, COVER -> 1;
                    default -> 10_000;
                };
        if (inside < 0 || inside > most) {
            throw EarleafException.of(
                    "value of " + kind.word(),
                    text + " " + unit,
                    "0 to " + (long) most + " " + insideUnit(kind),
                    "Check the number and its unit.");
        }
        return inside;
    }

    private static String insideUnit(Reading.Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> "mg/kg";
            case HEIGHT -> "cm";
            case STAND -> "plants/m2";
            case RAIN -> "mm";
            case MOISTURE, COVER -> "(0 to 100 %)";
            default -> "a plant";
        };
    }
}
