// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * A rig with its driver.
 *
 * @param cost_usdS of working and travelling [$/s]
 * @param yard where each shift begins
 * @param tank_m3 what a tender fills; NaN: not known, it waits for none
 * @param fill_s of a tank at the tender; part of what a job takes
 */
public record PlanRig(String name, double cost_usdS, Spot yard, double tank_m3, double fill_s) {
    /** That draws on no tender. */
    public PlanRig(String name, double cost_usdS, Spot yard) {
        this(name, cost_usdS, yard, Double.NaN, 0);
    }
}
