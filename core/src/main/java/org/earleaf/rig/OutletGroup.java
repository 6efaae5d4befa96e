// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * Outlets of one kind and place on a boom.
 *
 * @param name "top", "ear, up" ...
 * @param perRow outlets a row; a fraction where spacings differ (20-in top nozzles over 30-in rows: 1.5)
 * @param share of the row's flow wanted through the group; the shares of a boom add up to 1
 */
public record OutletGroup(String name, double perRow, double share) {}
