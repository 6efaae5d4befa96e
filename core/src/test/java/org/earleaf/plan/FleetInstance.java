// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.units.Units;

/** Seven fields, two rigs, four days with rain on the second. Optimum $3908.00: all 35 642 assignments counted by hand-made enumeration and a constraint solver's proof. */
public final class FleetInstance {
    public static final List<Integer> DAYS = List.of(1, 3, 4);
    private static final double NEVER = Double.NaN;

    private FleetInstance() {}

    public static PlanProblem usual() {
        return of(List.of(420, 300, 480), List.of(420, 300, 480));
    }

    /** With other minutes by day of either rig; 0: no shift. */
    public static PlanProblem of(List<Integer> minutesR1, List<Integer> minutesR2) {
        List<Shift> shifts = new ArrayList<>();
        for (int k = 0; k < DAYS.size(); k++) {
            addShift(shifts, 0, DAYS.get(k), minutesR1.get(k));
            addShift(shifts, 1, DAYS.get(k), minutesR2.get(k));
        }
        List<PlanRig> rigs =
                List.of(new PlanRig("R1", 3 / 60.0, new Spot(0, 0)), new PlanRig("R2", 2 / 60.0, new Spot(0, 0)));
        return new PlanProblem(rigs, shifts, jobs(), new Roads(6 * 60, 4 * 60 / Units.M_PER_MI));
    }

    private static void addShift(List<Shift> shifts, int rig, int day, int minutes) {
        if (minutes > 0) {
            shifts.add(new Shift(rig, day, minutes * 60));
        }
    }

    public static List<Job> jobs() {
        return List.of(
                job("F1", 160, 2, 1, 188, 360, new double[] {0, 1, 1.5}, 40, 1, 4, 4),
                job("F2", 80, 5, 1, 94, 188, new double[] {0, 6, 9}, 55, 1, 4, 3),
                job("F3", 120, 1, 4, 148, 281, new double[] {0, 2, 3}, 45, 1, 4, 1),
                job("F4", 75, 6, 5, 89, 178, new double[] {0, .5, .75}, 25, 1, 4, 4),
                job("F5", 150, 3, 3, 178, 340, new double[] {0, 4, 7}, 50, 1, 4, 3),
                job("F6", 60, 8, 2, 74, 148, new double[] {NEVER, 0, 2}, 35, 3, 4, 4),
                job("F7", 110, 4, 7, 139, 262, new double[] {0, 3, 5}, 45, 1, 3, 1));
    }

    private static Job job(
            String name,
            double acres,
            double x_mi,
            double y_mi,
            double minR1,
            double minR2,
            double[] loss_usdAc,
            double undone_usdAc,
            int release,
            int lastR1,
            int lastR2) {
        Map<Integer, Double> loss = new HashMap<>();
        for (int k = 0; k < loss_usdAc.length; k++) {
            if (!Double.isNaN(loss_usdAc[k])) {
                loss.put(DAYS.get(k), acres * loss_usdAc[k]);
            }
        }
        return new Job(
                name,
                acres * Units.M2_PER_AC,
                new Spot(x_mi * Units.M_PER_MI, y_mi * Units.M_PER_MI),
                Arrays.asList(minR1 * 60, minR2 * 60),
                new Job.Loss(new LossByDay(loss), acres * undone_usdAc),
                release,
                List.of(lastR1, lastR2),
                "",
                0);
    }

    /** "F2 F4 F7" as a route. */
    public static List<Integer> route(String names) {
        return Arrays.stream(names.split(" "))
                .filter(n -> !n.isEmpty())
                .map(n -> Integer.parseInt(n.substring(1)) - 1)
                .toList();
    }
}
