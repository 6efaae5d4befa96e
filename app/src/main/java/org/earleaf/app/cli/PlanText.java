// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.Locale;
import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Timetable;
import org.earleaf.plan.WhyLeftOut;
import org.earleaf.plan.search.Found;

/** A plan to read: day by day, rig by rig, in their order. */
final class PlanText {
    private static final String MARGIN = "  ";

    private PlanText() {}

    static String of(PlanProblem problem, Found found) {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "The plan costs $%,.2f: rigs $%,.2f, days lost $%,.2f, left out $%,.2f.%n",
                found.cost().total_usd(),
                found.cost().rig_usd(),
                found.cost().loss_usd(),
                found.cost().undone_usd()));
        if (found.cutShort()) {
            out.append(tell("cli.plan.the-search-was-stopped"));
        }
        for (int s = 0; s < problem.shifts().size(); s++) {
            shift(out, problem, problem.shifts().get(s), found.timetables().get(s));
        }
        if (!found.leftOut().isEmpty()) {
            out.append(tell("cli.plan.left-out"));
            for (WhyLeftOut w : found.leftOut()) {
                String sentence = problem.jobs().get(w.job()).name() + ". " + Words.US.say(w.said());
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
        out.append(String.format(
                Locale.ROOT,
                "%n%s, %s: %.0f of %.0f min%n",
                Words.US.say(problem.dayWord(shift.day())),
                problem.rigOf(shift),
                table.end_s() / 60,
                shift.length_s() / 60));
        for (Timetable.Stop stop : table.stops()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s%4.0f to %4.0f min  %s%n",
                    MARGIN,
                    stop.start_s() / 60,
                    stop.end_s() / 60,
                    problem.jobs().get(stop.job()).name()));
        }
    }
}
