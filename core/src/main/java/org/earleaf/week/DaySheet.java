// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.earleaf.plan.Job;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.TenderDay;

/**
 * What one rig does on one day, load by load, for whoever drives it.
 *
 * @param lines in their order, from leaving the yard to being back
 */
public record DaySheet(String rig, LocalDate date, List<Line> lines) {
    /** What a line tells. */
    public enum Kind {
        /** Sets out for a field. */
        LEAVE,
        /** Fills and works a load off; without loads, works. */
        LOAD,
        /** Is back at the yard. */
        HOME
    }

    /**
     * One line.
     *
     * @param from begin of the drive, of the filling, or the arrival at home
     * @param to end of it
     * @param stop the job it belongs to; for the way home the last one
     * @param load from 1; 0: not parted into loads
     * @param litres of this load; NaN: not known
     * @param ground_ha of this load
     * @param fill_min minutes of filling within it
     * @param wait_min minutes of waiting for a tender before that
     */
    public record Line(
            Kind kind,
            LocalDateTime from,
            LocalDateTime to,
            Week.Stop stop,
            int load,
            double litres,
            double ground_ha,
            double fill_min,
            double wait_min) {}

    public DaySheet {
        lines = List.copyOf(lines);
    }

    /** Empty: the rig stays at home that day. */
    public static Optional<DaySheet> of(Week week, String rig, LocalDate date) {
        PlanProblem problem = week.problem();
        return IntStream.range(0, problem.shifts().size())
                .filter(s -> problem.rigOf(problem.shifts().get(s)).equals(rig))
                .filter(s -> week.date(problem.shifts().get(s)).equals(date))
                .filter(s -> !week.routes().routes().get(s).isEmpty())
                .mapToObj(s -> of(week, s))
                .findFirst();
    }

    private static DaySheet of(Week week, int s) {
        Shift shift = week.problem().shifts().get(s);
        List<Week.Stop> stops = week.stops(s);
        List<Line> lines = new ArrayList<>();
        double fill_min = new WorkTime(week.farm()).fill_s() / 60;
        for (Week.Stop stop : stops) {
            lines.add(new Line(Kind.LEAVE, stop.leave(), stop.start(), stop, 0, Double.NaN, 0, 0, 0));
            lines.addAll(loads(stop, fill_min));
        }
        Week.Stop last = stops.get(stops.size() - 1);
        Job job = week.problem().jobs().get(last.job());
        double home_s = week.problem()
                .roads()
                .travel_s(job.at(), week.problem().rigs().get(shift.rig()).yard());
        lines.add(new Line(
                Kind.HOME,
                last.end().plusSeconds(Math.round(home_s)),
                last.end().plusSeconds(Math.round(home_s)),
                last,
                0,
                Double.NaN,
                0,
                0,
                0));
        return new DaySheet(week.problem().rigOf(shift), week.date(shift), lines);
    }

    /** Equal loads: each is waited for where the tender is away, filled, then worked off. */
    private static List<Line> loads(Week.Stop stop, double fill_min) {
        int n = Math.max(1, stop.loads());
        double all_s = java.time.Duration.between(stop.start(), stop.end()).toSeconds();
        double ground_ha = stop.pass().area_ha();
        double litres = FieldPass.litresHa(stop.way()) * ground_ha;
        boolean tended = stop.loads() > 0 && stop.fills().size() == n;
        List<Line> lines = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double from_s = all_s * k / n;
            double to_s = all_s * (k + 1) / n;
            double wait_s = 0;
            if (tended) {
                TenderDay.Fill first = stop.fills().get(0);
                TenderDay.Fill own = stop.fills().get(k);
                wait_s = own.wait_s();
                from_s = called_s(own) - called_s(first);
                to_s = own.end_s() - called_s(first);
            }
            lines.add(new Line(
                    Kind.LOAD,
                    stop.start().plusSeconds(Math.round(from_s)),
                    stop.start().plusSeconds(Math.round(to_s)),
                    stop,
                    stop.loads() == 0 ? 0 : k + 1,
                    litres / n,
                    ground_ha / n,
                    stop.loads() == 0 ? 0 : fill_min,
                    wait_s / 60));
        }
        return lines;
    }

    private static double called_s(TenderDay.Fill fill) {
        return fill.filled_s() - fill.load().fill_s() - fill.wait_s();
    }

    public int loads() {
        return (int) lines.stream().filter(l -> l.load() > 0).count();
    }

    public List<Week.Stop> stops() {
        return lines.stream()
                .filter(l -> l.kind() == Kind.LEAVE)
                .map(Line::stop)
                .toList();
    }
}
