// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What one site-year says of its own effects, as a normal likelihood.
 *
 * @param year name of the farm's year, shared by the rotations of it
 * @param precision how sure, inverse of a covariance; nothing said of a direction: 0
 * @param information precision times the likeliest effects
 */
record Evidence(String farm, String year, RealMatrix precision, RealVector information) {}
