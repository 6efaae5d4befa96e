// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.label.Cautions;
import org.earleaf.units.Units;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;

/** The plan of a farm's week to read: day by day, rig by rig, in their order. */
final class WeekText {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Week week;
    private final Say say;
    private final Page page = new Page();

    private WeekText(Week week, boolean metric) {
        this.week = week;
        this.say = new Say(metric);
    }

    static String of(Week week, boolean metric) {
        WeekText text = new WeekText(week, metric);
        text.page.title("The week from " + Say.full(week.on()));
        return text.all();
    }

    static String of(WeekChange.Anew anew, boolean metric) {
        WeekText text = new WeekText(anew.now(), metric);
        text.page.title("The week from " + Say.full(anew.now().on()) + ", planned anew");
        text.changes(anew);
        return text.all();
    }

    private void changes(WeekChange.Anew anew) {
        if (anew.forced().isEmpty() && anew.moved().isEmpty()) {
            page.say("Nothing that was planned has to move.");
        }
        anew.forced().forEach(j -> page.say("Has to move: " + move(anew, j)));
        anew.moved().forEach(j -> page.say("Moves because that is cheaper: " + move(anew, j)));
        page.say(
                anew.more_usd() >= 0
                        ? "Over the futures the week costs " + usd(anew.more_usd()) + " more than before."
                        : "Over the futures the week costs " + usd(-anew.more_usd()) + " less than before.");
        page.gap();
    }

    private static String move(WeekChange.Anew anew, int job) {
        return anew.now().passes().get(job).name() + ", from " + place(anew.before(), job) + " to "
                + place(anew.now(), job) + ".";
    }

    /** "Highboy on 30 June", or "left out". */
    static String place(Week week, int job) {
        return find(week, job).map(s -> s.rig() + " on " + Say.day(s.date())).orElse("left out");
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
        page.head("Taken for lack of a figure, and to look after");
        week.notes().forEach(n -> page.say(say.say(n)));
        page.head("Caution").say(Cautions.LABEL);
        return page.toString();
    }

    private void day(int d) {
        List<Week.Stop> stops = week.all().stream()
                .filter(s -> s.date().equals(week.on().plusDays(d)))
                .toList();
        page.head(Say.weekday(week.on().plusDays(d)) + ", can be worked in " + Say.tenths(week.chance(d))
                + " of 10 futures");
        if (stops.isEmpty()) {
            page.say("Nothing.");
        }
        stops.stream()
                .collect(Collectors.groupingBy(Week.Stop::rig, java.util.LinkedHashMap::new, Collectors.toList()))
                .forEach((rig, route) -> {
                    page.say(rig + ", out at " + CLOCK.format(route.get(0).leave()) + ":");
                    route.forEach(this::stop);
                });
    }

    private void stop(Week.Stop s) {
        double area = s.pass().area_ha();
        String ground = say.metric() ? Say.number(area, 1) + " ha" : Say.number(area / Units.HA_PER_AC, 0) + " ac";
        String loads = s.loads() == 0 ? "" : ", " + (s.loads() == 1 ? "1 load" : s.loads() + " loads");
        page.say(
                CLOCK.format(s.start()) + " to " + CLOCK.format(s.end()) + "  "
                        + s.pass().place() + ": " + OptionsText.act(s.way(), say) + "; " + ground + loads
                        + ". Done in " + Say.tenths(week.plan().chanceDone().get(s.job())) + " of 10 futures.",
                "   ");
    }

    private void leftOut() {
        if (week.leftOut().isEmpty()) {
            return;
        }
        page.head("Left out, and why");
        week.leftOut().stream()
                .filter(w -> week.problem().jobs().get(w.job()).undone_usd() > 0)
                .forEach(w -> page.say(week.passes().get(w.job()).name() + ". " + say.say(w.said())));
    }

    private void later() {
        if (week.later().isEmpty()) {
            return;
        }
        page.head("After this week");
        week.later().forEach(l -> page.say(l.place() + ", " + l.kind() + ": best from " + Say.day(l.date()) + " on."));
    }

    private void cost() {
        page.head("What it costs");
        page.say("Rigs " + usd(week.plan().found().cost().rig_usd()) + ", days lost "
                + usd(week.plan().found().cost().loss_usd()) + ", left out "
                + usd(week.plan().found().cost().undone_usd()) + ", if each day turns out as is likely.");
        page.say("Over the futures " + usd(week.plan().mean_usd()) + " ("
                + usd(week.plan().p10_usd()) + " to " + usd(week.plan().p90_usd())
                + "): today stands, later days are planned anew as each future goes.");
    }

    private static String usd(double amount) {
        return "$" + Say.number(amount, 0);
    }
}
