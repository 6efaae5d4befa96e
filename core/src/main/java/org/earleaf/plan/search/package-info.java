/**
 * Search: a good plan under the rules of {@link org.earleaf.plan}, by taking jobs out and putting them back.
 *
 * <p>In: a {@link org.earleaf.plan.PlanProblem}, a seed, how many steps, and a word when to stop. Out:
 * {@link org.earleaf.plan.search.Found}. The same problem, seed and steps give the same plan; only a stop from outside
 * cuts it short. Start at {@link org.earleaf.plan.search.Planner}.
 */
@NullMarked
package org.earleaf.plan.search;

import org.jspecify.annotations.NullMarked;
