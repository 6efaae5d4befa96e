// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan.library;

import ai.timefold.solver.core.api.domain.lookup.PlanningId;

/** A job, as an element of a list. */
public record Task(@PlanningId int job) {}
