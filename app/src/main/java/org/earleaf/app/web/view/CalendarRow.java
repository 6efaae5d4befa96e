// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.DaySpan;
import org.earleaf.app.web.drawing.WindowBars;
import org.earleaf.app.web.drawing.WindowBars.Event;
import org.earleaf.app.web.drawing.WindowBars.Mark;
import org.earleaf.app.web.drawing.WindowBars.Rank;
import org.earleaf.app.web.drawing.WindowBars.RigLine;
import org.earleaf.app.web.drawing.WindowBars.Turn;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Pass;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.week.Week;

/**
 * One field of the calendar, drawn and in words.
 *
 * @param bars drawn for a desk and for a phone
 * @param rigs until when each fits
 * @param slips what a day's wait costs
 */
public record CalendarRow(Title title, Act act, CalendarView.Pair bars, Dated dated, List<String> rigs, String slips) {
    /**
     * Which field it is.
     *
     * @param order its place in the row of fields, "1" to do first
     */
    public record Title(String order, String name, String place, Markup ground) {}

    /**
     * What is proposed ("today 50 lb N"), empty for nothing.
     *
     * @param now whether it is for today
     */
    public record Act(String says, boolean now) {}

    /**
     * Its dates.
     *
     * @param shortOn "short 6 Jul (28 Jun to 27 Jul)", "not short in any future"
     * @param uses from when to when nitrogen is of use
     */
    public record Dated(String shortOn, String uses, String silk, String ripe) {}

    private static Markup ground(Outlook o, Format format) {
        return new Say()
                .text(format.area(o.zone().area_ha()))
                .unit(format.areaUnit())
                .text(", " + format.say(o.zone().soil().texture()) + ", " + format.say(o.stage()))
                .done();
    }

    /** From when to when nitrogen is of use. */
    private static String use(Outlook o) {
        return tell(
                "page.calendar-row.to",
                "shortDate",
                Dates.tight(o.calendar().planted()),
                "nitrogenTo",
                o.calendar().nitrogenTo().map(Dates::tight).orElse(tell("page.calendar-row.the-end")));
    }

    static CalendarRow of(
            FarmDay day, Outlook o, int order, List<DaySpan> spans, List<Week.Stop> turns, Format format) {
        Optional<Option> proposed = day.brief().passes().stream()
                .filter(p -> p.part().equals(FieldPart.of(o.zone())))
                .findFirst();
        WindowBars bars = bars(day, o, proposed, turns, format);
        String spoken = tell(
                "page.calendar-row.the-same-stands-in-the", "label", o.zone().label());
        return new CalendarRow(
                new Title(
                        Integer.toString(order),
                        o.zone().label(),
                        Places.of(day.farm()).of(o.zone()),
                        ground(o, format)),
                proposed.map(p -> act(p, day, format)).orElse(new Act("", false)),
                new CalendarView.Pair(bars.draw(spans.get(0), spoken), bars.draw(spans.get(1), spoken)),
                new Dated(
                        shortOn(o.nShort()),
                        use(o),
                        date(o.calendar().silk()),
                        date(o.calendar().maturity())),
                reach(o),
                proposed.map(p -> format.moneyFine(p.waitCost_usdHaDay())).orElse(""));
    }

    private static Act act(Option p, FarmDay day, Format format) {
        String says = Phrases.capital(Dates.soon(p.date(), day.on())) + " " + what(p, format);
        return new Act(says, !p.date().isAfter(day.on()));
    }

    private static WindowBars bars(
            FarmDay day, Outlook o, Optional<Option> proposed, List<Week.Stop> turns, Format format) {
        return new WindowBars(
                o.calendar().planted(),
                o.calendar().nitrogenTo(),
                marks(day, o, proposed, format),
                rigs(o),
                o.nShort(),
                List.of(
                        new Event(tell("page.calendar-row.silk"), o.calendar().silk()),
                        new Event(tell("page.calendar-row.ripe"), o.calendar().maturity())),
                turns.stream()
                        .map(s -> new Turn(s.date(), Words.here().rig(s.rig()) + " " + Dates.tight(s.date())))
                        .toList());
    }

