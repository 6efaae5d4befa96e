// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.text;

import static org.earleaf.app.words.Words.tell;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Reason;
import org.earleaf.outlook.Spread;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * Which measure a figure of a page is and to how many decimals it stands there: rates to 1 lb or 0.1 gal, money to $1, a
 * day's wait to $0.01, heights to 1 in. How a number, a unit or a date is written is the matter of {@link Words}.
 */
public enum Format {
    US,
    METRIC;

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

    /** A unit as it is typed: the same in every language, since it is read again. */
    public String typed(String us, String metric) {
        return this == US ? us : metric;
    }

    /** A number to so many decimals with a true minus sign; never "-0". */
    public static String number(double value, int decimals) {
        return Words.here().number(value, decimals);
    }

    /** Kilograms a hectare in one pound an acre, or one. */
    public double perNitrogenUnit_kgHa() {
        return 1 / nitrogenValue(1);
    }

    public double nitrogenValue(double kgHa) {
        return words().value(Measure.NITROGEN_RATE.of(kgHa));
    }

    public String nitrogen(double kgHa) {
        return words().number(Measure.NITROGEN_RATE.of(kgHa), 0);
    }

    public String nitrogenFine(double kgHa) {
        return words().number(Measure.NITROGEN_RATE.of(kgHa), 1);
    }

    public String nitrogenUnit() {
        return words().unit(Measure.NITROGEN_RATE);
    }

    /** Pounds or kilograms, where "an acre" stands in the heading. */
    public String massUnit() {
        return words().unit(Measure.MASS);
    }

    public String areaName() {
        return words().say("page.format.an-area");
    }

    public String area(double ha) {
        return words().form(Measure.AREA.of(ha), "number");
    }

    public double areaValue(double ha) {
        return words().value(Measure.AREA.of(ha));
    }

    public String areaUnit() {
        return words().unit(Measure.AREA);
    }

    public double moneyValue(double usdHa) {
        return words().value(Measure.MONEY_RATE.of(usdHa));
    }

    /** Money on an acre or hectare to $1, without the sign. */
    public String money(double usdHa) {
        return words().number(Measure.MONEY_RATE.of(usdHa), 0);
    }

    public String moneyFine(double usdHa) {
        return words().amount(Measure.MONEY.of(moneyValue(usdHa)), 2);
    }

    public String moneyUnit() {
        return words().unit(Measure.MONEY_RATE);
    }

    /** "(11 to 102)". */
    public String moneyRange(double low_usdHa, double high_usdHa) {
        return tell("page.format.to-2", "money", money(low_usdHa), "money2", money(high_usdHa));
    }

    public double lengthValue(double cm) {
        return words().value(Measure.HEIGHT.of(cm));
    }

    public String length(double cm) {
        return words().number(Measure.HEIGHT.of(cm), 0);
    }

    /** Width of a boom or bar with its unit. */
    public String width(double m) {
        return words().say(Measure.LENGTH.of(m));
    }

    public String lengthUnit() {
        return words().unit(Measure.HEIGHT);
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
        return words().number(Measure.RAIN.of(mm), this == US ? 1 : 0);
    }

    public String temperature(double celsius) {
        return words().number(Measure.TEMPERATURE.of(celsius), 0);
    }

    public String temperatureUnit() {
        return words().unit(Measure.TEMPERATURE);
    }

    public String yield(double dry_kgHa) {
        return words().form(Measure.YIELD.of(dry_kgHa), "number");
    }

    /** Yield to a tenth of a bushel, or to 10 kg. */
    public String yieldFine(double dry_kgHa) {
        return words().form(Measure.YIELD.of(dry_kgHa), "fine_number");
    }

    /** Bushels an acre or a hectare, which prices are told by in either unit. */
    public String bushelsFine(double dry_kgHa) {
        return number(this == US ? Units.buAc(dry_kgHa) : Units.buAc(dry_kgHa) / Units.HA_PER_AC, 1);
    }

    /** "$0.52/lb N". */
    public String nitrogenPrice(double usdKg) {
        return words().say(Measure.NITROGEN_PRICE.of(usdKg));
    }

    public String yieldUnit() {
        return words().unit(Measure.YIELD);
    }

    /** Amount of product on ground, digits and unit apart. */
    public String product(double rate, boolean liquid) {
        return liquid ? words().number(Measure.VOLUME_RATE.of(rate), 1) : words().number(Measure.MASS_RATE.of(rate), 0);
    }

    public String productUnit(boolean liquid) {
        return words().unit(liquid ? Measure.VOLUME_RATE : Measure.MASS_RATE);
    }

    /** Plants on an acre or a hectare, to three digits. */
    public String plants(double perM2) {
        double value = words().value(Measure.PLANTS.of(perM2));
        return number(new BigDecimal(value).round(new MathContext(3)).doubleValue(), 0);
    }
}
