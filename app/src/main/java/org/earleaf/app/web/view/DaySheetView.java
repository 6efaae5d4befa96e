// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.earleaf.app.Amounts;
import org.earleaf.app.web.drawing.StringChart;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.decide.Option;
import org.earleaf.label.Cautions;
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

    private record Last(String place, LocalDate day) {}

    /** What to do if it does not go as planned. */
    public record Wrong(String when, String then) {}

    public static DaySheetView of(Week week, DaySheet sheet, PlanAsked asked, Format format) {
        List<DaySheet.Line> lines = sheet.lines();
        DaySheet.Line home = lines.get(lines.size() - 1);
        int fields = sheet.stops().size();
        String loads = sheet.loads() == 0 ? "" : ", " + PlanView.loads(sheet.loads());
        Markup headline = new Say()
                .sentence(Words.capital(sheet.rig()) + " out at "
                        + PlanView.clock(lines.get(0).from()) + ".")
                .sentence((fields == 1 ? "One field" : fields + " fields") + loads + ", home about "
                        + PlanView.clock(home.to()) + ".")
                .done();
        return new DaySheetView(
                Format.longDay(sheet.date()),
                Words.capital(sheet.rig()),
                headline,
                StringChart.of(sheet, "string-says"),
                rows(lines, format),
                wrong(week, sheet, format),
                checks(sheet),
                cautions(sheet),
                asked.link("/plan"));
    }

    /** The way to a field and its first load stand in one row. */
    private static List<Row> rows(List<DaySheet.Line> lines, Format format) {
        List<Row> all = new ArrayList<>();
        for (int k = 0; k < lines.size(); k++) {
            DaySheet.Line l = lines.get(k);
            String name = l.stop().pass().place();
            String time = PlanView.clock(l.from());
            switch (l.kind()) {
                case LEAVE -> {
                    k++;
                    all.add(new Row(
                            time,
                            name,
                            "Set out; there " + PlanView.clock(l.to()) + ". " + load(lines.get(k), format)));
                }
                case LOAD -> all.add(new Row(time, name, load(l, format)));
                case HOME -> all.add(new Row(time, "Yard", "Home. Rinse the tank."));
            }
        }
        return all;
    }

    private static String load(DaySheet.Line l, Format format) {
        String ground = format.area(l.ground_ha()) + " " + format.areaUnit();
        String what = PlanView.what(l.stop().way(), format);
        if (l.load() == 0) {
            return ground + ", " + what + ". Done " + PlanView.clock(l.to()) + ".";
        }
        String wait = l.wait_min() < 1 ? "" : "wait about " + Format.number(l.wait_min(), 0) + " min for the tender, ";
        String of = l.stop().loads() == 1
                ? ""
                : "Load " + l.load() + " of " + l.stop().loads() + ": ";
        return Words.capital(of + wait + "fill ")
                + Amounts.volume(l.litres() / 1000, format.isMetric()) + ", " + Format.number(l.fill_min(), 0)
                + " min; " + ground + (l.load() == 1 ? ", " + what : "") + ". Empty " + PlanView.clock(l.to()) + ".";
    }

    private static List<Wrong> wrong(Week week, DaySheet sheet, Format format) {
        List<Wrong> all = new ArrayList<>();
        List<Week.Stop> byWait = sheet.stops().stream()
                .sorted(Comparator.comparingDouble((Week.Stop s) -> -s.way().waitCost_usdHaDay()))
                .toList();
        Week.Stop dearest = byWait.get(0);
        all.add(new Wrong(
                "Time runs short",
                "First " + dearest.pass().place() + ": a day’s wait costs "
                        + format.moneyFine(dearest.way().waitCost_usdHaDay()) + "/" + format.areaUnit()
                        + (byWait.size() == 1
                                ? "."
                                : "; last "
                                        + byWait.get(byWait.size() - 1)
                                                .pass()
                                                .zone()
                                                .label() + ".")));
        sheet.stops().stream()
                .map(s -> new Last(s.pass().place(), s.pass().days(sheet.rig()).lastKey()))
                .filter(l -> l.day().isBefore(week.on().plusDays(Week.DAYS - 1L)))
                .sorted(Comparator.comparing(Last::day))
                .limit(3)
                .forEach(l -> all.add(new Wrong(
                        l.place() + " is not done",
                        "The " + sheet.rig() + " may do it until " + Format.day(l.day()) + ".")));
        all.add(new Wrong("Rain", "Finish the load in the tank if the label and the ground allow, then stop."));
        return all;
    }

    private static List<String> checks(DaySheet sheet) {
        List<String> all = new ArrayList<>(List.of(
                "Load sheet and label of every product in the cab",
                "Clean water, eyewash, gloves and what else the label asks for",
                "Outlets, pressure and speed as on the rig’s sheet"));
        if (sheet.stops().stream().anyMatch(s -> !s.way().isNitrogen())) {
            all.add("Wind and inversion looked at on the spot, at boom height");
        }
        all.add("Power lines, crossings and soft ground on the way known");
        return all;
    }

    private static List<String> cautions(DaySheet sheet) {
        List<String> all = new ArrayList<>();
        boolean nitrogen = sheet.stops().stream().map(Week.Stop::way).anyMatch(Option::isNitrogen);
        if (nitrogen) {
            all.add("Nitrogen solution burns eyes and skin: wash at once with clean water.");
        }
        all.add("Times are estimates: weather, wind and the ground on the spot decide.");
        all.add(Cautions.LABEL);
        return all;
    }
}
