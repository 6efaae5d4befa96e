// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.search.OverFutures;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.week.FieldPass;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;

/** The week: which rig does which field on which day. */
public record PlanView(
        String date,
        Markup headline,
        Anew anew,
        List<DayRow> days,
        NotThisWeek notThisWeek,
        List<MoneyRow> money,
        List<String> notes,
        Forms forms,
        String feed) {
    /**
     * What the week is planned anew for.
     *
     * @param asked what has come to pass since, each with the address that drops it
     * @param moved what is elsewhere now, in sentences; empty when nothing was asked
     */
    public record Anew(List<Drop> asked, List<String> moved) {}

    /** Passes that are left out, and those whose best day comes after the week. */
    public record NotThisWeek(List<LeftRow> leftOut, List<String> later) {}

    /** A day with its rigs. */
    public record DayRow(String name, Measured chance, List<RigRow> rigs) {}

    /** What a rig does on a day. */
    public record RigRow(String rig, String out, String sheet, List<StopRow> stops) {}

    /** One field of it. */
    public record StopRow(
            String time, String name, String place, String what, String ground, String loads, Measured done) {}

    /** A pass that is not made in the week. */
    public record LeftRow(String name, String reason) {}

    /** A sum of money. */
    public record MoneyRow(String what, String amount, String says) {}

    /** What has come to pass, and the address without it. */
    public record Drop(String says, String link) {}

    /**
     * What the forms offer.
     *
     * @param parts hidden parts of a form that asks for more
     */
    public record Forms(List<String> passes, List<String> rigs, List<Day> days, List<PlanAsked.Part> parts) {}

    /** A day of a list. */
    public record Day(String value, String name) {}

    public static PlanView of(Week week, PlanAsked asked, Optional<WeekChange.Anew> anew, Format format) {
        Places places = Places.of(week.farm());
        return new PlanView(
                Dates.weekday(week.on()),
                headline(week, anew),
                new Anew(
                        asked.parts().stream()
                                .map(p -> new Drop(p.says(), p.without().link("/plan")))
                                .toList(),
                        anew.map(PlanView::moved).orElse(List.of())),
                IntStream.range(0, Week.DAYS)
                        .mapToObj(d -> day(week, d, asked, places, format))
                        .toList(),
                notThisWeek(week, format),
                money(week),
                week.notes().stream().map(format::say).toList(),
                forms(week, asked),
                asked.link("/plan.ics"));
    }

    private static NotThisWeek notThisWeek(Week week, Format format) {
        return new NotThisWeek(
                week.leftOut().stream()
                        .filter(w -> week.problem().jobs().get(w.job()).undone_usd() > 0)
                        .map(w -> new LeftRow(week.passes().get(w.job()).name(), format.say(w.said())))
                        .toList(),
                week.later().stream()
                        .map(l -> tell(
                                "page.plan.best-from-on",
                                "place",
                                l.place(),
                                "kind",
                                l.kind(),
                                "date",
                                Dates.day(l.date())))
                        .toList());
    }

    private static Markup headline(Week week, Optional<WeekChange.Anew> anew) {
        List<Week.Stop> all = week.all();
        Say say = new Say();
        if (all.isEmpty()) {
            say.sentence(tell("page.plan.nothing-is-to-be-driven"));
        } else {
            LocalDate first = all.get(0).date();
            List<Week.Stop> then =
                    all.stream().filter(s -> s.date().equals(first)).toList();
            String work = then.stream()
                    .collect(Collectors.groupingBy(Week.Stop::rig, LinkedHashMap::new, Collectors.counting()))
                    .entrySet()
                    .stream()
                    .map(e -> tell("page.plan.the-makes", "name", e.getKey(), "passes", passes(e.getValue())))
                    .collect(Collectors.joining(", "));
            if (first.equals(week.on())) {
                say.markup(new Markup(Words.here()
                        .html(Said.of(
                                "page.plan.today-out-at",
                                "work",
                                work,
                                "clock",
                                clock(then.get(0).leave())))));
            } else {
                say.sentence(tell(
                        "page.plan.nothing-today-out-at",
                        "longDay",
                        Dates.weekday(first),
                        "work",
                        work,
                        "clock",
                        clock(then.get(0).leave())));
            }
        }
        anew.ifPresent(a -> say.sentence(costs(a)));
        return say.done();
    }

    private static String passes(long n) {
        return n == 1 ? tell("page.plan.one-pass") : tell("page.plan.passes", "n", String.valueOf(n));
    }

    private static String costs(WeekChange.Anew a) {
        return a.more_usd() < 0
                ? tell("page.plan.cheaper-now", "usd", usd(-a.more_usd()))
                : tell("page.plan.dearer-now", "usd", usd(a.more_usd()));
    }

    private static List<String> moved(WeekChange.Anew a) {
        List<String> all = new ArrayList<>();
        a.forced().forEach(j -> all.add(tell("page.plan.has-to-move", "move", move(a, j))));
        a.moved().forEach(j -> all.add(tell("page.plan.moves-because-that-is-cheaper", "move", move(a, j))));
        return all.isEmpty() ? List.of(tell("page.plan.nothing-that-was-planned")) : all;
    }

    private static String move(WeekChange.Anew a, int job) {
        String name = a.now().passes().get(job).name();
        return place(a.now(), job)
                .map(to -> tell(
                        "page.plan.from-to",
                        "name",
                        name,
                        "place",
                        place(a.before(), job).orElse("nowhere"),
                        "to",
                        to))
                .orElse(tell("page.plan.is-left-out", "name", name));
    }

    private static Optional<String> place(Week week, int job) {
        return week.all().stream()
                .filter(s -> s.job() == job)
                .findFirst()
                .map(s -> tell("page.plan.on", "rig", s.rig(), "date", Dates.brief(s.date())));
    }

    private static DayRow day(Week week, int d, PlanAsked asked, Places places, Format format) {
        LocalDate date = week.on().plusDays(d);
        List<RigRow> rigs = new ArrayList<>();
        week.all().stream()
                .filter(s -> s.date().equals(date))
                .collect(Collectors.groupingBy(Week.Stop::rig, LinkedHashMap::new, Collectors.toList()))
                .forEach((rig, stops) -> rigs.add(new RigRow(
                        Phrases.capital(rig),
                        clock(stops.get(0).leave()),
                        asked.link("/plan/sheet", "of", rig, "on", date.toString()),
                        stops.stream().map(s -> stop(week, s, places, format)).toList())));
        boolean rain = asked.rain().contains(date.toString());
        return new DayRow(Dates.weekday(date), Measure.CHANCE.of(rain ? 0 : week.chance(d)), rigs);
    }

    private static StopRow stop(Week week, Week.Stop s, Places places, Format format) {
        return new StopRow(
                tell("page.plan.to", "clock", clock(s.start()), "clock2", clock(s.end())),
                format.say(s.pass().place()),
                places.of(s.pass().zone()),
                what(s.way(), format),
                format.area(s.pass().area_ha()) + " " + format.areaUnit(),
                loads(s.loads()),
                Measure.CHANCE.of(week.plan().chanceDone().get(s.job())));
    }

    static String loads(int n) {
        return n == 0 ? "" : n == 1 ? tell("page.plan.1-load") : tell("page.plan.loads", "n", n);
    }

    /** "40 lb N/ac as UAN 28, 13.4 gal/ac, row-base dribble". */
    static String what(Option o, Format format) {
        String how = ", " + format.say(o.placement());
        return o.isNitrogen()
                ? tell(
                        "page.plan.as",
                        "nitrogen",
                        format.nitrogen(o.nitrogen_kgHa()),
                        "nitrogenUnit",
                        format.nitrogenUnit(),
                        "product",
                        o.product(),
                        "product2",
                        format.product(o.productRate(), o.liquid()),
                        "productUnit",
                        format.productUnit(o.liquid()),
                        "how",
                        how)
                : o.product() + how;
    }

    private static List<MoneyRow> money(Week week) {
        var cost = week.plan().found().cost();
        return List.of(
                new MoneyRow(
                        tell("page.plan.rigs-on-the-way-and"),
                        usd(cost.rig_usd()),
                        tell("page.plan.if-each-day-turns-out")),
                new MoneyRow(tell("page.plan.days-that-are-not-the"), usd(cost.loss_usd()), tell("page.plan.likewise")),
                new MoneyRow(
                        tell("page.plan.left-out"), usd(cost.undone_usd()), tell("page.plan.against-doing-it-on-its")),
                new MoneyRow(
                        tell("page.plan.all-of-it-over-a"),
                        usd(week.plan().mean_usd()),
                        tell("page.plan.today-stands-later-days", "spread", spread(week.plan()))));
    }

    /** A few dear futures can lift the mean above what nine in ten stay below: then that is said. */
    private static String spread(OverFutures.Robust r) {
        String range = usd(r.p10_usd()).equals(usd(r.p90_usd()))
                ? tell("page.plan.in-eight-of-ten-futures", "usd", usd(r.p90_usd()))
                : tell("page.plan.to-in-eight-of-ten", "usd", usd(r.p10_usd()), "usd2", usd(r.p90_usd()));
        return r.mean_usd() <= r.p90_usd() ? range : tell("page.plan.fewer-than-one-in-ten", "range", range);
    }

    private static Forms forms(Week week, PlanAsked asked) {
        return new Forms(
                week.passes().stream().map(FieldPass::name).toList(),
                week.problem().rigs().stream().map(PlanRig::name).toList(),
                IntStream.range(0, Week.DAYS)
                        .mapToObj(d -> week.on().plusDays(d))
                        .map(d -> new Day(d.toString(), Dates.brief(d)))
                        .toList(),
                asked.parts());
    }

    static String clock(java.time.LocalDateTime at) {
        return Dates.clock(at.toLocalTime());
    }

    static String usd(double amount) {
        return "$" + Format.number(amount, 0);
    }
}
