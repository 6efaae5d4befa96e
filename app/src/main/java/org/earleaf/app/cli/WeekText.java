// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import org.earleaf.units.Measure;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;

/** The plan of a farm's week to read: day by day, rig by rig, in their order. */
final class WeekText {
    private final Week week;
    private final Say say;
    private final Page page = new Page();

    private WeekText(Week week, boolean metric) {
        this.week = week;
        this.say = new Say(metric);
    }

    static String of(Week week, boolean metric) {
        WeekText text = new WeekText(week, metric);
        text.page.title(tell("cli.week.the-week-from", "full", Dates.full(week.on())));
        return text.all();
    }

    static String of(WeekChange.Anew anew, boolean metric) {
        WeekText text = new WeekText(anew.now(), metric);
        text.page.title(tell(
                "cli.week.the-week-from-planned-anew",
                "full",
                Dates.full(anew.now().on())));
        text.changes(anew);
        return text.all();
    }

    private void changes(WeekChange.Anew anew) {
        if (anew.forced().isEmpty() && anew.moved().isEmpty()) {
            page.say(tell("cli.week.nothing-that-was-planned"));
        }
        anew.forced().forEach(j -> page.say(tell("cli.week.has-to-move", "move", move(anew, j))));
        anew.moved().forEach(j -> page.say(tell("cli.week.moves-because-that-is-cheaper", "move", move(anew, j))));
        page.say(
                anew.more_usd() >= 0
                        ? tell("cli.week.over-the-futures-the-week", "usd", usd(anew.more_usd()))
                        : tell("cli.week.over-the-futures-the-week-2", "usd", usd(-anew.more_usd())));
        page.gap();
    }

    private static String move(WeekChange.Anew anew, int job) {
        return tell(
                "cli.week.from-to",
                "name",
                anew.now().passes().get(job).name(),
                "place",
                place(anew.before(), job),
                "place2",
                place(anew.now(), job));
    }

    /** "Highboy on June 30", or "left out". */
    static String place(Week week, int job) {
        return find(week, job)
                .map(s -> tell("cli.week.on", "rig", s.rig(), "date", Dates.day(s.date())))
                .orElse(tell("cli.week.left-out"));
    }

    private static Optional<Week.Stop> find(Week week, int job) {
        return week.all().stream().filter(s -> s.job() == job).findFirst();
    }

    private String all() {
        for (int d = 0; d < Week.DAYS; d++) {
            day(d);
        }
        leftOut();
        later();
        cost();
        page.head(tell("cli.week.taken-for-lack-of-a"));
        week.notes().forEach(n -> page.say(say.say(n)));
        page.head(tell("cli.week.caution")).say(Words.here().say(Cautions.LABEL));
        return page.toString();
    }

    private void day(int d) {
        List<Week.Stop> stops = week.all().stream()
                .filter(s -> s.date().equals(week.on().plusDays(d)))
                .toList();
        page.head(tell(
                "cli.week.can-be-worked-in",
                "weekday",
                Dates.weekday(week.on().plusDays(d)),
                "chance",
                Measure.CHANCE.of(week.chance(d))));
        if (stops.isEmpty()) {
            page.say(tell("cli.week.nothing"));
        }
        stops.stream()
                .collect(Collectors.groupingBy(Week.Stop::rig, java.util.LinkedHashMap::new, Collectors.toList()))
                .forEach((rig, route) -> {
                    page.say(tell(
                            "cli.week.out-at",
                            "rig",
                            rig,
                            "leave",
                            Dates.clock(route.get(0).leave().toLocalTime())));
                    route.forEach(this::stop);
                });
    }

    private void stop(Week.Stop s) {
        String ground = Words.in(say.metric()).say(Measure.AREA.of(s.pass().area_ha()));
        String loads = s.loads() == 0
                ? ""
                : ", " + (s.loads() == 1 ? tell("cli.week.1-load") : tell("cli.week.loads", "loads", s.loads()));
        page.say(
                tell(
                        "cli.week.to-done-in",
                        "start",
                        Dates.clock(s.start().toLocalTime()),
                        "end",
                        Dates.clock(s.end().toLocalTime()),
                        "place",
                        say.say(s.pass().place()),
                        "act",
                        OptionsText.act(s.way(), say),
                        "ground",
                        ground,
                        "loads",
                        loads,
                        "chance",
                        Measure.CHANCE.of(week.plan().chanceDone().get(s.job()))),
                "   ");
    }

    private void leftOut() {
        if (week.leftOut().isEmpty()) {
            return;
        }
        page.head(tell("cli.week.left-out-and-why"));
        week.leftOut().stream()
                .filter(w -> week.problem().jobs().get(w.job()).undone_usd() > 0)
                .forEach(w -> page.say(week.passes().get(w.job()).name() + ". " + say.say(w.said())));
    }

    private void later() {
        if (week.later().isEmpty()) {
            return;
        }
        page.head(tell("cli.week.after-this-week"));
        week.later()
                .forEach(l -> page.say(tell(
                        "cli.week.best-from-on", "place", l.place(), "kind", l.kind(), "date", Dates.day(l.date()))));
    }

    private void cost() {
        page.head(tell("cli.week.what-it-costs"));
        page.say(tell(
                "cli.week.rigs-days-lost-left-out",
                "usd",
                usd(week.plan().found().cost().rig_usd()),
                "usd2",
                usd(week.plan().found().cost().loss_usd()),
                "usd3",
                usd(week.plan().found().cost().undone_usd())));
        page.say(tell(
                "cli.week.over-the-futures-to-today",
                "usd",
                usd(week.plan().mean_usd()),
                "usd2",
                usd(week.plan().p10_usd()),
                "usd3",
                usd(week.plan().p90_usd())));
    }

    private static String usd(double amount) {
        return "$" + Say.number(amount, 0);
    }
}
