// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.farm.WeatherAge;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/** The morning brief as JSON; every key is always there, possibly empty. */
final class MorningJson {
    private MorningJson() {}

    static Map<String, @Nullable Object> of(FarmDay day, boolean metric) {
        Brief brief = day.brief();
        Words words = Words.in(metric);
        List<Object> fields = new ArrayList<>();
        brief.outlooks().forEach(o -> fields.add(field(o, metric)));
        List<Object> passes = new ArrayList<>();
        brief.proposed().forEach(p -> passes.add(pass(p, metric)));
        return Json.object(
                "farm", brief.farm(),
                "on", brief.on(),
                "weather_last_observed",
                        WeatherAge.of(day.farm().weather(), day.on()).map(WeatherAge::observed),
                "fields", fields,
                "passes", passes,
                "left_out", leftOut(brief.judged(), words),
                "not_judged", leftOut(brief.notJudged(), words),
                "spray_hours", SprayHoursJson.of(brief.spray(), metric),
                "spray_hours_note", brief.spray().note().map(words::say).orElse(""),
                "readings_worth_taking", readings(brief, metric),
                "assumptions", OptionsJson.assumptions(brief.passes()),
                "alarms", brief.alarms().stream().map(words::say).toList(),
                "cautions", brief.cautions().stream().map(words::say).toList(),
                "seasons_simulated", brief.seasonsSimulated());
    }

    private static List<Object> leftOut(List<Brief.LeftOut> all, Words words) {
        List<Object> rows = new ArrayList<>();
        all.forEach(l -> rows.add(Json.object(
                "field",
                l.field(),
                "zone",
                l.zone(),
                "kind",
                l.kind().word(),
                "answer",
                words.say(l.answer()),
                "reason",
                words.say(l.reason()))));
        return rows;
    }

    private static List<Object> readings(Brief brief, boolean metric) {
        Words words = Words.in(metric);
        List<Object> readings = new ArrayList<>();
        brief.readings()
                .forEach(r -> readings.add(new Keys(metric)
                        .put("field", r.field())
                        .put("zone", r.zone())
                        .put("kind", words.say(r.take()))
                        .put("because", words.say(r.because()))
                        .put("worth", JsonUnit.MONEY, r.worth_usdHa())
                        .map()));
        return readings;
    }

    /** An option's keys, and its place in the week's plan. */
    private static Map<String, @Nullable Object> pass(Brief.Proposed p, boolean metric) {
        Map<String, @Nullable Object> keys = new LinkedHashMap<>(OptionsJson.option(p.way(), metric));
        keys.put("start", p.turn().map(t -> t.start().toString()).orElse(null));
        keys.put("end", p.turn().map(t -> t.end().toString()).orElse(null));
        keys.put("order", p.turn().map(Week.Stop::order).orElse(null));
        keys.put("own", p.own().map(own -> own(own, metric)).orElse(null));
        return keys;
    }

    /** What would be best for the field by itself. */
    private static Map<String, @Nullable Object> own(Brief.Own own, boolean metric) {
        Option o = own.best();
        Rates rates = Rates.of(o, metric);
        return new Keys(metric)
                .put("date", o.date())
                .put("product", o.product())
                .put("placement", o.placement().word())
                .put("rate", rates.rate())
                .put("rate_unit", rates.rateUnit())
                .put("rig", o.rig())
                .put("costs", JsonUnit.MONEY, own.costs_usdHa())
                .map();
    }

    private static Map<String, @Nullable Object> field(Outlook o, boolean metric) {
        return new Keys(metric)
                .put("field", o.zone().field())
                .put("zone", o.zone().zone())
                .put("stage", Words.in(metric).say(o.stage()))
                .put("height", JsonUnit.HEIGHT, o.height_cm())
                .put("n_short", o.nShort())
                .put("replant", FieldJson.replant(o.ahead().replant(), metric))
                .put("out_of_reach", FieldJson.reach(o.reach()))
                .map();
    }
}
