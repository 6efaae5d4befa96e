// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.YesNo;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.plan.Cleanout;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.Roads;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Spot;
import org.earleaf.plan.Supply;
import org.earleaf.plan.Tender;
import org.earleaf.plan.Window;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** A scheduling problem as a folder of plain files (docs/plan-instance.md). */
public final class PlanInstance {
    static final Measure MINUTES_S = Measure.of("min", 60).and("h", 3600).and("s", 1);
    static final Measure BARE_MINUTES_S = Measure.of("", 60);
    static final int LAST_DAY = 400;
    private static final Allowed DAY = Allowed.plain("plan.day", 0, LAST_DAY);
    private static final Allowed SHIFT_S = Allowed.plain("plan.shift", 0, 24 * 3600);

    private final Path folder;
    private final Findings findings = new Findings();
    private final Map<String, Integer> rigs = new HashMap<>();

    /** What was read, and what was remarked on the way. */
    public record Read(PlanProblem problem, List<Tender> tenders, List<Flag> flags) {}

    private PlanInstance(Path folder) {
        this.folder = folder;
    }

    /** The problem of a folder; throws an exception with every fault of every file. */
    public static Read read(Path folder) {
        return new PlanInstance(folder).read();
    }

    private Read read() {
        if (!Files.isDirectory(folder)) {
            findings.problem("instance.no-folder", Place.of(folder.toString()), Said.of("found.no-folder"));
            findings.refuseIfAny();
        }
        List<PlanRig> fleet = required("rigs.csv", this::rigs).orElse(List.of());
        Roads roads = required("travel.csv", this::roads).orElse(new Roads(0, 0));
        Map<String, Window> windows = optional("windows.csv", this::windows).orElse(Map.of());
        List<Shift> shifts = required("shifts.csv", s -> shifts(s, windows)).orElse(List.of());
        Cleanout cleanout = optional("cleanout.csv", this::cleanout).orElse(Cleanout.NONE);
        List<Tender> tenders = optional("tenders.csv", this::tenders).orElse(List.of());
        PlanJobsCsv jobs = new PlanJobsCsv(findings, fleet, shifts);
        boolean known = !fleet.isEmpty() && !shifts.isEmpty();
        required("jobs.csv", s -> known ? jobs.read(s, !tenders.isEmpty()) : List.of());
        optional("gaps.csv", jobs::gaps);
        findings.refuseIfAny();
        PlanProblem problem = new PlanProblem(
                fleet,
                shifts,
                jobs.jobs(),
                roads,
                cleanout,
                new PlanProblem.Terms(supply(tenders, shifts), jobs.gaps(), jobs.pins()),
                tenders,
                Optional.empty());
        return new Read(problem, tenders, findings.flags());
    }

    private <T> Optional<T> required(String file, Function<Sheet, T> reader) {
        Path path = folder.resolve(file);
        if (!Files.isRegularFile(path)) {
            findings.problem(
                    "instance.no-file", Place.of(file), Said.of("found.no-file-in", "folder", folder.toString()));
            return Optional.empty();
        }
        return Sheet.open(path, findings).map(reader);
    }

    private <T> Optional<T> optional(String file, Function<Sheet, T> reader) {
        Path path = folder.resolve(file);
        return Files.exists(path) ? Sheet.open(path, findings).map(reader) : Optional.empty();
    }

    private List<PlanRig> rigs(Sheet sheet) {
        Column name = sheet.text("rig");
        Column cost =
                sheet.number("cost", Measure.of("usd_min", 1 / 60.0).and("usd_h", 1 / 3600.0), Allowed.NOT_NEGATIVE);
        Column x = sheet.number("yard_x", Measures.LENGTH_M, Allowed.ANY);
        Column y = sheet.number("yard_y", Measures.LENGTH_M, Allowed.ANY);
        Column tank = sheet.optionalNumber("tank", Measures.VOLUME_M3, Allowed.NOT_NEGATIVE);
        Column fill = sheet.optionalNumber("fill", MINUTES_S, SHIFT_S);
        List<PlanRig> fleet = new ArrayList<>();
        for (Row row : rows(sheet)) {
            String rig = row.text(name);
            double usdS = row.number(cost);
            Spot yard = new Spot(row.number(x), row.number(y));
            double tank_m3 = row.isEmpty(tank) ? Double.NaN : row.number(tank);
            double fill_s = row.isEmpty(fill) ? 0 : row.number(fill);
            if (!rig.isEmpty() && rigs.putIfAbsent(rig, fleet.size()) != null) {
                row.refuse("row.twice", name, Said.of("found.second-time", "what", rig));
            }
            if (row.isGood()) {
                fleet.add(new PlanRig(rig, usdS, yard, tank_m3, fill_s));
            }
        }
        return fleet;
    }

    private Roads roads(Sheet sheet) {
        Column fixed = sheet.number("fixed", MINUTES_S, Allowed.NOT_NEGATIVE);
        Column slow = sheet.number(
                "min_per", Measure.of("mile", 60 / Units.M_PER_MI).and("km", 60 / 1000.0), Allowed.NOT_NEGATIVE);
        Column home = sheet.optionalText("count_way_home");
        Roads roads = new Roads(0, 0);
        for (Row row : rows(sheet)) {
            roads = new Roads(
                    row.number(fixed),
                    row.number(slow),
                    !row.isEmpty(home)
                            && row.word(home, YesNo::find, YesNo.WORDS).orElse(false));
        }
        return roads;
    }

