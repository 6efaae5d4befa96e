// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.List;

/**
 * A pass on a field, or on a part of one, that one rig makes in one go.
 *
 * @param work_s by rig, fills included [s]; NaN: the rig cannot do it
 * @param release first day on which it may be done
 * @param lastDay by rig, the last day on which the rig may do it
 * @param productClass what is in the tank; between two classes it is cleaned
 * @param supply_m3 carrier and product that the tenders bring
 */
public record Job(
        String name,
        double area_m2,
        Spot at,
        List<Double> work_s,
        Loss loss,
        int release,
        List<Integer> lastDay,
        String productClass,
        double supply_m3) {
    /**
     * What another day or no day loses.
     *
     * @param byDay against the best day
     * @param undone_usd what is lost when it is never done
     * @param ofRig by rig, where what a day loses depends on who does it (another placement, another price); empty: it
     *     does not
     */
    public record Loss(LossByDay byDay, double undone_usd, List<LossByDay> ofRig) {
        public Loss {
            ofRig = List.copyOf(ofRig);
        }

        /** Whoever does it, a day loses the same. */
        public Loss(LossByDay byDay, double undone_usd) {
            this(byDay, undone_usd, List.of());
        }
    }

    public Job {
        work_s = List.copyOf(work_s);
        lastDay = List.copyOf(lastDay);
    }

    public double undone_usd() {
        return loss.undone_usd();
    }

    /** What doing it with a rig on a day loses against the best rig on the best day [$]. */
    public double loss_usd(int rig, int day) {
        return (loss.ofRig().isEmpty() ? loss.byDay() : loss.ofRig().get(rig)).on(day);
    }

    public boolean canBeDoneBy(int rig) {
        return !work_s.get(rig).isNaN();
    }

    /** The same, to be done no sooner than a day. */
    public Job notBefore(int day) {
        return new Job(name, area_m2, at, work_s, loss, Math.max(release, day), lastDay, productClass, supply_m3);
    }
}
