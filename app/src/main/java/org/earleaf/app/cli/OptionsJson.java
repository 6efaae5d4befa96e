// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.decide.FollowUp;
import org.earleaf.decide.Option;
import org.earleaf.decide.Reason;
import org.earleaf.decide.Worth;
import org.earleaf.field.Zone;
import org.jspecify.annotations.Nullable;

/** Options as JSON, the same keys on every one of them, here and in the morning's passes. */
final class OptionsJson {
    private OptionsJson() {}

    static Map<String, @Nullable Object> of(Zone zone, LocalDate on, List<Option> options, boolean metric) {
        List<Object> list = new ArrayList<>();
        options.forEach(o -> list.add(option(o, metric)));
        return Json.object("field", zone.field(), "zone", zone.zone(), "on", on, "options", list);
    }

    static Map<String, @Nullable Object> option(Option o, boolean metric) {
        Worth w = o.worth();
        Measure product = o.liquid() ? Measure.LIQUID : Measure.NITROGEN;
        return new Keys(metric)
                .put("field", o.field())
                .put("zone", o.zone())
                .put("kind", o.kind())
                .put("product", o.product())
                .put("placement", o.placement().word())
                .put("rate", Measure.NITROGEN.value(o.nitrogen_kgHa(), metric))
                .put("rate_unit", metric ? "kg N/ha" : "lb N/ac")
                .put("product_rate", product.value(o.productRate(), metric))
                .put("product_rate_unit", product.unit(metric))
                .put("date", o.date())
                .put("rig", o.rig())
                .put("gain", Measure.MONEY, w.mean_usdHa())
                .put("p10", Measure.MONEY.value(w.p10_usdHa(), metric))
                .put("p90", Measure.MONEY.value(w.p90_usdHa(), metric))
                .put("chance_it_pays", w.chanceItPays())
                .put("bad_case", Measure.MONEY, w.badCase_usdHa())
                .put("break_even_usd_bu", w.breakEvenCorn_usdBu())
                .put("cost", Measure.MONEY, w.cost_usdHa())
                .put("yield_gain", Measure.YIELD, w.meanYieldGain_kgHa())
                .put("wait_cost", Measure.MONEY_A_DAY, o.waitCost_usdHaDay())
                .put("then", o.then().map(t -> then(t, metric)).orElse(null))
                .put("why", o.why().stream().map(Reason::sentence).toList())
                .map();
    }

    /** The pass that may follow, with what is done by the rain until then; JSON's null where there is none. */
    private static Map<String, @Nullable Object> then(FollowUp t, boolean metric) {
        List<Object> steps = new ArrayList<>();
        for (FollowUp.Step s : t.steps()) {
            steps.add(new Keys(metric)
                    .put("rain_from", Measure.WATER, s.fromRain_mm())
                    .put("rain_to", Measure.WATER, s.toRain_mm())
                    .put("share", s.share())
                    .put("rate", Measure.NITROGEN.value(s.nitrogen_kgHa(), metric))
                    .map());
        }
        return new Keys(metric)
                .put("date", t.date())
                .put("product", t.product())
                .put("placement", t.placement().word())
                .put("rig", t.rig())
                .put("steps", steps)
                .put("chance", t.chance())
                .put("adds", Measure.MONEY, t.adds_usdHa())
                .put("gain_alone", Measure.MONEY, t.alone().mean_usdHa())
                .map();
    }
}
