// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.earleaf.app.web.drawing.StringChart;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.label.Cautions;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.week.DaySheet;
import org.earleaf.week.Week;

/** What one rig does on one day, on one sheet for the cab or the shop wall. */
public record DaySheetView(
        String date,
        String rig,
        Markup headline,
        Markup chart,
        List<Row> rows,
        List<Wrong> wrong,
        List<String> checks,
        List<String> cautions,
        String back) {
    /** A line of the timetable. */
    public record Row(String time, String where, String what) {}

    private static final int MINUTE_S = 60;

    private record Last(Said place, LocalDate day) {}

    /** What to do if it does not go as planned. */
    public record Wrong(String when, String then) {}

    public static DaySheetView of(Week week, DaySheet sheet, PlanAsked asked, Format format) {
        List<DaySheet.Line> lines = sheet.lines();
        DaySheet.Line home = lines.get(lines.size() - 1);
        int fields = sheet.stops().size();
        Markup headline = new Say()
                .sentence(tell(
                        "page.day-sheet.out-at",
                        "rig",
                        Phrases.capital(Words.here().rig(sheet.rig())),
                        "clock",
                        PlanView.clock(lines.get(0).from())))
                .sentence(tell(
                        "page.day-sheet.home-about",
                        "fields",
                        fields,
                        "loads",
                        sheet.loads(),
                        "clock",
                        PlanView.clock(home.to())))
                .done();
        return new DaySheetView(
                Dates.weekday(sheet.date()),
                Phrases.capital(Words.here().rig(sheet.rig())),
                headline,
                StringChart.of(sheet, "string-says"),
                rows(lines, format),
                wrong(week, sheet),
                checks(sheet),
                cautions(sheet),
                asked.link("/plan"));
    }

    /** The way to a field and its first load stand in one row. */
    private static List<Row> rows(List<DaySheet.Line> lines, Format format) {
        List<Row> all = new ArrayList<>();
        for (int k = 0; k < lines.size(); k++) {
            DaySheet.Line l = lines.get(k);
            String name = format.say(l.stop().pass().place());
            String time = PlanView.clock(l.from());
            switch (l.kind()) {
                case LEAVE -> {
                    k++;
                    all.add(new Row(
                            time,
                            name,
                            tell(
                                    "page.day-sheet.set-out-there",
                                    "clock",
                                    PlanView.clock(l.to()),
                                    "load",
                                    load(lines.get(k), format))));
                }
                case LOAD -> all.add(new Row(time, name, load(l, format)));
                case HOME ->
                    all.add(new Row(time, tell("page.day-sheet.yard"), tell("page.day-sheet.home-rinse-the-tank")));
            }
        }
        return all;
    }

    private static String load(DaySheet.Line l, Format format) {
        String ground = format.area(l.ground_ha()) + " " + format.areaUnit();
        String what = PlanView.what(l.stop().way(), format);
        if (l.load() == 0) {
            return tell("page.day-sheet.done", "ground", ground, "what", what, "clock", PlanView.clock(l.to()));
        }
        return tell(
                "page.day-sheet.fill-and-empty",
                "wait",
                Measure.DURATION.of(l.wait_min() < 1 ? 0 : MINUTE_S * l.wait_min()),
                "load",
                l.load(),
                "loads",
                l.stop().loads(),
                "volume",
                Amounts.volume(l.litres() / 1000, format.isMetric()),
                "fill",
                Measure.DURATION.of(MINUTE_S * l.fill_min()),
                "ground",
                ground,
                "what",
                what,
                "clock",
                PlanView.clock(l.to()));
    }

    private static List<Wrong> wrong(Week week, DaySheet sheet) {
        List<Wrong> all = new ArrayList<>();
        List<Week.Stop> byWait = sheet.stops().stream()
                .sorted(Comparator.comparingDouble((Week.Stop s) -> -s.way().waitCost_usdHaDay()))
                .toList();
        Week.Stop dearest = byWait.get(0);
        all.add(new Wrong(
                tell("page.day-sheet.time-runs-short"),
                tell(
                        "page.day-sheet.first-a-days-wait-costs",
                        "place",
                        dearest.pass().place(),
                        "cost",
                        Measure.MONEY_RATE.of(dearest.way().waitCost_usdHaDay()),
                        "stops",
                        byWait.size(),
                        "last",
                        byWait.get(byWait.size() - 1).pass().zone().label())));
        sheet.stops().stream()
                .map(s -> new Last(s.pass().place(), s.pass().days(sheet.rig()).lastKey()))
                .filter(l -> l.day().isBefore(week.on().plusDays(Week.DAYS - 1L)))
                .sorted(Comparator.comparing(Last::day))
                .limit(3)
                .forEach(l -> all.add(new Wrong(
                        tell("page.day-sheet.is-not-done", "place", l.place()),
                        tell("page.day-sheet.the-may-do-it-until", "rig", sheet.rig(), "day", Dates.brief(l.day())))));
        all.add(new Wrong(tell("page.day-sheet.rain"), tell("page.day-sheet.finish-the-load-in-the")));
        return all;
    }

    private static List<String> checks(DaySheet sheet) {
        List<String> all = new ArrayList<>(List.of(
                tell("page.day-sheet.load-sheet-and-label-of"),
                tell("page.day-sheet.clean-water-eyewash-gloves"),
                tell("page.day-sheet.outlets-pressure-and-speed")));
        if (sheet.stops().stream().anyMatch(s -> !s.way().isNitrogen())) {
            all.add(tell("page.day-sheet.wind-and-inversion-looked"));
        }
        all.add(tell("page.day-sheet.power-lines-crossings-and"));
        return all;
    }

    private static List<String> cautions(DaySheet sheet) {
        List<String> all = new ArrayList<>();
        boolean nitrogen = sheet.stops().stream().map(Week.Stop::way).anyMatch(Option::isNitrogen);
        if (nitrogen) {
            all.add(tell("page.day-sheet.nitrogen-solution-burns"));
        }
        all.add(tell("page.day-sheet.times-are-estimates-weather"));
        all.add(Words.here().say(Cautions.LABEL));
        return all;
    }
}
