// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import org.earleaf.units.Said;

/**
 * A rule that a plan does not keep.
 *
 * @param job place in the list of jobs
 * @param shift place in the list of shifts; -1: no single one
 * @param by how far it is missed, in days for days, s for times, m3 for volumes; 1 where there is no measure
 * @param said what, where, by how much
 */
public record Breach(Rule rule, int job, int shift, double by, Said said) {}
