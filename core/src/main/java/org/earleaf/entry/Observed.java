// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.soil.SoilTest;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Units;

/**
 * What a person writes for a reading, turned into the inside unit of its kind ({@link Reading}); impossible values are
 * refused.
 */
public final class Observed {
    /** Bulk density [g/cm3] for a soil test given by area where the soil is not known: 1 ppm is 3.6 lb/ac a foot. */
    public static final double USUAL_BULK_DENSITY_GCM3 = 1.33;

    static final String VALUE = "value";
    static final String UNIT = "unit";

    private static final Pattern STAGE = Pattern.compile("\\s*(V|R|)\\s*(\\d{1,2}(?:\\.\\d{1,3})?|T|E)\\s*");
    private static final Set<String> COUNTS = Set.of("", "count", "per plant", "perplant", "/plant", "1/plant");
    private static final Set<String> OF_PLANTS = Set.of("%ofplants", "pctofplants");
    private static final Set<String> OF_LEAF = Set.of("%ofleaf", "pctofleaf", "%oftheearleaf", "%ofearleaf");
    private static final double VT = 30;

    private Observed() {}

    /** The units that a kind may carry. */
    public static List<String> units(Reading.Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> List.of("ppm", "mg/kg", "lb N/ac", "kg N/ha");
            case STAGE -> List.of("collars");
            case HEIGHT -> List.of("in", "cm", "ft", "m");
            case STAND -> List.of("plants/ac", "plants/ha", "plants/m2");
            case LESIONS -> List.of("per plant", "% of plants", "% of leaf");
            case INSECTS -> List.of("per plant", "count");
            case RAIN -> List.of("in", "mm");
            case MOISTURE, COVER -> List.of("%", "share");
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
            return stage(text, unit);
        }
        double value = NumberText.read(text, VALUE);
        double inside =
                switch (kind) {
                    case NITRATE, AMMONIUM -> soilTest(kind, value, unit, depth_mm, bulkDensity_gcm3);
                    case HEIGHT -> 100 * in(Dimension.LENGTH, kind, value, unit);
                    case STAND -> stand(kind, value, unit);
                    case RAIN -> in(Dimension.WATER_DEPTH, kind, value, unit);
                    case MOISTURE, COVER -> in(Dimension.SHARE, kind, value, unit);
                    case LESIONS -> by(kind, unit) == Scouted.By.PER_PLANT ? count(kind, value, unit) : value / 100;
                    default -> count(kind, value, unit);
                };
        double most = by(kind, unit) == Scouted.By.PER_PLANT ? most(kind) : 1;
        if (!(inside >= 0 && inside <= most)) {
            throw new EarleafException(Gathered.problem(
                    "reading.impossible",
                    VALUE,
                    (text + " " + unit).strip(),
                    "kind",
                    kind,
                    "most",
                    by(kind, unit) == Scouted.By.PER_PLANT ? told(kind, most) : Measure.SHARE.of(1)));
        }
        return inside;
    }

    /** What the value of such a reading counts. */
    public static Scouted.By by(Reading.Kind kind, String unit) {
        String plain = unit.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "");
        if (kind != Reading.Kind.LESIONS) {
            return Scouted.By.PER_PLANT;
        }
        return OF_PLANTS.contains(plain)
                ? Scouted.By.OF_PLANTS
                : OF_LEAF.contains(plain) ? Scouted.By.OF_LEAF : Scouted.By.PER_PLANT;
    }

    /** Leaf collars; VE is 0, VT is 30, R1 to R6 are 31 to 36. */
    private static double stage(String text, String unit) {
        Matcher m = STAGE.matcher(text.toUpperCase(Locale.ROOT));
        boolean collars =
                unit.isBlank() || unit.strip().toLowerCase(Locale.ROOT).startsWith("collar");
        if (!collars) {
            throw wrongUnit(Reading.Kind.STAGE, unit);
        }
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
        throw new EarleafException(Gathered.problem("reading.stage-unknown", VALUE, text.strip()));
    }

    private static double in(Dimension dimension, Reading.Kind kind, double value, String unit) {
        return dimension.findInside(value, unit).orElseThrow(() -> wrongUnit(kind, unit));
    }

    private static EarleafException wrongUnit(Reading.Kind kind, String unit) {
        return new EarleafException(
                Gathered.problem("reading.unit-unknown", UNIT, unit.strip(), "kind", kind, "units", units(kind)));
    }

    private static double soilTest(
            Reading.Kind kind, double value, String unit, double depth_mm, double bulkDensity_gcm3) {
        if (Dimension.CONCENTRATION.findInside(1, unit).isPresent()) {
            return value;
        }
        double kgHa = in(Dimension.MASS_RATE, kind, value, unit);
        if (Double.isNaN(depth_mm)) {
            throw new EarleafException(Gathered.problem("reading.depth-missing", UNIT, unit.strip(), "kind", kind));
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

    private static Object told(Reading.Kind kind, double most) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> Measure.CONCENTRATION.of(most);
            case HEIGHT -> Measure.HEIGHT.of(most);
            case STAND -> Measure.PLANTS.of(most);
            case RAIN -> Measure.RAIN.of(most);
            case MOISTURE, COVER -> Measure.SHARE.of(most);
            default -> most;
        };
    }

    /** Beyond it a reading is a slip of the pen or the unit; common practice, no source. */
    private static double most(Reading.Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM, HEIGHT -> 500;
            case STAND -> 30;
            case RAIN -> 400;
            case MOISTURE, COVER -> 1;
            default -> 10_000;
        };
    }
}
