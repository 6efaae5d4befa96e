// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.web.drawing.SoilCutaway;
import org.earleaf.app.web.drawing.Wetness;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * One day of a field's soil: the cut-away, one sentence, and a table with the same values.
 *
 * @param quantum nitrogen that a mark of the drawing stands for
 * @param total nitrate of all depths
 */
public record DayView(
        String heading,
        InRun inRun,
        Markup drawing,
        String quantum,
        Markup sentence,
        List<DepthRow> rows,
        String total) {
    /** Of what the crop asks for, from which it is told to be short. */
    private static final double HELD_BACK = .93;

    /**
     * Where the day lies in the run.
     *
     * @param iso the day, 2026-06-30
     * @param index of the day in the run
     * @param last index of the run's last day
     * @param before address of the day before, empty on the first
     * @param after address of the day after, empty on the last
     */
    public record InRun(String iso, int index, int last, String before, String after) {}

    /** A foot of soil, per area of field; the surface has no water word. */
    public record DepthRow(String depth, String row, String middle, String ammonium, String water) {}

    /**
     * @param lines clearances to draw
     * @param address of the field's page, to which the day is added
     */
    static DayView of(Outlook o, LocalDate date, List<SoilCutaway.Clearance> lines, String address, Format format) {
        SeasonTrace trace = o.trace();
        int day = trace.day(date);
        LocalDate shown = trace.date(day);
        SoilCutaway cutaway = new SoilCutaway(o.zone(), trace, taller(o), format);
        String now = shown.equals(o.on()) ? tell("page.day.today") : "";
        return new DayView(
                Dates.weekday(shown) + now,
                inRun(trace, day, address),
                cutaway.draw(day, "cut-says", lines),
                quantum(cutaway.quantum_kgHa() / format.perNitrogenUnit_kgHa(), format),
                sentence(o, day, format),
                rows(o, day, format),
                format.nitrogen(SoilSums.of(trace, day, Cell.NITRATE)));
    }

    private static InRun inRun(SeasonTrace trace, int day, String address) {
        LocalDate shown = trace.date(day);
        int last = trace.days() - 1;
        return new InRun(
                shown.toString(),
                day,
                last,
                day == 0 ? "" : address + "day=" + shown.minusDays(1),
                day == last ? "" : address + "day=" + shown.plusDays(1));
    }

    /** A height that was read moves the whole season's heights. */
    private static double taller(Outlook o) {
        double run_cm = o.trace().at(o.today(), Daily.HEIGHT_CM);
        return run_cm < 1 ? 1 : o.height_cm().p50() / run_cm;
    }

    private static String quantum(double amount, Format format) {
        String number = amount == .25 ? "\u00bc" : amount == .5 ? "\u00bd" : Format.number(amount, 0);
        return number + " " + format.massUnit();
    }

    private static List<DepthRow> rows(Outlook o, int day, Format format) {
        SeasonTrace t = o.trace();
        List<DepthRow> rows = new ArrayList<>();
        rows.add(new DepthRow(
                tell("page.day.on-the-ground"),
                format.nitrogen(t.surface(day, SeasonTrace.ROW)),
                format.nitrogen(t.surface(day, SeasonTrace.MIDDLE)),
                "",
                ""));
        for (int foot = 0; foot < SoilCutaway.FEET.size(); foot++) {
            int from = SoilCutaway.FEET.get(foot).from();
            int to = SoilCutaway.FEET.get(foot).to();
            double ammonium = 0;
            for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
                ammonium += SoilSums.of(t, day, Cell.AMMONIUM, column, from, to)
                        + SoilSums.of(t, day, Cell.UREA, column, from, to);
            }
            rows.add(new DepthRow(
                    depth(foot, format),
                    format.nitrogen(SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.ROW, from, to)),
                    format.nitrogen(SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.MIDDLE, from, to)),
                    format.nitrogen(ammonium),
                    water(o, day, SeasonTrace.ROW, from, to) + ", " + water(o, day, SeasonTrace.MIDDLE, from, to)));
        }
        return rows;
    }

    private static String water(Outlook o, int day, int column, int from, int to) {
        return Wetness.of(o.trace(), o.zone().soil(), day, column, from, to).word();
    }

    private static String depth(int foot, Format format) {
        String[] us = {
            tell("page.day.0-to-1-ft"),
            tell("page.day.1-to-2-ft"),
            tell("page.day.2-to-3-ft"),
            tell("page.day.3-to-5-ft")
        };
        String[] metric = {
            tell("page.day.0-to-30-cm"),
            tell("page.day.30-to-61-cm"),
            tell("page.day.61-to-91-cm"),
            tell("page.day.91-to-152-cm")
        };
        return (format.isMetric() ? metric : us)[foot];
    }

    private static Markup sentence(Outlook o, int day, Format format) {
        SeasonTrace t = o.trace();
        double row = SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.ROW, 0, 3);
        double middle = SoilSums.of(t, day, Cell.NITRATE, SeasonTrace.MIDDLE, 0, 3);
        Say say = new Say()
                .markup(format.markup(Said.of(
                        format.isMetric() ? "page.day.nitrate-metric" : "page.day.nitrate",
                        "all",
                        Measure.NITROGEN_RATE.of(SoilSums.of(t, day, Cell.NITRATE)),
                        "row",
                        Measure.NITROGEN_RATE.of(row),
                        "middle",
                        Measure.NITROGEN_RATE.of(middle))))
                .text(" ");
        double lying = SoilSums.surface(t, day);
        if (format.nitrogenValue(lying) >= 1) {
            say.text(tell("page.day.lies-on-the-ground-waiting", "rate", Measure.NITROGEN_RATE.of(lying)))
                    .text(" ");
        }
        if (t.at(day, Daily.RAIN) >= 1) {
            say.text(tell("page.day.rain", "rain", Measure.RAIN.of(t.at(day, Daily.RAIN))))
                    .text(" ");
        }
        crop(say, t, day, format);
        return day > o.today()
                ? say.text(" ").text(tell("page.day.a-likely-future-not-a")).done()
                : say.done();
    }

    /** What the crop asks for and gets; below a tenth of a pound a day it asks for nothing worth saying. */
    private static void crop(Say say, SeasonTrace t, int day, Format format) {
        double demand = t.at(day, Daily.DEMAND);
        double uptake = t.at(day, Daily.UPTAKE);
        if (t.at(day, Daily.COLLARS) <= 0) {
            say.text(tell("page.day.no-crop-stands-yet"));
        } else if (format.nitrogenValue(demand) < .1) {
            say.text(tell("page.day.the-crop-asks-for-no"));
        } else if (uptake < HELD_BACK * demand) {
            say.strong(tell(
                    "page.day.the-crop-gets-of-the",
                    "nitrogenFine",
                    format.nitrogenFine(uptake),
                    "nitrogenFine2",
                    format.nitrogenFine(demand),
                    "massUnit",
                    format.massUnit()));
        } else {
            say.text(tell(
                    "page.day.the-crop-gets-all-it",
                    "nitrogenFine",
                    format.nitrogenFine(demand),
                    "massUnit",
                    format.massUnit()));
        }
    }
}
