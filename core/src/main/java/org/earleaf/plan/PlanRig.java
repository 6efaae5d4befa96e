// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * A rig with its driver.
 *
 * @param cost_usdS of working and travelling [$/s]
 * @param yard where each shift begins
 */
public record PlanRig(String name, double cost_usdS, Spot yard) {}
