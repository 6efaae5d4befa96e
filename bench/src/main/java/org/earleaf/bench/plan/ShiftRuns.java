// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.plan.Job;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.jspecify.annotations.Nullable;

/**
 * The runs of jobs that one shift could do, cheapest first by what they cost less what their jobs are priced at.
 *
 * <p>A run is grown job by job; of runs that end at the same job one is dropped when another is no later, no dearer and
 * has met no job that the first could still do. Whole minutes and cents.
 */
final class ShiftRuns {
    /** A run: its jobs in order, what it costs, and that less the prices. */
    record Run(int shift, int[] jobs, long cents, double reduced) {}

    /** @param lo, hi jobs met, or out of reach by now */
    private record Part(
            int last,
            int minutes,
            double reduced,
            long cents,
            long lo,
            long hi,
            @Nullable Part before,
            int count,
            boolean[] dropped) {}

    private final int shift;
    private final int length;
    private final int n;
    private final int[] able;
    private final int[] work;
    private final long[] jobCents;
    private final int[][] road;
    private final double perMin;
    private final boolean straight;

    ShiftRuns(PlanProblem p, int shift) {
        this.shift = shift;
        Shift s = p.shifts().get(shift);
        length = Whole.minutes(s.length_s());
        n = p.jobs().size();
        perMin = Whole.cents(p.rigs().get(s.rig()).cost_usdS() * 60);
        work = new int[n];
        jobCents = new long[n];
        road = new int[n + 1][n];
        List<Integer> can = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            Job job = p.jobs().get(j);
            if (job.canBeDoneBy(s.rig())
                    && s.day() >= job.release()
                    && s.day() <= job.lastDay().get(s.rig())) {
                work[j] = Whole.minutes(job.work_s().get(s.rig()));
                jobCents[j] = Whole.cents(job.loss_usd(s.rig(), s.day())) + (long) perMin * work[j];
                if (work[j] + Whole.minutes(p.travel_s(s, -1, j)) <= length) {
                    can.add(j);
                }
            }
        }
        able = can.stream().mapToInt(Integer::intValue).toArray();
        for (int a = -1; a < n; a++) {
            for (int b : able) {
                road[a + 1][b] = a == b ? 0 : Whole.minutes(p.travel_s(s, a, b));
            }
        }
        straight = isStraight();
    }

    /** Whether a detour never shortens the road: then a job priced below its cost is in no cheapest run. */
    private boolean isStraight() {
        for (int a = -1; a < n; a++) {
            for (int b : able) {
                for (int c : able) {
                    if (a != b && b != c && a != c && road[a + 1][c] > road[a + 1][b] + road[b + 1][c]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    int shift() {
        return shift;
    }

    boolean mayDo(int job) {
        return Arrays.stream(able).anyMatch(j -> j == job);
    }

    /** What a run costs in the order given; -1 when the shift is too short for it. */
    long cents(List<Integer> route) {
        long cents = 0;
        int minutes = 0;
        int at = -1;
        for (int j : route) {
            int step = road[at + 1][j];
            minutes += step + work[j];
            cents += jobCents[j] + (long) perMin * step;
            at = j;
        }
        return minutes <= length ? cents : -1;
    }

    /** The cheapest runs below a limit, at most so many; exact: when none is returned there is none. */
    List<Run> below(double[] price, double limit, int most) {
        int[] jobs = Arrays.stream(able)
                .filter(j -> !straight || jobCents[j] - price[j] < 0)
                .toArray();
        List<List<Part>> ending = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            ending.add(new ArrayList<>());
        }
        List<Part> fresh = new ArrayList<>();
        for (int j : jobs) {
            keep(grown(null, j, price, jobs), ending, fresh);
        }
        while (!fresh.isEmpty()) {
            List<Part> next = new ArrayList<>();
            for (Part part : fresh) {
                if (part.dropped[0]) {
                    continue;
                }
                for (int j : jobs) {
                    if (!has(part, j)) {
                        keep(grown(part, j, price, jobs), ending, next);
                    }
                }
            }
            fresh = next;
        }
        return ending.stream()
                .flatMap(List::stream)
                .filter(part -> part.reduced() < limit)
                .sorted(Comparator.comparingDouble(Part::reduced))
                .limit(most)
                .map(part -> new Run(shift, jobs(part), part.cents(), part.reduced()))
                .toList();
    }

    /** Every set of jobs whose cheapest run lies below a limit; empty when there are more than so many. */
    Optional<List<Run>> all(double[] price, double limit, int most) {
        double[][] further = further(price);
        Map<Long, Map<Long, Run>> found = new HashMap<>();
        int[] count = {0, most};
        int[] jobs = new int[n];
        for (int j : able) {
            grow(jobs, 0, -1, j, 0, 0, 0, 0, 0, price, limit, further, found, count);
            if (count[0] > most) {
                return Optional.empty();
            }
        }
        return Optional.of(
                found.values().stream().flatMap(m -> m.values().stream()).toList());
    }

    /** What a run that ends at a job could still save in the minutes left; jobs may come twice, so it is never too little. */
    private double[][] further(double[] price) {
        double[][] save = new double[n][length + 1];
        for (int left = 1; left <= length; left++) {
            for (int j : able) {
                double best = save[j][left - 1];
                for (int k : able) {
                    int after = left - road[j + 1][k] - work[k];
                    if (k != j && after >= 0) {
                        best = Math.min(best, jobCents[k] + perMin * road[j + 1][k] - price[k] + save[k][after]);
                    }
                }
                save[j][left] = best;
            }
        }
        return save;
    }

    private void grow(
            int[] jobs,
            int depth,
            int last,
            int j,
            int minutes,
            long cents,
            double reduced,
            long lo,
            long hi,
            double[] price,
            double limit,
            double[][] further,
            Map<Long, Map<Long, Run>> found,
            int[] count) {
        int step = road[last + 1][j];
        int then = minutes + step + work[j];
        double less = reduced + jobCents[j] + perMin * step - price[j];
        if (then > length || less + further[j][length - then] >= limit || count[0] > count[1]) {
            return;
        }
        long cost = cents + jobCents[j] + (long) perMin * step;
        long nowLo = j < 64 ? lo | 1L << j : lo;
        long nowHi = j < 64 ? hi : hi | 1L << j - 64;
        jobs[depth] = j;
        if (less < limit) {
            Map<Long, Run> sets = found.computeIfAbsent(nowHi, h -> new HashMap<>());
            Run before = sets.get(nowLo);
            if (before == null || before.cents() > cost) {
                count[0] += before == null ? 1 : 0;
                sets.put(nowLo, new Run(shift, Arrays.copyOf(jobs, depth + 1), cost, less));
            }
        }
        for (int k : able) {
            boolean met = k < 64 ? (nowLo >> k & 1) != 0 : (nowHi >> k - 64 & 1) != 0;
            if (!met) {
                grow(jobs, depth + 1, j, k, then, cost, less, nowLo, nowHi, price, limit, further, found, count);
            }
        }
    }

    private Part grown(@Nullable Part before, int j, double[] price, int[] jobs) {
        int at = before == null ? -1 : before.last();
        int step = road[at + 1][j];
        int minutes = (before == null ? 0 : before.minutes()) + step + work[j];
        long cents = (before == null ? 0 : before.cents()) + jobCents[j] + (long) perMin * step;
        double reduced = (before == null ? 0 : before.reduced()) + jobCents[j] + perMin * step - price[j];
        long lo = before == null ? 0 : before.lo();
        long hi = before == null ? 0 : before.hi();
        for (int k : jobs) {
            if (k == j || minutes + road[j + 1][k] + work[k] > length) {
                if (k < 64) {
                    lo |= 1L << k;
                } else {
                    hi |= 1L << k - 64;
                }
            }
        }
        int count = before == null ? 1 : before.count() + 1;
        return new Part(j, minutes, reduced, cents, lo, hi, before, count, new boolean[1]);
    }

    private static boolean has(Part part, int j) {
        return j < 64 ? (part.lo() >> j & 1) != 0 : (part.hi() >> j - 64 & 1) != 0;
    }

    private static void keep(Part part, List<List<Part>> ending, List<Part> fresh) {
        List<Part> others = ending.get(part.last());
        for (Part other : others) {
            if (beats(other, part)) {
                return;
            }
        }
        others.removeIf(other -> {
            boolean beaten = beats(part, other);
            other.dropped[0] = beaten;
            return beaten;
        });
        others.add(part);
        fresh.add(part);
    }

    private static boolean beats(Part a, Part b) {
        return a.minutes() <= b.minutes()
                && a.reduced() <= b.reduced() + 1e-9
                && (a.lo() & ~b.lo()) == 0
                && (a.hi() & ~b.hi()) == 0;
    }

    private static int[] jobs(Part part) {
        int[] jobs = new int[part.count()];
        int k = part.count();
        for (Part at = part; at != null; at = at.before()) {
            jobs[--k] = at.last();
        }
        return jobs;
    }
}
