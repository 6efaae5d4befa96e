// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Timetable;
import org.earleaf.plan.WhyLeftOut;
import org.earleaf.plan.search.Found;
import org.earleaf.units.Measure;

/** A plan to read: day by day, rig by rig, in their order. */
final class PlanText {
    private static final String MARGIN = "  ";

    private PlanText() {}

    static String of(PlanProblem problem, Found found) {
        StringBuilder out = new StringBuilder();
        out.append(tell(
                        "cli.plan.costs",
                        "total",
                        Measure.MONEY.of(found.cost().total_usd()),
                        "rigs",
                        Measure.MONEY.of(found.cost().rig_usd()),
                        "lost",
                        Measure.MONEY.of(found.cost().loss_usd()),
                        "undone",
                        Measure.MONEY.of(found.cost().undone_usd())))
                .append('\n');
        if (found.cutShort()) {
            out.append(tell("cli.plan.the-search-was-stopped"));
        }
        for (int s = 0; s < problem.shifts().size(); s++) {
            shift(out, problem, problem.shifts().get(s), found.timetables().get(s));
        }
        if (!found.leftOut().isEmpty()) {
            out.append(tell("cli.plan.left-out"));
            for (WhyLeftOut w : found.leftOut()) {
                String sentence =
                        problem.jobs().get(w.job()).name() + ". " + Words.here().say(w.said());
                Say.wrapped(sentence, MARGIN).forEach(line -> out.append(line).append('\n'));
            }
        }
        out.append('\n');
        Say.wrapped(Words.here().say(Cautions.LABEL), "")
                .forEach(line -> out.append(line).append('\n'));
        return out.toString();
    }

    private static void shift(StringBuilder out, PlanProblem problem, Shift shift, Timetable table) {
        if (table.stops().isEmpty()) {
            return;
        }
        out.append('\n')
                .append(tell(
                        "cli.plan.shift",
                        "day",
                        problem.dayWord(shift.day()),
                        "rig",
                        problem.rigOf(shift),
                        "end",
                        Measure.DURATION.of(table.end_s()),
                        "length",
                        Measure.DURATION.of(shift.length_s())))
                .append('\n');
        for (Timetable.Stop stop : table.stops()) {
            out.append(MARGIN)
                    .append(tell(
                            "cli.plan.stop",
                            "start",
                            Measure.DURATION.of(stop.start_s()),
                            "end",
                            Measure.DURATION.of(stop.end_s()),
                            "job",
                            problem.jobs().get(stop.job()).name()))
                    .append('\n');
        }
    }
}
