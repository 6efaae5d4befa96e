// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.app.words.Dates;
import org.earleaf.week.FieldPass;
import org.earleaf.week.Week;

/**
 * How the plan that stands differs from the one that drivers hold.
 *
 * @param at "6:12 am on Tue 30 June"; empty: none was handed out
 * @param changes in sentences; of passes of days to come
 */
public record HandedView(String at, List<Change> changes) {
    public static final HandedView NONE = new HandedView("", List.of());

    /** @param rigs that have to be told */
    public record Change(String says, Set<String> rigs) {}

    public static HandedView of(Week now, Handed handed) {
        ZonedDateTime at = handed.at().atZone(now.farm().timeZone());
        List<Change> all = new ArrayList<>();
        List<Week.Told> ahead = handed.passes().stream()
                .filter(t -> !t.day().isBefore(now.on()))
                .toList();
        List<Week.Told> standing = now.told();
        for (Week.Told t : ahead) {
            find(standing, t.pass())
                    .ifPresentOrElse(to -> moved(t, to).ifPresent(all::add), () -> all.add(gone(now, t)));
        }
        Set<String> told = ahead.stream().map(Week.Told::pass).collect(Collectors.toSet());
        LocalDate last =
                ahead.stream().map(Week.Told::day).max(LocalDate::compareTo).orElse(now.on());
        standing.stream()
                .filter(t -> !told.contains(t.pass()) && !t.day().isAfter(last))
                .forEach(t -> all.add(
                        new Change(tell("page.handed.new", "pass", t.pass(), "where", where(t)), Set.of(t.rig()))));
        return new HandedView(
                tell(
                        "page.handed.on",
                        "clock",
                        Dates.clock(at.toLocalTime()),
                        "toLocalDate",
                        Dates.brief(at.toLocalDate())),
                all);
    }

    private static Optional<Week.Told> find(List<Week.Told> all, String pass) {
        return all.stream().filter(t -> t.pass().equals(pass)).findFirst();
    }

    private static Optional<Change> moved(Week.Told from, Week.Told to) {
        return from.rig().equals(to.rig()) && from.day().equals(to.day())
                ? Optional.empty()
                : Optional.of(new Change(
                        tell(
                                "page.handed.handed-out-for-the-now",
                                "pass",
                                from.pass(),
                                "where",
                                where(from),
                                "where2",
                                where(to)),
                        Set.copyOf(List.of(from.rig(), to.rig()).stream()
                                .distinct()
                                .toList())));
    }

    private static Change gone(Week now, Week.Told t) {
        boolean wanted = now.passes().stream().map(FieldPass::name).anyMatch(t.pass()::equals);
        String why = wanted ? tell("page.handed.left-out-now") : tell("page.handed.no-longer-among-the-passes");
        return new Change(
                tell("page.handed.handed-out-for-the", "pass", t.pass(), "where", where(t), "why", why),
                Set.of(t.rig()));
    }

    private static String where(Week.Told t) {
        return tell("page.handed.on-2", "rig", t.rig(), "day", Dates.brief(t.day()));
    }

    /** What one driver has to hear. */
    public HandedView of(String rig) {
        return new HandedView(
                at, changes.stream().filter(c -> c.rigs().contains(rig)).toList());
    }
}
