// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.YesNo;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Job;
import org.earleaf.plan.LossByDay;
import org.earleaf.plan.Pin;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Spot;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** jobs.csv and gaps.csv of a plan instance. */
final class PlanJobsCsv {
    private static final Allowed DAY = Allowed.plain("plan.day", 0, PlanInstance.LAST_DAY);
    private static final Allowed WORK_S = Allowed.plain("plan.work", 0, 1e6);

    private final Findings findings;
    private final List<PlanRig> rigs;
    private final List<Shift> shifts;
    private final Map<String, Integer> names = new HashMap<>();
    private final List<Job> jobs = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();
    private final List<Column> work = new ArrayList<>();
    private final List<Column> last = new ArrayList<>();
    /** By day; those that the file lacks too. */
    private final List<Column> losses = new ArrayList<>();

    PlanJobsCsv(Findings findings, List<PlanRig> rigs, List<Shift> shifts) {
        this.findings = findings;
        this.rigs = rigs;
        this.shifts = shifts;
    }

    List<Job> jobs() {
        return jobs;
    }

    List<Gap> gaps() {
        return gaps;
    }

    List<Pin> pins() {
        return pins;
    }

    /** @param supplied whether tenders bring what the jobs take */
    List<Job> read(Sheet sheet, boolean supplied) {
        Column name = sheet.text("job");
        Column area = sheet.number("area", Measure.of("ac", 1).and("ha", 1 / Units.HA_PER_AC), Allowed.NOT_NEGATIVE);
        Column x = sheet.number("x", Measures.LENGTH_M, Allowed.ANY);
        Column y = sheet.number("y", Measures.LENGTH_M, Allowed.ANY);
        columnsByRigAndDay(sheet);
        Column undone = sheet.number("undone", Measure.of("usd_ac", 1), Allowed.NOT_NEGATIVE);
        Column release = sheet.optionalNumber("release_day", Measure.PLAIN, DAY);
        Column productClass = sheet.optionalText("class");
        Column supply = sheet.optionalNumber("supply", Measures.VOLUME_M3, Allowed.NOT_NEGATIVE);
        Column pinRig = sheet.optionalText("pin_rig");
        Column pinDay = sheet.optionalNumber("pin_day", Measure.PLAIN, DAY);
        for (Row row : PlanInstance.rows(sheet)) {
            String job = name(row, name);
            double acres = row.number(area);
            Spot at = new Spot(row.number(x), row.number(y));
            double undone_usd = row.number(undone) * acres;
            int from = row.isEmpty(release) ? 0 : PlanInstance.whole(row, release);
            double m3 = supply(row, supply, supplied);
            List<Double> minutes = work(row);
            List<Integer> until = lastDays(row);
            LossByDay loss = loss(row, acres, from, minutes, until);
            pin(row, pinRig, pinDay, jobs.size());
            if (row.isGood()) {
                jobs.add(new Job(
                        job,
                        acres * Units.M2_PER_AC,
                        at,
                        minutes,
                        new Job.Loss(loss, undone_usd),
                        from,
                        until,
                        row.cell(productClass),
                        m3));
            }
        }
        return jobs;
    }

    private void columnsByRigAndDay(Sheet sheet) {
        for (PlanRig rig : rigs) {
            String ending = rig.name().toLowerCase(Locale.ROOT).replaceAll("\\s+", "_");
            work.add(sheet.number("minutes_" + ending, PlanInstance.BARE_MINUTES_S, WORK_S)
                    .emptyAllowed());
            last.add(sheet.optionalNumber(
                    "last_day_" + ending, Measure.PLAIN, Allowed.plain("plan.last-day", -1, PlanInstance.LAST_DAY)));
        }
        for (int d = 0; d <= PlanInstance.LAST_DAY; d++) {
            losses.add(sheet.optionalNumber("loss_day_" + d, Measure.PLAIN, Allowed.NOT_NEGATIVE));
        }
    }

