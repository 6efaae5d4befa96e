// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Timetable;
import org.earleaf.plan.search.Found;
import org.jspecify.annotations.Nullable;

/** A plan for scripts. */
final class PlanJson {
    private PlanJson() {}

    static Map<String, @Nullable Object> of(PlanProblem problem, Found found, long seed) {
        return Json.object(
                "total_usd",
                found.cost().total_usd(),
                "loss_usd",
                found.cost().loss_usd(),
                "undone_usd",
                found.cost().undone_usd(),
                "rig_usd",
                found.cost().rig_usd(),
                "jobs",
                jobs(problem, found),
                "left_out",
                leftOut(problem, found),
                "steps",
                found.steps(),
                "stopped_by",
                found.cutShort() ? "seconds" : "steps",
                "seed",
                seed,
                "cautions",
                List.of(Words.here().say(Cautions.LABEL)));
    }

    private static List<Map<String, @Nullable Object>> jobs(PlanProblem problem, Found found) {
        List<Map<String, @Nullable Object>> all = new ArrayList<>();
        for (int s = 0; s < problem.shifts().size(); s++) {
            Shift shift = problem.shifts().get(s);
            int order = 1;
            for (Timetable.Stop stop : found.timetables().get(s).stops()) {
                all.add(Json.object(
                        "job",
                        problem.jobs().get(stop.job()).name(),
                        "rig",
                        problem.rigOf(shift),
                        "day",
                        shift.day(),
                        "order",
                        order++,
                        "start_min",
                        stop.start_s() / 60,
                        "end_min",
                        stop.end_s() / 60));
            }
        }
        return all;
    }

    private static List<Map<String, @Nullable Object>> leftOut(PlanProblem problem, Found found) {
        return found.leftOut().stream()
                .map(w -> Json.object(
                        "job",
                        problem.jobs().get(w.job()).name(),
                        "reason",
                        Words.here().say(w.said()),
                        "rule",
                        w.rule().map(Words.here()::say).orElse(tell("cli.plan-json.it-costs-more-than-it")),
                        "loses_usd",
                        problem.jobs().get(w.job()).undone_usd()))
                .toList();
    }
}
