// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.Set;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Question;
import org.earleaf.field.Zone;
import org.earleaf.week.Week;

/**
 * What stands and what is being worked out, in sentences.
 *
 * @param fields of corn, those worked out first
 */
public record WaitView(String headline, String so_far, List<Field> fields) {
    /** @param stands whether its pages are there at once */
    public record Field(String name, String place, boolean stands) {}

    public static WaitView of(FarmDay day, Question<?> asked) {
        FarmDay.Progress progress = day.progress();
        Set<Zone> done = Set.copyOf(progress.fields());
        List<Zone> all = Question.modelled(day);
        Places places = Places.of(day.farm());
        List<Field> fields = all.stream()
                .map(z -> new Field(z.label(), places.of(z), done.contains(z)))
                .sorted(java.util.Comparator.comparing(f -> !f.stands()))
                .toList();
        boolean search = asked.isSearch() && done.size() == all.size();
        return new WaitView(
                search ? tell("page.wait.the-week-is-being-worked") : tell("page.wait.the-fields-are-being-worked"),
                search
                        ? progress.week().map(WaitView::soFar).orElse(tell("page.wait.no-plan-stands-yet"))
                        : tell("page.wait.of-so-far", "done", done.size(), "n", all.size()),
                fields);
    }

    private static String soFar(Week.Progress progress) {
        return tell(
                "page.wait.the-best-plan-so-far",
                "usd",
                PlanView.usd(progress.best_usd()),
                "usd2",
                PlanView.usd(progress.first_usd() - progress.best_usd()));
    }
}
