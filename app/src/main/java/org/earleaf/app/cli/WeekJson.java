// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.label.Cautions;
import org.earleaf.plan.WhyLeftOut;
import org.earleaf.plan.search.OverFutures;
import org.earleaf.units.Units;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;
import org.jspecify.annotations.Nullable;

/** The plan of a farm's week for scripts; every key is always there, possibly empty. */
final class WeekJson {
    private WeekJson() {}

    static Map<String, @Nullable Object> of(Week week, long seed, boolean metric) {
        List<Object> days = new ArrayList<>();
        for (int d = 0; d < Week.DAYS; d++) {
            days.add(Json.object("date", week.on().plusDays(d), "chance_it_can_be_worked", week.chance(d)));
        }
        OverFutures.Robust plan = week.plan();
        return Json.object(
                "on",
                week.on(),
                "days",
                days,
                "jobs",
                week.all().stream().map(s -> stop(week, s, metric)).toList(),
                "left_out",
                week.leftOut().stream().map(w -> leftOut(week, w, metric)).toList(),
                "later",
                week.later().stream().map(WeekJson::later).toList(),
                "total_usd",
                plan.found().cost().total_usd(),
                "loss_usd",
                plan.found().cost().loss_usd(),
                "undone_usd",
                plan.found().cost().undone_usd(),
                "rig_usd",
                plan.found().cost().rig_usd(),
                "over_futures",
                Json.object(
                        "mean_usd", plan.mean_usd(),
                        "p10_usd", plan.p10_usd(),
                        "p90_usd", plan.p90_usd(),
                        "plan_for_the_likely_days_usd", plan.likely_usd(),
                        "courses", week.courses().size(),
                        "first_days_compared", plan.firstDays()),
                "seed",
                seed,
                "notes",
                week.notes().stream().map(Words.in(metric)::say).toList(),
                "cautions",
                List.of(Words.here().say(Cautions.LABEL)));
    }

    private static Map<String, @Nullable Object> later(Week.Later l) {
        return Json.object("field", l.place(), "kind", l.kind().word(), "date", l.date());
    }

    /** The new plan with what it changes. */
    static Map<String, @Nullable Object> of(WeekChange.Anew anew, long seed, boolean metric) {
        Map<String, @Nullable Object> all = of(anew.now(), seed, metric);
        all.put(
                "changed",
                Json.object(
                        "moved", anew.moved().stream().map(j -> moved(anew, j)).toList(),
                        "forced",
                                anew.forced().stream().map(j -> moved(anew, j)).toList(),
                        "costs_more_usd", anew.more_usd()));
        return all;
    }

    private static Map<String, @Nullable Object> moved(WeekChange.Anew anew, int job) {
        return Json.object(
                "job",
                anew.now().passes().get(job).name(),
                "was",
                WeekText.place(anew.before(), job),
                "is",
                WeekText.place(anew.now(), job));
    }

    private static Map<String, @Nullable Object> stop(Week week, Week.Stop s, boolean metric) {
        Option o = s.way();
        return OptionsJson.pass(new Keys(metric).put("job", s.pass().name()), o)
                .put(
                        metric ? "area_ha" : "area_ac",
                        metric ? s.pass().area_ha() : s.pass().area_ha() / Units.HA_PER_AC)
                .put("rig", s.rig())
                .put("date", s.date())
                .put("order", s.order())
                .put("leave", s.leave())
                .put("start", s.start())
                .put("end", s.end())
                .put("loads", s.loads())
                .put("gain", JsonUnit.MONEY, o.worth().mean_usdHa())
                .put("chance_it_is_done", week.plan().chanceDone().get(s.job()))
                .map();
    }

    private static Map<String, @Nullable Object> leftOut(Week week, WhyLeftOut w, boolean metric) {
        Words words = Words.in(metric);
        return Json.object(
                "job",
                week.passes().get(w.job()).name(),
                "reason",
                words.say(w.said()),
                "rule",
                w.rule().map(words::say).orElse(tell("cli.week-json.it-costs-more-than-it")),
                "loses_usd",
                week.problem().jobs().get(w.job()).undone_usd(),
                "chance_it_is_done",
                week.plan().chanceDone().get(w.job()));
    }
}