    private static List<Mark> marks(FarmDay day, Outlook o, Optional<Option> proposed, Format format) {
        List<Mark> marks = new ArrayList<>();
        CalendarView.passesOn(day, o.zone()).forEach(p -> {
            Rank rank = p.state() == Pass.State.MADE ? Rank.MADE : Rank.PLANNED;
            marks.add(new Mark(p.date(), rank, what(p, format)));
        });
        proposed.ifPresent(p -> marks.add(new Mark(p.date(), Rank.PROPOSED, what(p, format))));
        return marks;
    }

    /** "50 lb N", or what else is put on. */
    static String what(Option o, Format format) {
        return what(o.nitrogen_kgHa(), Phrases.capital(format.say(o.kind())), format);
    }

    static String what(Pass p, Format format) {
        return what(p.nitrogen_kgHa(), p.product(), format);
    }

    private static String what(double nitrogen_kgHa, String other, Format format) {
        return nitrogen_kgHa > 0 ? format.nitrogen(nitrogen_kgHa) + " " + format.massUnit() + " N" : other;
    }

    /** One line for all rigs that fit equally long, the first to go on top. */
    private static List<RigLine> rigs(Outlook o) {
        Map<Optional<LocalDate>, List<String>> gone = new LinkedHashMap<>();
        List<OutOfReach> reach = Phrases.isRipe(o) ? List.of() : o.reach();
        List<String> always = new ArrayList<>();
        for (OutOfReach r : reach) {
            if (r.date().isEmpty()) {
                always.add(Words.here().rig(r.rig()));
            } else {
                gone.computeIfAbsent(r.lastDay(), k -> new ArrayList<>())
                        .add(Words.here().rig(r.rig()));
            }
        }
        List<RigLine> lines = new ArrayList<>();
        gone.entrySet().stream()
                .sorted((a, b) ->
                        a.getKey().orElse(LocalDate.MIN).compareTo(b.getKey().orElse(LocalDate.MIN)))
                .forEach(e -> lines.add(new RigLine(e.getKey(), true, words(e.getValue(), e.getKey()))));
        if (!always.isEmpty()) {
            lines.add(new RigLine(
                    Optional.of(LocalDate.MAX.minusYears(1)),
                    false,
                    tell("page.calendar-row.to-the-end", "together", together(always))));
        }
        return lines;
    }

    /** "Highboy to Jul 8", one for all rigs that fit equally long. */
    static List<String> reach(Outlook o) {
        return rigs(o).stream().map(RigLine::words).map(Phrases::capital).toList();
    }

    private static String words(List<String> rigs, Optional<LocalDate> last) {
        return last.map(d -> tell("page.calendar-row.to-2", "together", together(rigs), "shortDate", Dates.tight(d)))
                .orElseGet(() -> tell("page.calendar-row.corn-too-tall", "together", together(rigs)));
    }

    private static String together(List<String> rigs) {
        return String.join(", ", rigs);
    }

    static String shortOn(DateSpread when) {
        if (when.p50().isPresent()) {
            return tell("page.calendar-row.short", "when", date(when));
        }
        return when.probability() <= 0
                ? tell("page.calendar-row.not-short-in-any-future")
                : tell("page.calendar-row.short-in-futures", "chance", Measure.CHANCE.of(when.probability()));
    }

    /** "Jul 6 (Jun 28 to Jul 27)". */
    private static String date(DateSpread when) {
        if (when.p50().isEmpty()) {
            return tell("page.calendar-row.not-reached");
        }
        String day = Dates.tight(when.p50().get());
        String late = when.p90().map(Dates::tight).orElse(tell("dates.never"));
        return when.p10()
                .map(Dates::tight)
                .filter(early -> !early.equals(late))
                .map(early -> tell("page.calendar-row.to-3", "day", day, "early", early, "late", late))
                .orElse(day);
    }
}
