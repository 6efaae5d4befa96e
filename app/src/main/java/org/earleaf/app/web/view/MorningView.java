// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.brief.RigDay;
import org.earleaf.decide.Option;
import org.earleaf.farm.WeatherAge;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;

/**
 * The morning page: what the rigs do today and tomorrow, what to look to, and the rest behind a line each.
 *
 * @param first what is to be looked to before anything else; empty: nothing
 * @param tomorrow its day
 */
public record MorningView(
        Top top,
        String first,
        List<RigRow> today,
        Tomorrow tomorrow,
        List<Markup> attention,
        List<ReadingRow> drive,
        Rest rest,
        List<String> cautions,
        String behind) {
    /** So many readings are named at once; the others stand with the rest. */
    private static final int DRIVE = 3;

    private static final List<Figure> FIGURES = List.of(
            Figure.CHOICE_MADE,
            Figure.WORTH,
            Figure.CHANCE,
            Figure.WAIT,
            Figure.SHORT,
            Figure.SOIL,
            Figure.REACH,
            Figure.STAGE,
            Figure.WEATHER_AHEAD,
            Figure.SPRAY_HOURS,
            Figure.SPRAY,
            Figure.READING,
            Figure.ENTERED,
            Figure.RUNS);

    /** What this page shows, to ask why. */
    public List<Figure> figures() {
        return FIGURES;
    }

    /** The day with its constants and what to do on it. */
    public record Top(String date, List<Figured> constants, Markup headline) {}

    /**
     * One rig's day.
     *
     * @param placement where all of its passes go; empty where they differ
     * @param hours "out 6:30 am, done 2:20 pm"; empty where the plan gives none
     * @param sum all of it in one line; empty where there are few jobs
     */
    public record RigRow(String rig, String placement, String hours, Markup sum, List<JobRow> jobs) {}

    /** The day after today. */
    public record Tomorrow(String day, List<RigRow> rigs) {}

    /**
     * A pass.
     *
     * @param when "6:50 to 10:10 am"; empty where the plan gives no hours
     * @param choice names it in addresses
     * @param own what would be best for the field by itself, where the plan does otherwise; empty: the same
     */
    public record JobRow(
            Ground ground, String when, String choice, Act act, WorthView worth, Waiting waiting, String own) {}

    /** The field of a pass. */
    public record Ground(String name, String area, String place, Markup thumbnail) {}

    /**
     * What to do there, and why.
     *
     * @param brief the reason in one line
     * @param loads whether it has a load sheet
     * @param assumed for lack of a reading; empty when nothing was
     */
    public record Act(Markup what, String brief, String why, boolean loads, String assumed) {}

    /**
     * What a day's wait costs.
     *
     * @param whole on the whole field; empty where that is not known or waiting costs nothing
     */
    public record Waiting(String area, String whole) {}

    /** What stands one tap away. */
    public record Rest(
            List<Later> later,
            SprayView spray,
            ReachView reach,
            List<LeftRow> leftOut,
            List<LeftRow> notJudged,
            List<ReadingRow> readings) {}

    /** A pass of the next days. */
    public record Later(
            String when,
            String name,
            String place,
            String choice,
            Markup what,
            Markup worth,
            String chance,
            String waiting,
            String why) {}

    /** Something that is not proposed: for the same reason on these fields. */
    public record LeftRow(String names, String kind, String answer, String reason) {}

    /** A reading worth the drive; {@code link} is empty when it cannot be entered on the Walk page. */
    public record ReadingRow(String name, Markup take, String link, String because, String worth) {}

    public static MorningView of(FarmDay day, Format format) {
        Brief brief = day.brief();
        Places places = Places.of(day.farm());
        Optional<WeatherAge> age = WeatherAge.of(day.farm().weather(), day.on());
        Optional<Said> old = age.flatMap(WeatherAge::alarm);
        List<ReadingRow> readings = readings(brief, places, format);
        MorningJobs jobs = new MorningJobs(brief, places, format);
        return new MorningView(
                new Top(
                        Dates.weekday(brief.on()),
                        constants(day, brief, format),
                        MorningHeadline.of(brief, ways(brief.today()), format)),
                old.map(format::say).orElse(""),
                jobs.rows(brief.today()),
                new Tomorrow(Dates.brief(brief.on().plusDays(1)), jobs.rows(brief.tomorrow())),
                attention(brief, old, age, format),
                readings.stream().limit(DRIVE).toList(),
                new Rest(
                        laters(brief.afterTomorrow(), places, format),
                        SprayView.of(brief.spray(), format),
                        ReachView.of(brief, day.farm(), places, format),
                        leftOut(brief.judged(), format),
                        leftOut(brief.notJudged(), format),
                        readings.stream().skip(DRIVE).toList()),
                brief.usualCautions().stream()
                        .filter(c -> !age.map(WeatherAge::said).equals(Optional.of(c)))
                        .map(format::say)
                        .toList(),
                tell(
                        "page.morning.seasons-were-simulated",
                        "seasonsSimulated",
                        Format.number(brief.seasonsSimulated(), 0)));
    }

    private static List<Option> ways(List<RigDay> days) {
        return days.stream()
                .flatMap(d -> d.jobs().stream())
                .map(Brief.Proposed::way)
                .toList();
    }

    /** What is to be done about now; at the end how far the weather is known. */
    private static List<Markup> attention(Brief brief, Optional<Said> old, Optional<WeatherAge> age, Format format) {
        List<Markup> all = new ArrayList<>();
        brief.alarms().stream()
                .filter(a -> !old.equals(Optional.of(a)))
                .map(format::say)
                .map(Marks::open)
                .forEach(all::add);
        age.filter(a -> old.isEmpty())
                .map(a -> Marks.done(format.say(a.said())))
                .ifPresent(all::add);
        return all;
    }

    private static List<Figured> constants(FarmDay day, Brief brief, Format format) {
        List<Figured> all = new ArrayList<>();
        List<WeatherDay> forecast = day.farm().weather().forecast();
        forecast.stream()
                .filter(w -> w.date().equals(brief.on()))
                .findFirst()
                .ifPresent(w -> all.add(new Figured(
                        Figure.WEATHER_AHEAD,
                        new Say()
                                .text(tell(
                                        "page.morning.to",
                                        "temperature",
                                        format.temperature(w.tmin_C()),
                                        "temperature2",
                                        format.temperature(w.tmax_C())))
                                .unit(format.temperatureUnit())
                                .done())));
        all.add(new Figured(Figure.WEATHER_AHEAD, rain(day, forecast, brief.on(), format)));
        Phrases.stages(brief.outlooks())
                .ifPresent(s -> all.add(new Figured(Figure.STAGE, Markup.text(tell("page.morning.corn", "s", s)))));
        return all;
    }

    private static Markup rain(FarmDay day, List<WeatherDay> forecast, LocalDate on, Format format) {
        List<Double> chances = day.farm().weather().rainChance();
        boolean any = !forecast.isEmpty()
                && !forecast.get(0).date().isAfter(on.plusDays(1))
                && !forecast.get(forecast.size() - 1).date().isBefore(on);
        for (int k = 0; k < forecast.size(); k++) {
            WeatherDay w = forecast.get(k);
            if (any && !w.date().isBefore(on) && w.rain_mm() >= 1) {
                Measured rain = Measure.RAIN.of(w.rain_mm());
                double chance = k < chances.size() ? chances.get(k) : Double.NaN;
                return format.markup(
                        Double.isNaN(chance)
                                ? Said.of("page.morning.rain", "day", w.date(), "rain", rain)
                                : Said.of(
                                        "page.morning.rain-chance",
                                        "day",
                                        w.date(),
                                        "rain",
                                        rain,
                                        "chance",
                                        Measure.SHARE.of(chance)));
            }
        }
        return Markup.text(any ? tell("page.morning.no-rain-in-the-forecast") : tell("page.morning.no-forecast-given"));
    }

    private static List<Later> laters(List<Brief.Proposed> later, Places places, Format format) {
        return later.stream().map(p -> later(p, p.way(), places, format)).toList();
    }

    private static Later later(Brief.Proposed p, Option o, Places places, Format format) {
        return new Later(
                Dates.brief(o.date())
                        + p.turn().map(t -> " " + PlanView.clock(t.start())).orElse(""),
                label(o.field(), o.zone()),
                places.of(o.field(), o.zone()),
                Choice.key(o),
                new Say()
                        .markup(Phrases.rate(o, format))
                        .text(" " + Phrases.where(o.placement()) + ", "
                                + Words.here().rig(o.rig()))
                        .done(),
                new Say()
                        .strong(format.money(o.worth().mean_usdHa()))
                        .range(format.moneyRange(
                                o.worth().p10_usdHa(), o.worth().p90_usdHa()))
                        .done(),
                format.words().say(Measure.CHANCE.of(o.worth().chanceItPays())),
                format.moneyFine(o.waitCost_usdHaDay()),
                Stream.concat(Stream.of(shortWhy(o, format)), MorningJobs.own(p, format).stream())
                        .collect(Collectors.joining(" ")));
    }

    /** Fields with the same reason in one row. */
    private static List<LeftRow> leftOut(List<Brief.LeftOut> all, Format format) {
        return all.stream()
                .collect(Collectors.groupingBy(
                        l -> new LeftRow(
                                "",
                                Phrases.capital(format.say(l.kind())),
                                format.say(l.answer()),
                                format.say(l.reason())),
                        LinkedHashMap::new,
                        Collectors.mapping(l -> label(l.field(), l.zone()), Collectors.joining("; "))))
                .entrySet()
                .stream()
                .map(e -> new LeftRow(
                        e.getValue(),
                        e.getKey().kind(),
                        e.getKey().answer(),
                        e.getKey().reason()))
                .toList();
    }

    private static List<ReadingRow> readings(Brief brief, Places places, Format format) {
        return brief.readings().stream()
                .map(r -> new ReadingRow(
                        label(r.field(), r.zone()),
                        Marks.reading(Phrases.capital(format.say(r.take()))),
                        "/walk?place=" + places.of(r.field(), r.zone()) + "&kind="
                                + r.kind().word(),
                        format.say(r.because()),
                        Double.isNaN(r.worth_usdHa())
                                ? ""
                                : tell("page.morning.reading-worth", "worth", Measure.MONEY_RATE.of(r.worth_usdHa()))))
                .toList();
    }

    static String why(Option o, Format format) {
        return String.join(" ", format.say(o.why()));
    }

    /** The first reason and the last, for a line of a table; the field's page has them all. */
    private static String shortWhy(Option o, Format format) {
        int n = o.why().size();
        return n < 3
                ? why(o, format)
                : format.say(o.why().get(0).said()) + " "
                        + format.say(o.why().get(n - 1).said());
    }

    static String label(String field, String zone) {
        return zone.isEmpty() ? field : field + ", " + zone;
    }

    static Optional<Outlook> outlook(Brief brief, Option o) {
        return brief.outlooks().stream()
                .filter(k ->
                        k.zone().field().equals(o.field()) && k.zone().zone().equals(o.zone()))
                .findFirst();
    }
}
