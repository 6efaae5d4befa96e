// SPDX-License-Identifier: Apache-2.0
/**
 * The planner beside a constraint solver, on made-up farms.
 *
 * <pre>
 * In         how many farms, how long the solver may think; results of an earlier run are taken over
 * Out        a table on standard output, one JSON object last
 * Start at   PlanBench
 * </pre>
 */
@NullMarked
package org.earleaf.bench.plan;

import org.jspecify.annotations.NullMarked;
