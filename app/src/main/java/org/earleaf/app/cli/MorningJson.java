// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.outlook.Outlook;
import org.jspecify.annotations.Nullable;

/** The morning brief as JSON; every key is always there, possibly empty. */
final class MorningJson {
    private MorningJson() {}

    static Map<String, @Nullable Object> of(Brief brief, boolean metric) {
        Words words = Words.in(metric);
        List<Object> fields = new ArrayList<>();
        brief.outlooks().forEach(o -> fields.add(field(o, metric)));
        List<Object> passes = new ArrayList<>();
        brief.passes().forEach(o -> passes.add(OptionsJson.option(o, metric)));
        List<Object> leftOut = new ArrayList<>();
        brief.leftOut()
                .forEach(l -> leftOut.add(Json.object(
                        "field",
                        l.field(),
                        "zone",
                        l.zone(),
                        "kind",
                        l.kind().word(),
                        "reason",
                        words.say(l.reason()))));
        List<Object> readings = new ArrayList<>();
        brief.readings()
                .forEach(r -> readings.add(new Keys(metric)
                        .put("field", r.field())
                        .put("zone", r.zone())
                        .put("kind", words.say(r.take()))
                        .put("because", words.say(r.because()))
                        .put("worth", JsonUnit.MONEY, r.worth_usdHa())
                        .map()));
        return Json.object(
                "farm", brief.farm(),
                "on", brief.on(),
                "fields", fields,
                "passes", passes,
                "left_out", leftOut,
                "spray_hours", SprayHoursJson.of(brief.spray(), metric),
                "spray_hours_note", brief.spray().note().map(words::say).orElse(""),
                "readings_worth_taking", readings,
                "assumptions", OptionsJson.assumptions(brief.passes()),
                "cautions", brief.cautions().stream().map(words::say).toList(),
                "seasons_simulated", brief.seasonsSimulated());
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
