// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

/**
 * How strong a product goes in: so much on ground, or so much in the finished liquid. Per cent is by volume of the
 * finished liquid.
 *
 * @param onGround whether {@code inside} counts per m2 of ground (else per m3 of finished liquid)
 * @param isMass kg, else m3
 * @param inside m3/m2, kg/m2, m3/m3 or kg/m3
 * @param rate as entered
 * @param rateUnit as entered
 * @param unit in which it is measured out
 */
public record Dose(boolean onGround, boolean isMass, double inside, double rate, String rateUnit, String unit) {
    private static final Pattern PER = Pattern.compile("(.+?)/(\\d*)(.+)");
    private static final double M2_PER_HA = 10_000;

    /**
     * Reads a rate with its unit.
     *
     * @param nitrogen what the product carries, null when it is no nitrogen fertiliser
     * @param where file, row and column for messages
     */
    public static Dose parse(
            double rate, String rateUnit, MixForm form, @Nullable NitrogenProduct nitrogen, Said where) {
        if (!(rate > 0) || Double.isInfinite(rate)) {
            throw new EarleafException(Problem.of("dose.rate-missing", where, Said.of("found.number", "number", rate)));
        }
        if (nitrogen != null && nitrogen.name().toLowerCase(Locale.ROOT).endsWith("ammonia")) {
            throw new EarleafException(Problem.of("dose.ammonia", where, Said.text(nitrogen.name())));
        }
        String unit = rateUnit.toLowerCase(Locale.ROOT).replaceAll("[\\s_]", "");
        if (unit.equals("%") || unit.equals("%v/v") || unit.equals("pct") || unit.equals("%vv")) {
            return new Dose(false, false, percent(rate, where) / 100, rate, rateUnit, "gal").fitting(form, where);
        }
        if (unit.equals("ppm")) {
            // A millionth: mL of a liquid, g of a dry product in a cubic metre.
            boolean dry = form.isDry();
            return new Dose(false, dry, rate * (dry ? 1e-3 : 1e-6), rate, rateUnit, dry ? "lb" : "gal");
        }
        Matcher per = PER.matcher(unit.equals("gpa") ? "gal/ac" : unit);
        if (!per.matches()) {
            throw unknown(rateUnit, where);
        }
        if (per.group(1).endsWith("n") && per.group(2).isEmpty()) {
            Optional<Double> kgHa = Dimension.MASS_RATE.findInside(rate, unit);
            if (kgHa.isPresent()) {
                return ofNitrogen(kgHa.get(), rate, rateUnit, nitrogen, where);
            }
        }
        return ofParts(rate, rateUnit, per, where).asVolume(nitrogen).fitting(form, where);
    }

    private static Dose ofParts(double rate, String rateUnit, Matcher per, Said where) {
        double count = per.group(2).isEmpty() ? 1 : Double.parseDouble(per.group(2));
        Optional<Double> m3 = Dimension.VOLUME.findInside(1, per.group(1));
        Optional<Double> kg = Dimension.MASS.findInside(1, per.group(1));
        Optional<Double> ground_m2 = Dimension.AREA.findInside(count, per.group(3));
        Optional<Double> liquid_m3 = Dimension.VOLUME.findInside(count, per.group(3));
        if (m3.isEmpty() && kg.isEmpty() || ground_m2.isEmpty() && liquid_m3.isEmpty()) {
            throw unknown(rateUnit, where);
        }
        boolean mass = m3.isEmpty();
        double amount = (mass ? kg : m3).orElseThrow();
        double base = ground_m2.or(() -> liquid_m3).orElseThrow();
        return new Dose(ground_m2.isPresent(), mass, rate * amount / base, rate, rateUnit, spoken(per.group(1)));
    }

    private static Dose ofNitrogen(
            double n_kgHa, double rate, String rateUnit, @Nullable NitrogenProduct nitrogen, Said where) {
        if (nitrogen == null) {
            throw new EarleafException(Problem.of(
                    "dose.nitrogen-unknown", where, Said.of("found.rate-without-nitrogen", "unit", rateUnit)));
        }
        if (!nitrogen.isLiquid()) {
            double kgM2 = n_kgHa / nitrogen.nitrogen_share() / M2_PER_HA;
            return new Dose(true, true, kgM2, rate, rateUnit, "lb");
        }
        return new Dose(true, false, nitrogen.litresHa(n_kgHa) * 1e-7, rate, rateUnit, "gal");
    }

    /** A weight of a nitrogen solution as its volume, since its density is known; ounces stay as they are. */
    private Dose asVolume(@Nullable NitrogenProduct nitrogen) {
        if (!isMass || unit.equals("oz") || nitrogen == null || !nitrogen.isLiquid()) {
            return this;
        }
        return new Dose(onGround, false, inside / (nitrogen.density_kgL() * 1000), rate, rateUnit, "gal");
    }

    /** Refuses units that do not suit what the product is. */
    private Dose fitting(MixForm form, Said where) {
        if (form.isLiquid() && isMass) {
            throw new EarleafException(Problem.of(
                    "dose.weight-of-liquid",
                    where,
                    unit.equals("oz")
                            ? Said.of("found.ounces-of-liquid", "unit", rateUnit, "form", form.code())
                            : Said.of("found.weight-of-liquid", "unit", rateUnit, "form", form.code())));
        }
        if (form.isDry() && !isMass) {
            throw new EarleafException(Problem.of(
                    "dose.volume-of-dry",
                    where,
                    Said.of("found.volume-of-dry", "unit", rateUnit, "form", form.code())));
        }
        return this;
    }

    private static double percent(double rate, Said where) {
        if (rate > 100) {
            throw new EarleafException(Problem.of("dose.percent", where, Said.of("found.percent", "number", rate)));
        }
        return rate;
    }

    private static EarleafException unknown(String rateUnit, Said where) {
        return new EarleafException(Problem.of("dose.unit-unknown", where, Said.text(rateUnit)));
    }

    private static String spoken(String word) {
        return switch (word) {
            case "floz" -> "fl oz";
            case "l" -> "L";
            case "ml" -> "mL";
            default -> word;
        };
    }

    /** How much goes in a volume of finished liquid that goes on at a rate; a load, or a jar for a test. */
    public Amount in(double volume_m3, double rate_m3m2) {
        double base = onGround ? volume_m3 / rate_m3m2 : volume_m3;
        return new Amount(inside * base, isMass, unit);
    }

    /** What it comes to on ground [m3/m2 or kg/m2] when the finished liquid goes on at this rate. */
    public double onGround(double rate_m3m2) {
        return onGround ? inside : inside * rate_m3m2;
    }
}