    private List<Shift> shifts(Sheet sheet, Map<String, Window> windows) {
        Column rig = sheet.text("rig");
        Column day = sheet.number("day", Measure.PLAIN, DAY);
        Column length = sheet.number("minutes", BARE_MINUTES_S, SHIFT_S);
        List<Shift> shifts = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (Row row : rows(sheet)) {
            int r = rig(row, rig);
            int d = whole(row, day);
            double s = row.number(length);
            if (row.isGood() && seen.putIfAbsent(r + "/" + d, row.line()) != null) {
                row.refuse("instance.second-shift", day, Said.of("found.second-shift", "day", d));
            }
            if (row.isGood() && s > 0) {
                shifts.add(new Shift(r, d, s, Double.NaN, windowsOf(windows, r, d)));
            }
        }
        shifts.sort(Comparator.comparingInt(Shift::day).thenComparingInt(Shift::rig));
        return shifts;
    }

    private static Map<String, Window> windowsOf(Map<String, Window> all, int rig, int day) {
        Map<String, Window> mine = new HashMap<>();
        String key = rig + "/" + day + "/";
        all.forEach((k, w) -> {
            if (k.startsWith(key)) {
                mine.put(k.substring(key.length()), w);
            }
        });
        return mine;
    }

    /** By "rig/day/class". */
    private Map<String, Window> windows(Sheet sheet) {
        Column rig = sheet.text("rig");
        Column day = sheet.number("day", Measure.PLAIN, DAY);
        Column productClass = sheet.text("class");
        Column from = sheet.number("from", MINUTES_S, SHIFT_S);
        Column to = sheet.number("to", MINUTES_S, SHIFT_S);
        Map<String, Window> all = new TreeMap<>();
        for (Row row : rows(sheet)) {
            int r = rig(row, rig);
            int d = whole(row, day);
            String c = row.text(productClass);
            Window w = new Window(row.number(from), row.number(to));
            if (row.isGood() && w.to_s() < w.from_s()) {
                row.refuse("instance.window-turned", to, Problem.seen(row.cell(to)), "from", row.cell(from));
            }
            if (row.isGood() && all.putIfAbsent(r + "/" + d + "/" + c, w) != null) {
                row.refuse("instance.second-window", productClass, Said.of("found.second-row"));
            }
        }
        return all;
    }

    private Cleanout cleanout(Sheet sheet) {
        Column from = sheet.text("from");
        Column to = sheet.text("to");
        Column minutes = sheet.number("minutes", BARE_MINUTES_S, SHIFT_S);
        Map<String, Map<String, Double>> all = new TreeMap<>();
        for (Row row : rows(sheet)) {
            String a = row.text(from);
            String b = row.text(to);
            double s = row.number(minutes);
            if (row.isGood()) {
                all.computeIfAbsent(a, k -> new TreeMap<>()).put(b, s);
            }
        }
        return new Cleanout(all);
    }

    private List<Tender> tenders(Sheet sheet) {
        Column name = sheet.text("tender");
        Column holds = sheet.number("holds", Measures.VOLUME_M3, Allowed.NOT_NEGATIVE);
        Column trip = sheet.number("round_trip", MINUTES_S, SHIFT_S);
        Column reload = sheet.number("reload", MINUTES_S, SHIFT_S);
        List<Tender> all = new ArrayList<>();
        for (Row row : rows(sheet)) {
            Tender t = new Tender(row.text(name), row.number(holds), row.number(trip), row.number(reload));
            if (row.isGood() && !(t.away_s() > 0)) {
                row.refuse("instance.tender-without-time", trip, Problem.seen(row.cell(trip)));
            }
            if (row.isGood()) {
                all.add(t);
            }
        }
        return all;
    }

    /** What the tenders bring on each day, within its longest shift. */
    private static List<Supply> supply(List<Tender> tenders, List<Shift> shifts) {
        Map<Integer, Double> longest = new TreeMap<>();
        shifts.forEach(s -> longest.merge(s.day(), s.length_s(), Math::max));
        List<Supply> all = new ArrayList<>();
        if (!tenders.isEmpty()) {
            longest.forEach((day, s) -> all.add(new Supply(
                    day, tenders.stream().mapToDouble(t -> t.most_m3(s)).sum())));
        }
        return all;
    }

    private int rig(Row row, Column column) {
        String word = row.text(column);
        Integer rig = rigs.get(word);
        if (rig == null && !word.isEmpty()) {
            row.refuse("instance.rig-unknown", column, Problem.seen(word));
        }
        return rig == null ? -1 : rig;
    }

    /** Rows of a sheet whose columns are all there; none, and said, when there are none. */
    static List<Row> rows(Sheet sheet) {
        if (!sheet.isComplete()) {
            return List.of();
        }
        if (sheet.rows().isEmpty()) {
            sheet.refuseNoRows();
        }
        return sheet.rows();
    }

    static int whole(Row row, Column column) {
        double value = row.number(column);
        if (row.isGood() && value != Math.rint(value)) {
            row.refuse("number.not-whole", column, Problem.seen(row.cell(column)));
        }
        return (int) value;
    }
}
