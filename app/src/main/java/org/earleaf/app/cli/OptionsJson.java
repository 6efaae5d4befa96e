// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.decide.FollowUp;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.decide.Worth;
import org.earleaf.field.Zone;
import org.earleaf.pressure.ProtectionAssumption;
import org.jspecify.annotations.Nullable;

/** Options as JSON, the same keys on every one of them, here and in the morning's passes. */
final class OptionsJson {
    private OptionsJson() {}

    static Map<String, @Nullable Object> of(
            Zone zone, LocalDate on, List<Option> options, List<ProtectionAnswer.LeftOut> leftOut, boolean metric) {
        List<Object> list = new ArrayList<>();
        options.forEach(o -> list.add(option(o, metric)));
        List<Object> left = new ArrayList<>();
        leftOut.forEach(l -> left.add(
                Json.object("kind", l.kind().word(), "reason", Words.in(metric).say(l.reason()))));
        return Json.object(
                "field",
                zone.field(),
                "zone",
                zone.zone(),
                "on",
                on,
                "options",
                list,
                "left_out",
                left,
                "assumptions",
                assumptions(options));
    }

    /** What would be put on where, and how much of it. */
    static Keys pass(Keys keys, Option o) {
        Rates rates = Rates.of(o, keys.isMetric());
        return keys.put("field", o.field())
                .put("zone", o.zone())
                .put("kind", o.kind().word())
                .put("product", o.product())
                .put("placement", o.placement().word())
                .put("rate", rates.rate())
                .put("rate_unit", rates.rateUnit())
                .put("product_rate", rates.productRate())
                .put("product_rate_unit", rates.productRateUnit());
    }

    static Map<String, @Nullable Object> option(Option o, boolean metric) {
        Worth w = o.worth();
        return pass(new Keys(metric), o)
                .put("products", products(o, metric))
                .put("recipe", o.spray().map(s -> s.mix().recipe()).orElse(""))
                .put(
                        "carrier",
                        JsonUnit.LIQUID,
                        o.spray().map(s -> s.mix().carrier_LHa()).orElse(Double.NaN))
                .put("date", o.date())
                .put("rig", o.rig())
                .put("gain", JsonUnit.MONEY, w.mean_usdHa())
                .put("p10", JsonUnit.MONEY.value(w.p10_usdHa(), metric))
                .put("p90", JsonUnit.MONEY.value(w.p90_usdHa(), metric))
                .put("chance_it_pays", w.chanceItPays())
                .put("bad_case", JsonUnit.MONEY, w.badCase_usdHa())
                .put("break_even_usd_bu", w.breakEvenCorn_usdBu())
                .put("cost", JsonUnit.MONEY, w.cost_usdHa())
                .put("yield_gain", JsonUnit.YIELD, w.meanYieldGain_kgHa())
                .put("wait_cost", JsonUnit.MONEY_A_DAY, o.waitCost_usdHaDay())
                .put("then", o.then().map(t -> then(t, metric)).orElse(null))
                .put(
                        "why",
                        o.why().stream()
                                .map(r -> Words.in(metric).say(r.said()))
                                .toList())
                .put("may_be_made", o.mayBeMade())
                .put(
                        "refusals",
                        o.refusals().stream()
                                .map(r -> Words.in(metric).say(r.said()))
                                .toList())
                .put("assumptions", names(o))
                .map();
    }

    /** The pass that may follow, with what is done by the rain until then; JSON's null where there is none. */
    private static Map<String, @Nullable Object> then(FollowUp t, boolean metric) {
        List<Object> steps = new ArrayList<>();
        for (FollowUp.Step s : t.steps()) {
            steps.add(new Keys(metric)
                    .put("rain_from", JsonUnit.WATER, s.fromRain_mm())
                    .put("rain_to", JsonUnit.WATER, s.toRain_mm())
                    .put("share", s.share())
                    .put("rate", JsonUnit.NITROGEN.value(s.nitrogen_kgHa(), metric))
                    .map());
        }
        return new Keys(metric)
                .put("date", t.date())
                .put("product", t.product())
                .put("placement", t.placement().word())
                .put("rig", t.rig())
                .put("steps", steps)
                .put("chance", t.chance())
                .put("adds", JsonUnit.MONEY, t.adds_usdHa())
                .put("gain_alone", JsonUnit.MONEY, t.alone().mean_usdHa())
                .map();
    }

    private static List<Object> products(Option o, boolean metric) {
        List<Object> all = new ArrayList<>();
        o.spray().stream().flatMap(s -> s.mix().parts().stream()).forEach(p -> {
            Rates.Rate r = Rates.of(p, metric);
            all.add(Json.object("product", p.product().name(), "rate", r.amount(), "rate_unit", r.unit()));
        });
        return all;
    }

    private static List<String> names(Option o) {
        return o.spray().stream()
                .flatMap(s -> s.assumptions().stream())
                .map(OptionsJson::name)
                .toList();
    }

    private static String name(ProtectionAssumption a) {
        return a.name().toLowerCase(Locale.ROOT);
    }

    /** What stands behind the worth of some options and nobody has measured on this farm, each once. */
    static List<Object> assumptions(List<Option> options) {
        List<Object> all = new ArrayList<>();
        options.stream()
                .flatMap(o -> o.spray().stream())
                .flatMap(s -> s.assumptions().stream())
                .distinct()
                .sorted()
                .forEach(a -> all.add(Json.object(
                        "name", name(a),
                        "meaning", Words.here().say(a),
                        "value", a.usual(),
                        "unit", a.unit(),
                        "low", a.low(),
                        "high", a.high(),
                        "support", Words.here().say(a.support()))));
        return all;
    }
}
