// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/** A place on the farm's plane, east and north of some fixed point [m]. */
public record Spot(double x_m, double y_m) {}
