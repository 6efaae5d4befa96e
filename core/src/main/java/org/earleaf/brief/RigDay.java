// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.earleaf.decide.Option;
import org.earleaf.week.Week;

/**
 * What one rig does on one day.
 *
 * @param jobs in their order, at least one
 */
public record RigDay(String rig, LocalDate date, List<Brief.Proposed> jobs) {
    public RigDay {
        jobs = List.copyOf(jobs);
    }

    /** The rigs that go on days from a first to a last one, both included, by day and then by who leaves first. */
    static List<RigDay> of(List<Brief.Proposed> proposed, LocalDate first, LocalDate last) {
        Map<Map.Entry<LocalDate, String>, List<Brief.Proposed>> groups = proposed.stream()
                .filter(p -> !p.way().date().isBefore(first) && !p.way().date().isAfter(last))
                .collect(Collectors.groupingBy(
                        p -> Map.entry(p.way().date(), p.way().rig()), LinkedHashMap::new, Collectors.toList()));
        return groups.entrySet().stream()
                .map(e -> new RigDay(e.getKey().getValue(), e.getKey().getKey(), e.getValue()))
                .sorted(Comparator.comparing(RigDay::date)
                        .thenComparing(d -> d.leaves().orElse(LocalDateTime.MAX)))
                .toList();
    }

    /** When it sets out; empty: the week's plan gives it no hours. */
    public Optional<LocalDateTime> leaves() {
        return turn(jobs.get(0)).map(Week.Stop::leave);
    }

    /** When the last field is done. */
    public Optional<LocalDateTime> ends() {
        return turn(jobs.get(jobs.size() - 1)).map(Week.Stop::end);
    }

    private static Optional<Week.Stop> turn(Brief.Proposed job) {
        return job.turn();
    }

    /** Ground of the day's jobs [ha]; NaN where a job has no turn. */
    public double area_ha() {
        return jobs.stream()
                .mapToDouble(j -> turn(j).map(t -> t.pass().area_ha()).orElse(Double.NaN))
                .sum();
    }

    /** Tanks filled; 0: not known. */
    public int loads() {
        List<Integer> each =
                jobs.stream().map(j -> turn(j).map(Week.Stop::loads).orElse(0)).toList();
        return each.contains(0) ? 0 : each.stream().mapToInt(Integer::intValue).sum();
    }

    /** Mean worth over the day's ground [$/ha]; where that is not known every job counts alike. */
    public double worth_usdHa() {
        boolean known = !Double.isNaN(area_ha());
        ToDoubleFunction<Brief.Proposed> share =
                j -> known ? turn(j).orElseThrow().pass().area_ha() / area_ha() : 1.0 / jobs.size();
        return jobs.stream()
                .mapToDouble(j -> share.applyAsDouble(j) * j.way().worth().mean_usdHa())
                .sum();
    }

    /** Least of a figure of the day's nitrogen passes; NaN: none. */
    public double least(ToDoubleFunction<Option> figure) {
        return nitrogen().stream().mapToDouble(figure).min().orElse(Double.NaN);
    }

    /** Most of a figure of the day's nitrogen passes; NaN: none. */
    public double most(ToDoubleFunction<Option> figure) {
        return nitrogen().stream().mapToDouble(figure).max().orElse(Double.NaN);
    }

    private List<Option> nitrogen() {
        return jobs.stream().map(Brief.Proposed::way).filter(Option::isNitrogen).toList();
    }
}
