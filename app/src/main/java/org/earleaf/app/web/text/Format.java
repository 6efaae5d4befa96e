// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.text;

import static org.earleaf.app.words.Words.tell;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Reason;
import org.earleaf.outlook.Spread;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * How numbers and dates are written, in US or metric units: rates to 1 lb or 0.1 gal, money to $1 (a day's wait to
 * $0.10), heights to 1 in. The one place where pages leave SI.
 */
public enum Format {
    US,
    METRIC;

    private static final double M2_PER_HA = 10_000;
    private static final double CM_PER_IN = Units.MM_PER_IN / 10;

    public static Format of(String units) {
        return "metric".equalsIgnoreCase(units) ? METRIC : US;
    }

    /** A sentence in these units. */
    public String say(Said said) {
        return Words.in(isMetric()).say(said);
    }

    /** A sentence with its ranks. */
    public Markup markup(Said said) {
        return new Markup(words().html(said));
    }

    /** The word of a constant. */
    public String say(Enum<?> constant) {
        return Words.in(isMetric()).say(constant);
    }

    /** A remark with its place. */
    public String say(Flag flag) {
        return say(flag.where()) + ": " + say(flag.what()) + ".";
    }

    /** The sentences of some reasons. */
    public List<String> say(List<? extends Reason> reasons) {
        return reasons.stream().map(r -> say(r.said())).toList();
    }

    public boolean isMetric() {
        return this == METRIC;
    }

    /** Sentences in these units. */
    public Words words() {
        return Words.in(isMetric());
    }

    /** A number to so many decimals with a true minus sign; never "-0". */
    public static String number(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return tell("page.format.not-known");
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = String.format(Locale.US, "%,." + decimals + "f", rounded.abs());
        return rounded.signum() < 0 ? "\u2212" + digits : digits;
    }

    /** Of ten futures. */
    public static int inTen(double share) {
        return BigDecimal.valueOf(10 * share).setScale(0, RoundingMode.HALF_UP).intValue();
    }

    /** "9 of 10". */
    public static String chance(double share) {
        return tell("page.format.of-10", "tenths", inTen(share));
    }

    /** Kilograms a hectare in one pound an acre, or one. */
    public double perNitrogenUnit_kgHa() {
        return this == US ? Units.KGHA_PER_LBAC : 1;
    }

    public double nitrogenValue(double kgHa) {
        return this == US ? Units.lbAc(kgHa) : kgHa;
    }

    public String nitrogen(double kgHa) {
        return number(nitrogenValue(kgHa), 0);
    }

    public String nitrogenFine(double kgHa) {
        return number(nitrogenValue(kgHa), 1);
    }

    public String nitrogenUnit() {
        return this == US ? "lb N/ac" : "kg N/ha";
    }

    /** Pounds or kilograms, where "an acre" stands in the heading. */
    public String massUnit() {
        return this == US ? "lb" : "kg";
    }

    public String areaName() {
        return this == US ? tell("page.format.an-acre") : tell("page.format.a-hectare");
    }

    public String area(double ha) {
        return number(areaValue(ha), this == US ? 0 : 1);
    }

    public double areaValue(double ha) {
        return this == US ? ha / Units.HA_PER_AC : ha;
    }

    public String areaUnit() {
        return this == US ? "ac" : "ha";
    }

    public double moneyValue(double usdHa) {
        return this == US ? usdHa * Units.HA_PER_AC : usdHa;
    }

    /** Money on an acre or hectare to $1, without the sign. */
    public String money(double usdHa) {
        return number(moneyValue(usdHa), 0);
    }

    public String moneyFine(double usdHa) {
        double value = moneyValue(usdHa);
        return (value < 0 ? "\u2212$" : "$") + number(value < 0 ? -value : value, 2);
    }

    public String moneyUnit() {
        return this == US ? "$/ac" : "$/ha";
    }

    /** "(11 to 102)". */
    public String moneyRange(double low_usdHa, double high_usdHa) {
        return tell("page.format.to-2", "money", money(low_usdHa), "money2", money(high_usdHa));
    }

    public double lengthValue(double cm) {
        return this == US ? cm / CM_PER_IN : cm;
    }

    public String length(double cm) {
        return number(lengthValue(cm), 0);
    }

    /** Width of a boom or bar with its unit. */
    public String width(double m) {
        return this == US ? tell("page.format.ft", "number", number(m / Units.M_PER_FT, 0)) : number(m, 1) + " m";
    }

    public String lengthUnit() {
        return this == US ? "in" : "cm";
    }

    /** Height with its spread. */
    public Markup height(Spread cm) {
        return new Say()
                .text(length(cm.p50()))
                .unit(lengthUnit())
                .range(tell("page.format.to-3", "length", length(cm.p10()), "length2", length(cm.p90())))
                .done();
    }

    public String rain(double mm) {
        return this == US ? number(Units.inches(mm), 1) : number(mm, 0);
    }

    public String rainUnit() {
        return this == US ? "in" : "mm";
    }

    public String temperature(double celsius) {
        return number(this == US ? Units.fahrenheit(celsius) : celsius, 0);
    }

    public String temperatureUnit() {
        return this == US ? "°F" : "°C";
    }

    public String yield(double dry_kgHa) {
        return this == US
                ? number(Units.buAc(dry_kgHa), 0)
                : number(dry_kgHa / Units.DRY_SHARE_OF_TRADE_CORN / 1000, 1);
    }

    /** Yield to a tenth of a bushel, or to 10 kg. */
    public String yieldFine(double dry_kgHa) {
        return this == US
                ? number(Units.buAc(dry_kgHa), 1)
                : number(dry_kgHa / Units.DRY_SHARE_OF_TRADE_CORN / 1000, 2);
    }

    /** Bushels an acre or a hectare, which prices are told by in either unit. */
    public String bushelsFine(double dry_kgHa) {
        return number(this == US ? Units.buAc(dry_kgHa) : Units.buAc(dry_kgHa) / Units.HA_PER_AC, 1);
    }

    /** "$0.52/lb N". */
    public String nitrogenPrice(double usdKg) {
        return this == US ? "$" + number(usdKg * Units.KG_PER_LB, 2) + "/lb N" : "$" + number(usdKg, 2) + "/kg N";
    }

    public String yieldUnit() {
        return this == US ? "bu/ac" : "t/ha";
    }

    /** Amount of product on ground, digits and unit apart. */
    public String product(double rate, boolean liquid) {
        double perAcre = liquid ? rate / Units.LHA_PER_GALAC : Units.lbAc(rate);
        return number(this == US ? perAcre : rate, liquid ? 1 : 0);
    }

    public String productUnit(boolean liquid) {
        if (this == US) {
            return liquid ? "gal/ac" : "lb/ac";
        }
        return liquid ? "L/ha" : "kg/ha";
    }

    /** Plants on an acre (to 100) or a hectare. */
    public String plants(double perM2) {
        double value = this == US ? perM2 * Units.M2_PER_AC : perM2 * M2_PER_HA;
        return number(new BigDecimal(value).round(new MathContext(3)).doubleValue(), 0);
    }
}