    private String name(Row row, Column name) {
        String job = row.text(name);
        if (!job.isEmpty() && names.putIfAbsent(job, jobs.size()) != null) {
            row.refuse("instance.job-twice", name, Said.of("found.second-time", "what", job));
        }
        return job;
    }

    private static double supply(Row row, Column supply, boolean supplied) {
        if (!row.isEmpty(supply)) {
            return row.number(supply);
        }
        if (supplied) {
            row.refuse("instance.supply-missing", supply, Said.of("found.nothing"));
        }
        return 0;
    }

    private List<Double> work(Row row) {
        List<Double> all = new ArrayList<>();
        for (Column c : work) {
            all.add(row.isEmpty(c) ? Double.NaN : row.number(c));
        }
        return all;
    }

    private List<Integer> lastDays(Row row) {
        List<Integer> all = new ArrayList<>();
        for (Column c : last) {
            all.add(row.isEmpty(c) ? PlanInstance.LAST_DAY : PlanInstance.whole(row, c));
        }
        return all;
    }

    /** Refuses a row without a loss at or around a day on which it may be done, and a loss that falls. */
    private LossByDay loss(Row row, double acres, int from, List<Double> minutes, List<Integer> until) {
        TreeMap<Integer, Double> given = new TreeMap<>();
        for (int d = 0; d < losses.size(); d++) {
            if (!row.isEmpty(losses.get(d))) {
                given.put(d, row.number(losses.get(d)) * acres);
            }
        }
        double before = 0;
        for (Map.Entry<Integer, Double> e : given.entrySet()) {
            if (e.getValue() < before) {
                Column column = losses.get(e.getKey());
                row.refuse("instance.loss-falls", column, Problem.seen(row.cell(column)));
            }
            before = e.getValue();
        }
        for (Shift s : shifts) {
            boolean may = !minutes.get(s.rig()).isNaN() && s.day() >= from && s.day() <= until.get(s.rig());
            boolean around = given.floorKey(s.day()) != null && given.ceilingKey(s.day()) != null;
            if (row.isGood() && may && !around) {
                row.refuse(
                        "instance.loss-missing",
                        losses.get(s.day()),
                        Said.of(
                                "found.no-loss",
                                "day",
                                s.day(),
                                "rig",
                                rigs.get(s.rig()).name()),
                        "day",
                        s.day());
            }
        }
        return new LossByDay(given.isEmpty() ? Map.of(0, 0.0) : given);
    }

    private void pin(Row row, Column rig, Column day, int job) {
        if (row.isEmpty(rig) && row.isEmpty(day)) {
            return;
        }
        int d = PlanInstance.whole(row, day);
        for (int r = 0; r < rigs.size(); r++) {
            if (rigs.get(r).name().equals(row.cell(rig)) && !row.isEmpty(day)) {
                pins.add(new Pin(job, r, d));
                return;
            }
        }
        row.refuse("instance.pin-half", rig, Problem.seen(row.cell(rig)));
    }

    List<Gap> gaps(Sheet sheet) {
        Column first = sheet.text("first");
        Column second = sheet.text("second");
        Column days = sheet.number("days", Measure.PLAIN, DAY);
        Column either = sheet.optionalText("either_order");
        for (Row row : PlanInstance.rows(sheet)) {
            int a = job(row, first);
            int b = job(row, second);
            int d = PlanInstance.whole(row, days);
            boolean order = !row.isEmpty(either)
                    && row.word(either, YesNo::find, YesNo.WORDS).orElse(false);
            if (row.isGood() && a == b) {
                row.refuse("instance.same-job", second, Problem.seen(row.cell(second)));
            }
            if (row.isGood()) {
                gaps.add(new Gap(a, b, d, order));
            }
        }
        return gaps;
    }

    private int job(Row row, Column column) {
        String word = row.text(column);
        Integer job = names.get(word);
        if (job == null && !word.isEmpty() && !findings.hasProblemsIn("jobs.csv")) {
            row.refuse("instance.job-unknown", column, Problem.seen(word));
        }
        return job == null ? -1 : job;
    }
}
