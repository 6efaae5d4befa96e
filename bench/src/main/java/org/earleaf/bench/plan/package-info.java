// SPDX-License-Identifier: Apache-2.0
/**
 * The planner beside a constraint solver and a local-search library, on made-up farms.
 *
 * <pre>
 * In         how many farms, how long each may think; results of an earlier run are taken over
 * Out        a table on standard output, one JSON object last
 * Start at   PlanBench
 * </pre>
 */
@NullMarked
package org.earleaf.bench.plan;

import org.jspecify.annotations.NullMarked;
