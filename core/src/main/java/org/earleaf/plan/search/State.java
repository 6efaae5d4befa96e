// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.plan.Plan;

/** A plan being changed, with its cost and the time of every shift kept up to date. No insert breaks a rule. */
final class State {
    private static final double ROUNDING_S = 1e-3;
    private static final double ROUNDING_M3 = 1e-9;

    final Ground ground;
    final int[][] route;
    final int[] count;
    final int[] where;
    private final double[] busy_s;
    private final double[] used_m3;
    double cost_usd;

    State(Ground ground) {
        this.ground = ground;
        route = new int[ground.shifts][ground.jobs];
        count = new int[ground.shifts];
        where = new int[ground.jobs];
        Arrays.fill(where, -1);
        busy_s = new double[ground.shifts];
        used_m3 = new double[ground.days];
        cost_usd = Arrays.stream(ground.undone_usd).sum();
    }

    void copyFrom(State other) {
        for (int s = 0; s < ground.shifts; s++) {
            System.arraycopy(other.route[s], 0, route[s], 0, other.count[s]);
        }
        System.arraycopy(other.count, 0, count, 0, count.length);
        System.arraycopy(other.where, 0, where, 0, where.length);
        System.arraycopy(other.busy_s, 0, busy_s, 0, busy_s.length);
        System.arraycopy(other.used_m3, 0, used_m3, 0, used_m3.length);
        cost_usd = other.cost_usd;
    }

    /** Whether a shift may take a job at all, wherever in its order. */
    boolean mayTake(int job, int shift) {
        Ground g = ground;
        if (!g.allowed[job][shift]
                || busy_s[shift] + g.work_s[job][shift] > g.length_s[shift]
                || used_m3[g.day[shift]] + g.supply_m3[job] > g.most_m3[g.day[shift]] + ROUNDING_M3) {
            return false;
        }
        List<Ground.Apart> gaps = g.apart.get(job);
        for (int k = 0; k < gaps.size(); k++) {
            if (isTooNear(gaps.get(k), shift)) {
                return false;
            }
        }
        return true;
    }

    private boolean isTooNear(Ground.Apart a, int shift) {
        int there = where[a.other()];
        if (there < 0) {
            return false;
        }
        int mine = ground.problem.shifts().get(shift).day();
        int its = ground.problem.shifts().get(there).day();
        return (a.otherIsFirst() ? a.gap().shortBy(its, mine) : a.gap().shortBy(mine, its)) > 0;
    }

    /** Road that putting a job in at a place adds [s]. */
    double addedRoad_s(int job, int shift, int place) {
        int before = place == 0 ? -1 : route[shift][place - 1];
        double added = ground.road_s(shift, before, job);
        if (place < count[shift]) {
            int after = route[shift][place];
            return added + ground.between_s[job][after] - ground.road_s(shift, before, after);
        }
        return added + ground.home_s[shift][job] - (before < 0 ? 0 : ground.home_s[shift][before]);
    }

    /** Whether the shift still ends in time, and every job in its window, with a job put in at a place. */
    boolean fits(int job, int shift, int place, double road_s) {
        if (!ground.windowed[shift]) {
            return busy_s[shift] + road_s + ground.work_s[job][shift] <= ground.length_s[shift] + ROUNDING_S;
        }
        double now = 0;
        int last = -1;
        for (int k = 0; k <= count[shift]; k++) {
            int j = k < place ? route[shift][k] : k == place ? job : route[shift][k - 1];
            now = Math.max(now + ground.road_s(shift, last, j), ground.opens_s[j][shift]) + ground.work_s[j][shift];
            if (now > ground.closes_s[j][shift] + ROUNDING_S) {
                return false;
            }
            last = j;
        }
        return now + ground.home_s[shift][last] <= ground.length_s[shift] + ROUNDING_S;
    }

    /** Cleaning may take longer once a job between is gone: then the last jobs of such a shift go too. */
    void dropWhatNoLongerFits() {
        for (int s = 0; ground.cleaned && s < ground.shifts; s++) {
            while (count[s] > 0 && !stillFits(s)) {
                remove(route[s][count[s] - 1]);
            }
        }
    }

    private boolean stillFits(int shift) {
        double now = 0;
        int last = -1;
        for (int k = 0; k < count[shift]; k++) {
            int j = route[shift][k];
            now = Math.max(now + ground.road_s(shift, last, j), ground.opens_s[j][shift]) + ground.work_s[j][shift];
            if (now > ground.closes_s[j][shift] + ROUNDING_S) {
                return false;
            }
            last = j;
        }
        return last < 0 || now + ground.home_s[shift][last] <= ground.length_s[shift] + ROUNDING_S;
    }

    /** What putting a job in changes in cost, the loss of leaving it out taken off [$]. */
    double change_usd(int job, int shift, double road_s) {
        return ground.charge_usd[job][shift] + road_s * ground.cost_usdS[shift] - ground.undone_usd[job];
    }

    void insert(int job, int shift, int place) {
        double road = addedRoad_s(job, shift, place);
        cost_usd += change_usd(job, shift, road);
        busy_s[shift] += road + ground.work_s[job][shift];
        used_m3[ground.day[shift]] += ground.supply_m3[job];
        System.arraycopy(route[shift], place, route[shift], place + 1, count[shift] - place);
        route[shift][place] = job;
        count[shift]++;
        where[job] = shift;
    }

    void remove(int job) {
        int shift = where[job];
        int place = 0;
        while (route[shift][place] != job) {
            place++;
        }
        System.arraycopy(route[shift], place + 1, route[shift], place, count[shift] - place - 1);
        count[shift]--;
        where[job] = -1;
        double road = addedRoad_s(job, shift, place);
        cost_usd -= change_usd(job, shift, road);
        busy_s[shift] -= road + ground.work_s[job][shift];
        used_m3[ground.day[shift]] -= ground.supply_m3[job];
        if (count[shift] == 0) {
            busy_s[shift] = 0; // no rounding is carried from plan to plan
        }
    }

    Plan plan() {
        List<List<Integer>> routes = new ArrayList<>();
        for (int s = 0; s < ground.shifts; s++) {
            routes.add(Arrays.stream(route[s], 0, count[s]).boxed().toList());
        }
        return new Plan(routes);
    }
}
