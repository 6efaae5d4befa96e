// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.List;

/** Cost of a plan counted a second time, from the facts alone; NaN when it breaks a limit of time, day or rig. */
public final class PlainScore {
    private PlainScore() {}

    public static double usd(PlanProblem p, Plan plan) {
        double usd = 0;
        boolean[] done = new boolean[p.jobs().size()];
        for (int s = 0; s < p.shifts().size(); s++) {
            Shift shift = p.shifts().get(s);
            Spot at = p.rigs().get(shift.rig()).yard();
            String tank = null;
            double clock = 0;
            double idle = 0;
            List<Integer> route = plan.routes().get(s);
            for (int j : route) {
                Job job = p.jobs().get(j);
                if (done[j]
                        || job.work_s().get(shift.rig()).isNaN()
                        || shift.day() < job.release()
                        || shift.day() > job.lastDay().get(shift.rig())) {
                    return Double.NaN;
                }
                done[j] = true;
                clock += p.roads().fixed_s()
                        + p.roads().slowness_sM()
                                * (Math.abs(at.x_m() - job.at().x_m())
                                        + Math.abs(at.y_m() - job.at().y_m()));
                if (tank != null && !tank.equals(job.productClass())) {
                    clock += p.cleanout()
                            .from_to_s()
                            .getOrDefault(tank, java.util.Map.of())
                            .getOrDefault(job.productClass(), 0.0);
                }
                Window w = shift.windows().getOrDefault(job.productClass(), new Window(0, shift.length_s()));
                if (clock < w.from_s()) {
                    idle += w.from_s() - clock;
                    clock = w.from_s();
                }
                clock += job.work_s().get(shift.rig());
                if (clock > Math.min(w.to_s(), shift.length_s()) + .5) {
                    return Double.NaN;
                }
                usd += job.loss_usd(shift.rig(), shift.day());
                at = job.at();
                tank = job.productClass();
            }
            if (p.roads().countsWayHome() && !route.isEmpty()) {
                Spot yard = p.rigs().get(shift.rig()).yard();
                clock += p.roads().fixed_s()
                        + p.roads().slowness_sM() * (Math.abs(at.x_m() - yard.x_m()) + Math.abs(at.y_m() - yard.y_m()));
                if (clock > shift.length_s() + .5) {
                    return Double.NaN;
                }
            }
            usd += (clock - idle) * p.rigs().get(shift.rig()).cost_usdS();
        }
        for (int j = 0; j < done.length; j++) {
            usd += done[j] ? 0 : p.jobs().get(j).undone_usd();
        }
        return usd;
    }
}
