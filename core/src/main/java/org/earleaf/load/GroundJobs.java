// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.earleaf.label.LabelEntry.Clock;
import org.earleaf.units.Said;

/**
 * The jobs of one piece of ground, each with what lies on it where most of it lies. Loads of one job cover ground beside
 * each other: its heaviest place has the greatest of their rates, or more where they together cover more ground than
 * there is.
 *
 * <pre>
 * most = max(max r_i, sum(r_i a_i) / A)
 *
 * r_i    product by the i-th load of the job, where it goes on  [L/ha] or [kg/ha]
 * a_i    ground that load covers                                [ha]
 * A      ground of the zone                                     [ha]
 * Range  A above 0
 * Source own construct: no way of laying the loads gives the heaviest place less than the mean over all ground, nor
 *        less than the greatest rate
 * Check  GroundJobsTest
 * </pre>
 */
final class GroundJobs {
    private static final int DAYS_OF_YEAR = 365;

    private final List<Job> jobs;

    /**
     * One job.
     *
     * @param products most of each on ground by name in lower case [L/ha] or [kg/ha]; NaN where not known
     */
    record Job(
            String id,
            LocalDate date,
            Map<String, Double> products,
            Map<String, Boolean> labelled,
            GroundUse.State state) {
        boolean isAsked() {
            return state == GroundUse.State.ASKED;
        }

        double of(String product) {
            return products.getOrDefault(product.toLowerCase(Locale.ROOT), 0.0);
        }

        boolean holds(String product) {
            return products.containsKey(product.toLowerCase(Locale.ROOT));
        }
    }

    private GroundJobs(List<Job> jobs) {
        this.jobs = jobs;
    }

    /** Jobs by date; a job with a use that is asked about counts as asked about. */
    static GroundJobs of(List<GroundUse> uses, double zone_ha) {
        Map<String, List<GroundUse>> byJob = new LinkedHashMap<>();
        uses.forEach(u -> byJob.computeIfAbsent(u.job(), j -> new ArrayList<>()).add(u));
        List<Job> jobs = new ArrayList<>();
        byJob.forEach((id, of) -> jobs.add(job(id, of, zone_ha)));
        jobs.sort(Comparator.comparing(Job::date).thenComparing(Job::id));
        return new GroundJobs(List.copyOf(jobs));
    }

    private static Job job(String id, List<GroundUse> uses, double zone_ha) {
        Map<String, Double> most = new TreeMap<>();
        Map<String, Double> whole = new TreeMap<>();
        Map<String, Boolean> labelled = new TreeMap<>();
        GroundUse.State state = GroundUse.State.MADE;
        LocalDate date = uses.get(0).date();
        for (GroundUse u : uses) {
            String product = u.product().toLowerCase(Locale.ROOT);
            most.merge(product, u.perHa(), Math::max);
            whole.merge(product, u.perHa() * u.area_ha() / zone_ha, Double::sum);
            labelled.merge(product, u.labelled(), Boolean::logicalOr);
            state = u.state().compareTo(state) > 0 ? u.state() : state;
            date = u.date().isAfter(date) ? u.date() : date;
        }
        whole.forEach((product, mean) -> most.merge(product, mean, Math::max));
        return new Job(id, date, most, labelled, state);
    }

    List<Job> all() {
        return jobs;
    }

    Job asked() {
        return jobs.stream().filter(Job::isAsked).findFirst().orElseThrow();
    }

    /** Sum over a season that holds the job asked about, the greatest where a season is any 365 days. */
    double inSeason(Clock clock, LocalDate cropBegins, ToDoubleFunction<Job> amount) {
        LocalDate asked = asked().date();
        return switch (clock) {
            case CALENDAR_YEAR ->
                sum(amount, LocalDate.of(asked.getYear(), 1, 1), LocalDate.of(asked.getYear(), 12, 31));
            case CROP -> sum(amount, cropBegins, LocalDate.MAX);
            case DAYS_365 -> {
                double most = 0;
                for (Job first : jobs) {
                    LocalDate last = first.date().plusDays(DAYS_OF_YEAR - 1L);
                    boolean holdsAsked = !first.date().isAfter(asked) && !last.isBefore(asked);
                    most = holdsAsked ? Math.max(most, sum(amount, first.date(), last)) : most;
                }
                yield most;
            }
        };
    }

    /** What is told, with how many of the jobs that count are made and reserved. */
    Said counted(Said said, Predicate<Job> counts) {
        return Said.of(
                "label.counted",
                "said",
                said,
                "made",
                count(counts, GroundUse.State.MADE),
                "reserved",
                count(counts, GroundUse.State.RESERVED));
    }

    private long count(Predicate<Job> counts, GroundUse.State state) {
        return jobs.stream().filter(counts).filter(j -> j.state() == state).count();
    }

    private double sum(ToDoubleFunction<Job> amount, LocalDate from, LocalDate to) {
        return jobs.stream()
                .filter(job -> job.isAsked()
                        || !job.date().isBefore(from) && !job.date().isAfter(to))
                .mapToDouble(amount)
                .sum();
    }
}
