// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A day of rigs and tenders, event by event: who is filled when, by which tender, and who waits.
 *
 * <pre>
 * a tender serves a rig while it holds the load; else it drives off to reload as soon as it has served its last
 * a rig waits when no tender at the field holds its load; first come, first served, ties to the earlier deadline
 *
 * Range  loads no larger than a tender
 * Source discrete events as in any queue; the three cases of one rig and one tender are worked by hand
 * Check  TenderDayTest
 * </pre>
 */
public final class TenderDay {
    /**
     * A load of one rig.
     *
     * @param before_s road and cleaning before it is filled
     * @param spray_s until it is empty
     * @param opens_s no sooner than this, from the begin of the day
     */
    public record Load(
            int rig, int job, double volume_m3, double before_s, double fill_s, double spray_s, double opens_s) {
        /** At any hour. */
        public Load(int rig, int job, double volume_m3, double before_s, double fill_s, double spray_s) {
            this(rig, job, volume_m3, before_s, fill_s, spray_s, 0);
        }

        double call_s(double free_s) {
            return Math.max(free_s + before_s, opens_s);
        }
    }

    /**
     * A load as it came about.
     *
     * @param tender place in the list of tenders; -1: none was needed, the load is nothing
     * @param wait_s for a tender
     */
    public record Fill(Load load, int tender, double wait_s, double filled_s, double end_s) {}

    /** @param trips of each tender to the yard for another load of its own */
    public record Day(List<Fill> fills, List<Integer> trips) {
        public double end_s() {
            return fills.stream().mapToDouble(Fill::end_s).max().orElse(0);
        }

        public double waited_s() {
            return fills.stream().mapToDouble(Fill::wait_s).sum();
        }

        /** Of one rig. */
        public List<Fill> of(int rig) {
            return fills.stream().filter(f -> f.load().rig() == rig).toList();
        }
    }

    private record Call(int rig, int next, double at_s, double deadline) {}

    private static final double ROUNDING_M3 = 1e-9;

    private final List<Tender> tenders;
    private final double[] holds_m3;
    private final double[] free_s;
    private final int[] trips;

    private TenderDay(List<Tender> tenders) {
        this.tenders = tenders;
        holds_m3 = tenders.stream().mapToDouble(Tender::holds_m3).toArray();
        free_s = new double[tenders.size()];
        trips = new int[tenders.size()];
    }

    /**
     * @param loads by rig, in their order
     * @param deadlines by rig, for ties
     */
    public static Day of(List<Tender> tenders, List<List<Load>> loads, List<Double> deadlines) {
        return new TenderDay(tenders).run(loads, deadlines);
    }

    private Day run(List<List<Load>> loads, List<Double> deadlines) {
        PriorityQueue<Call> calls = new PriorityQueue<>(Comparator.comparingDouble(Call::at_s)
                .thenComparingDouble(Call::deadline)
                .thenComparingInt(Call::rig));
        for (int r = 0; r < loads.size(); r++) {
            if (!loads.get(r).isEmpty()) {
                calls.add(new Call(r, 0, loads.get(r).get(0).call_s(0), deadlines.get(r)));
            }
        }
        List<Fill> fills = new ArrayList<>();
        while (!calls.isEmpty()) {
            Call call = calls.remove();
            Fill fill = serve(loads.get(call.rig()).get(call.next()), call.at_s());
            fills.add(fill);
            int next = call.next() + 1;
            if (next < loads.get(call.rig()).size()) {
                double at = loads.get(call.rig()).get(next).call_s(fill.end_s());
                calls.add(new Call(call.rig(), next, at, call.deadline()));
            }
        }
        return new Day(fills, java.util.Arrays.stream(trips).boxed().toList());
    }

    private Fill serve(Load load, double at_s) {
        if (load.volume_m3() <= 0) {
            return new Fill(load, -1, 0, at_s + load.fill_s(), at_s + load.fill_s() + load.spray_s());
        }
        int best = -1;
        double bestFrom = Double.POSITIVE_INFINITY;
        for (int t = 0; t < tenders.size(); t++) {
            double from = Math.max(at_s, ready_s(t, load));
            if (from < bestFrom) {
                best = t;
                bestFrom = from;
            }
        }
        if (!holds(best, load)) {
            trips[best]++;
            holds_m3[best] = tenders.get(best).holds_m3();
        }
        holds_m3[best] -= load.volume_m3();
        free_s[best] = bestFrom + load.fill_s();
        return new Fill(load, best, bestFrom - at_s, free_s[best], free_s[best] + load.spray_s());
    }

    /** When a tender can begin to fill a load: it left for the yard after its last one if it could not serve this. */
    private double ready_s(int t, Load load) {
        return holds(t, load) ? free_s[t] : free_s[t] + tenders.get(t).away_s();
    }

    private boolean holds(int t, Load load) {
        return holds_m3[t] >= load.volume_m3() - ROUNDING_M3;
    }
}
