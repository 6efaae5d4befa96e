// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.drawing.Thumbnail;
import org.earleaf.app.web.drawing.Whisker;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.brief.Brief;
import org.earleaf.decide.Option;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;
import org.earleaf.week.Week;

/** The morning page. */
public record MorningView(
        Top top,
        List<Entry> entries,
        List<Later> later,
        SprayView spray,
        ReachView reach,
        List<LeftRow> leftOut,
        List<ReadingRow> readings,
        List<String> cautions,
        String behind) {

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

    /** The day with its constants, what to do on it, and what is to be looked to first. */
    public record Top(String date, List<Figured> constants, Markup headline, List<String> alarms) {}

    /** A pass for today. */
    public record Entry(String when, boolean first, Ground ground, Act act, WorthView worth, Waiting waiting) {}

    /** The field of a pass. */
    public record Ground(String name, String area, String place, Markup thumbnail) {}

    /**
     * What to do there, and why.
     *
     * @param choice names it in addresses
     * @param loads whether it has a load sheet
     * @param assumed for lack of a reading; empty when nothing was
     */
    public record Act(String choice, Markup what, Markup product, String why, boolean loads, String assumed) {}

    /**
     * What a day's wait costs.
     *
     * @param whole on the whole field; empty where that is not known or waiting costs nothing
     */
    public record Waiting(String area, String whole) {}

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

    /** Something that is not proposed. */
    public record LeftRow(String name, String kind, String reason) {}

    /** A reading worth the drive; {@code link} is empty when it cannot be entered on the Walk page. */
    public record ReadingRow(String name, Markup take, String link, String because) {}

    public static MorningView of(FarmDay day, Format format) {
        Brief brief = day.brief();
        Places places = Places.of(day.farm());
        List<Brief.Proposed> today = brief.proposed().stream()
                .filter(p -> !p.way().date().isAfter(brief.on()))
                .toList();
        List<Brief.Proposed> later = brief.proposed().stream()
                .filter(p -> p.way().date().isAfter(brief.on()))
                .toList();
        return new MorningView(
                new Top(
                        Dates.weekday(brief.on()),
                        constants(day, brief, format),
                        MorningHeadline.of(
                                brief,
                                today.stream().map(Brief.Proposed::way).toList(),
                                later.stream().map(Brief.Proposed::way).toList(),
                                format),
                        brief.alarms().stream().map(format::say).toList()),
                entries(brief, today, places, format),
                laters(later, places, format),
                SprayView.of(brief.spray(), format),
                ReachView.of(brief, day.farm(), places, format),
                leftOut(brief, format),
                readings(brief, places, format),
                brief.usualCautions().stream().map(format::say).toList(),
                tell(
                        "page.morning.seasons-were-simulated",
                        "seasonsSimulated",
                        Format.number(brief.seasonsSimulated(), 0)));
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

    private static List<Entry> entries(Brief brief, List<Brief.Proposed> today, Places places, Format format) {
        Whisker scale = Whisker.scaleOf(today.stream().map(p -> p.way().worth()).toList());
        List<Entry> entries = new ArrayList<>();
        for (Brief.Proposed p : today) {
            Option o = p.way();
            Optional<Outlook> outlook = outlook(brief, o);
            double area_ha = outlook.map(k -> k.zone().area_ha()).orElse(Double.NaN);
            boolean first = entries.isEmpty();
            entries.add(new Entry(
                    p.turn()
                            .map(MorningView::clock)
                            .orElse(first ? tell("page.morning.first") : tell("page.morning.then")),
                    first,
                    new Ground(
                            label(o.field(), o.zone()),
                            Double.isNaN(area_ha) ? "" : format.area(area_ha) + " " + format.areaUnit(),
                            places.of(o.field(), o.zone()),
                            outlook.map(k -> thumbnail(k, format)).orElse(Markup.NONE)),
                    act(p, format),
                    WorthView.of(o.worth(), scale, "$0", false, format),
                    waiting(o, area_ha, format)));
        }
        return entries;
    }

    /** From when to when a rig is there. */
    private static String clock(Week.Stop turn) {
        return tell("page.plan.to", "clock", PlanView.clock(turn.start()), "clock2", PlanView.clock(turn.end()));
    }

    private static Act act(Brief.Proposed p, Format format) {
        Option o = p.way();
        return new Act(
                Choice.key(o),
                new Say()
                        .markup(Phrases.rate(o, format))
                        .text(" " + Phrases.where(o.placement()) + ", "
                                + Words.here().rig(o.rig()) + ".")
                        .done(),
                Phrases.product(o, format),
                Stream.concat(Stream.of(why(o, format)), own(p, format).stream())
                        .collect(Collectors.joining(" ")),
                o.isNitrogen(),
                SprayView.assumed(o));
    }

    /** @param area_ha NaN where it is not known */
    private static Waiting waiting(Option o, double area_ha, Format format) {
        double cost = o.waitCost_usdHaDay();
        return new Waiting(
                format.moneyFine(cost),
                Double.isNaN(area_ha) || cost <= 0
                        ? ""
                        : tell("page.morning.a-field", "number", Format.number(cost * area_ha, 0)));
    }

    private static Markup thumbnail(Outlook o, Format format) {
        double left = SoilSums.mineral(o.trace(), o.today());
        String label = tell(
                "page.morning.soil-under-two-rows-to",
                "label",
                o.zone().label(),
                "nitrogen",
                format.nitrogen(left),
                "nitrogenUnit",
                format.nitrogenUnit());
        return Thumbnail.of(o.zone(), o.trace(), o.today(), format, label);
    }

    /** What would be best for the field by itself, where the plan does otherwise. */
    private static Optional<String> own(Brief.Proposed p, Format format) {
        return p.own().map(own -> format.say(own.said()));
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
                Stream.concat(Stream.of(shortWhy(o, format)), own(p, format).stream())
                        .collect(Collectors.joining(" ")));
    }

    private static List<LeftRow> leftOut(Brief brief, Format format) {
        return brief.leftOut().stream()
                .map(l -> new LeftRow(
                        label(l.field(), l.zone()), Phrases.capital(format.say(l.kind())), format.say(l.reason())))
                .toList();
    }

    private static List<ReadingRow> readings(Brief brief, Places places, Format format) {
        return brief.readings().stream()
                .map(r -> new ReadingRow(
                        label(r.field(), r.zone()),
                        Marks.reading(Phrases.capital(format.say(r.take()))),
                        "/walk?place=" + places.of(r.field(), r.zone()) + "&kind="
                                + r.kind().word(),
                        format.say(r.because())))
                .toList();
    }

    private static String why(Option o, Format format) {
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
