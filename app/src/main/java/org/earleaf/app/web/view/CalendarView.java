// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.DaySpan;
import org.earleaf.app.web.drawing.WorkBars;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.field.Pass;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.weather.WeatherDay;
import org.earleaf.week.Week;

/**
 * All fields on one calendar, the one to do first on top.
 *
 * @param axes dates for a desk and for a phone
 * @param passes what was done and what is meant to be done in the days drawn
 * @param absent fields that are not drawn, and why
 */
public record CalendarView(
        String date,
        Markup headline,
        Drawn drawn,
        Pair axes,
        Work work,
        List<CalendarRow> rows,
        List<PassRow> passes,
        List<String> absent) {
    private static final int BEFORE_D = 4;
    private static final int DESK_D = 28;
    private static final int PHONE_D = 21;
    private static final int SAID_D = 14;

    /**
     * Which days are drawn, for a desk and for a phone.
     *
     * @param season whether it is the whole season; else three or four weeks
     */
    public record Drawn(String wide, String narrow, boolean season) {}

    /** Workable days, drawn and in words. */
    public record Work(Pair bars, String says) {}

    /** The same drawing for a desk and for a phone. */
    public record Pair(Markup wide, Markup narrow) {}

    /** A pass on the calendar, in words. */
    public record PassRow(String date, String name, String what, String state) {}

    public static CalendarView of(FarmDay day, boolean season, Format format) {
        Brief brief = day.brief();
        List<Outlook> corn = inOrder(brief);
        DaySpan wide = span(day, corn, season, true);
        DaySpan narrow = span(day, corn, season, false);
        List<CalendarRow> rows = new ArrayList<>();
        for (Outlook o : corn) {
            rows.add(CalendarRow.of(day, o, rows.size() + 1, List.of(wide, narrow), turns(brief, o), format));
        }
        String says = workSays(corn, day.on());
        return new CalendarView(
                Dates.weekday(day.on()),
                CalendarHeadline.of(brief, corn, day.farm(), format),
                new Drawn(
                        tell("page.calendar.to", "from", Dates.day(wide.from()), "to", Dates.day(wide.to())),
                        tell("page.calendar.to", "from", Dates.day(narrow.from()), "to", Dates.day(narrow.to())),
                        season),
                new Pair(wide.axis(), narrow.axis()),
                new Work(new Pair(work(day, corn, wide, says), work(day, corn, narrow, says)), says),
                rows,
                passes(day, wide, format),
                day.farm().zones().stream()
                        .filter(z -> !z.isCorn())
                        .map(z ->
                                tell("page.calendar.grows-which-is-not-modelled", "label", z.label(), "crop", z.crop()))
                        .toList());
    }

    /** Fields with a pass proposed in the order of the brief, then the others, the one that runs short first on top. */
    private static List<Outlook> inOrder(Brief brief) {
        List<Outlook> first = brief.passes().stream()
                .flatMap(p -> MorningView.outlook(brief, p).stream())
                .distinct()
                .toList();
        Stream<Outlook> rest = brief.outlooks().stream()
                .filter(o -> !first.contains(o))
                .sorted(Comparator.comparing((Outlook o) -> o.nShort().p50().orElse(LocalDate.MAX))
                        .thenComparing(o -> -o.nShort().probability()));
        return Stream.concat(first.stream(), rest).toList();
    }

    private static DaySpan span(FarmDay day, List<Outlook> corn, boolean season, boolean wide) {
        if (!season) {
            LocalDate from = day.on().minusDays(wide ? BEFORE_D : 1);
            return new DaySpan(from, wide ? DESK_D : PHONE_D, day.on(), wide);
        }
        LocalDate planted = corn.stream()
                .map(o -> o.zone().planted())
                .min(Comparator.naturalOrder())
                .orElse(day.on());
        LocalDate ripe = corn.stream()
                .flatMap(o -> o.calendar().maturity().p90().stream())
                .max(Comparator.naturalOrder())
                .orElse(planted.plusMonths(5));
        LocalDate from = planted.minusDays(14);
        return new DaySpan(from, (int) (ripe.toEpochDay() - from.toEpochDay()) + 8, day.on(), wide);
    }

    private static Markup work(FarmDay day, List<Outlook> corn, DaySpan span, String says) {
        List<WeatherDay> forecast = day.farm().weather().forecast();
        LocalDate to = forecast.isEmpty()
                ? day.on()
                : forecast.get(forecast.size() - 1).date();
        return WorkBars.of(span, workable(corn), to, says);
    }

    /** The chance of a date, over all fields. */
    private static ToDoubleFunction<LocalDate> workable(List<Outlook> corn) {
        return date -> corn.stream()
                .mapToDouble(o -> o.calendar().workable().on(date))
                .average()
                .orElse(Double.NaN);
    }

    private static String workSays(List<Outlook> corn, LocalDate on) {
        if (corn.isEmpty()) {
            return tell("page.calendar.not-known-no-corn-stands");
        }
        ToDoubleFunction<LocalDate> chance = workable(corn);
        List<String> days = Stream.iterate(on, d -> d.plusDays(1))
                .limit(SAID_D)
                .filter(d -> !Double.isNaN(chance.applyAsDouble(d)))
                .map(d ->
                        Dates.tight(d) + ": " + Words.here().form(Measure.CHANCE.of(chance.applyAsDouble(d)), "number"))
                .toList();
        return tell("page.calendar.chances-in-ten-that-a", "days", String.join(", ", days));
    }

    private static List<Week.Stop> turns(Brief brief, Outlook o) {
        return brief.turns().stream()
                .filter(s -> s.pass().zone().equals(o.zone()))
                .toList();
    }

    private record Dated(LocalDate date, PassRow row) {}

    private static Dated turn(Week.Stop s, Format format) {
        String what = tell(
                "page.calendar.from",
                "what",
                CalendarRow.what(s.way(), format),
                "where",
                Phrases.where(s.way().placement()),
                "rig",
                s.rig(),
                "clock",
                PlanView.clock(s.start()));
        String place = s.pass().zone().label();
        return new Dated(
                s.date(), new PassRow(Dates.brief(s.date()), place, what, tell("page.calendar.the-rigs-turn")));
    }

    private static List<PassRow> passes(FarmDay day, DaySpan span, Format format) {
        List<Dated> all = new ArrayList<>();
        for (Pass p : day.farm().passes()) {
            if (span.isDrawn(p.date()) && p.state() != Pass.State.DROPPED) {
                String state = p.state() == Pass.State.MADE ? tell("page.made") : tell("page.calendar.planned-by-you");
                all.add(new Dated(
                        p.date(),
                        new PassRow(
                                Dates.brief(p.date()),
                                MorningView.label(p.field(), p.zone()),
                                CalendarRow.what(p, format) + ", " + Phrases.where(p.placement()),
                                state)));
            }
        }
        for (Brief.Proposed p : day.brief().proposed()) {
            Option o = p.way();
            if (p.turn().isEmpty() && span.isDrawn(o.date())) {
                all.add(new Dated(
                        o.date(),
                        new PassRow(
                                Dates.brief(o.date()),
                                MorningView.label(o.field(), o.zone()),
                                CalendarRow.what(o, format) + ", " + Phrases.where(o.placement()) + ", "
                                        + Words.here().rig(o.rig()),
                                tell("page.calendar.proposed"))));
            }
        }

        day.brief().turns().stream()
                .filter(s -> span.isDrawn(s.date()))
                .map(s -> turn(s, format))
                .forEach(all::add);

        return all.stream()
                .sorted(Comparator.comparing(Dated::date))
                .map(Dated::row)
                .toList();
    }

    /** The zone's own passes. */
    static Stream<Pass> passesOn(FarmDay day, Zone zone) {
        return day.farm().passes().stream().filter(p -> p.isOn(zone) && p.state() != Pass.State.DROPPED);
    }
}
