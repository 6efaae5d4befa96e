// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.WhyInputs.Input;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Measure;

/** Prices and settings of the farm, each as a row that says who set it. */
final class SettingRows {
    private static final int MINUTE_S = 60;
    private static final int HOUR_MIN = 60;

    private SettingRows() {}

    /** All of them. */
    static List<Input> of(Farm farm, Format format) {
        List<Input> all = new ArrayList<>(corn(farm.prices()));
        all.add(new Input(
                tell("page.setting-rows.nitrogen"),
                format.nitrogenPrice(farm.prices().nitrogen_usdKg()),
                tell("page.setting-rows.where-a-product-has-no")));
        new TreeSet<>(farm.prices().nitrogenOf_usdKg().keySet())
                .forEach(product -> all.add(nitrogen(farm.prices(), product, format)));
        for (Rig r : farm.rigs()) {
            if (!r.isTender()) {
                all.add(pass(r, format));
                all.add(clearance(r, format));
            }
        }
        for (Setting s : Setting.values()) {
            all.add(new Input(
                    Phrases.capital(format.say(s)),
                    value(s, farm.settings(), format),
                    farm.settings().own().containsKey(s) ? WhyInputs.you() : tell("page.setting-rows.as-usual")));
        }
        return all;
    }

    static List<Input> corn(Prices p) {
        return List.of(
                new Input(
                        tell("page.setting-rows.corn"),
                        tell("page.setting-rows.a-bushel", "corn", Format.number(p.corn_usdBu(), 2)),
                        WhyInputs.you()),
                new Input(
                        tell("page.setting-rows.bringing-a-bushel-home"),
                        "$" + Format.number(p.harvestCost_usdBu(), 2),
                        tell("page.setting-rows.or-the-default", "you", WhyInputs.you())));
    }

    static Input nitrogen(Prices p, String product, Format format) {
        return new Input(
                tell("page.setting-rows.nitrogen-in", "product", product),
                format.nitrogenPrice(p.nitrogen_usdKg(product)),
                p.nitrogenOf_usdKg().containsKey(product)
                        ? WhyInputs.you()
                        : tell("page.setting-rows.no-price-of-its-own"));
    }

    static Input pass(Rig r, Format format) {
        return new Input(
                tell("page.setting-rows.a-pass-of-the", "name", r.name()),
                money(r.cost_usdHa(), format),
                WhyInputs.you());
    }

    static Input clearance(Rig r, Format format) {
        return new Input(
                Phrases.capital(r.name()),
                tell("page.setting-rows.clears", "length", length(r.clearance_m(), format)),
                WhyInputs.you());
    }

    private static String value(Setting s, Settings settings, Format format) {
        double value = settings.of(s);
        Words words = format.words();
        return switch (s.unit()) {
            case "on/off" -> settings.says(s) ? tell("page.setting-rows.yes") : tell("page.setting-rows.no");
            case "m" -> words.say(Measure.SPAN.of(value));
            case "$/ha" -> words.form(Measure.MONEY_RATE.of(value), "fine");
            case "mg/kg" -> words.say(Measure.CONCENTRATION.of(value));
            case "h" ->
                s == Setting.LEAVE_AT
                        ? Dates.clock(LocalTime.MIDNIGHT.plusMinutes((long) (HOUR_MIN * value)))
                        : words.say(Measure.HOURS.of(value));
            case "min" -> words.say(Measure.DURATION.of(MINUTE_S * value));
            case "days" -> words.say(Measure.DAYS.of(value));
            case "ha" -> words.say(Measure.AREA.of(value));
            case "m/s" -> words.say(Measure.SPEED.of(value));
            default -> words.number(value, 2);
        };
    }

    private static String money(double usdHa, Format format) {
        return format.moneyFine(usdHa) + "/" + format.areaUnit();
    }

    private static String length(double m, Format format) {
        return format.length(100 * m) + " " + format.lengthUnit();
    }
}
