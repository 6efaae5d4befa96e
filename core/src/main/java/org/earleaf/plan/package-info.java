/**
 * Plan: which rig does what on which day, as facts and rules.
 *
 * <p>In: jobs with what each day of delay loses, rigs, shifts, roads, cleanout, supply, days between jobs, pins
 * ({@link org.earleaf.plan.PlanProblem}). Out: {@link org.earleaf.plan.Plan}, its {@link org.earleaf.plan.Timetable} and
 * {@link org.earleaf.plan.PlanCost}, the {@link org.earleaf.plan.Rules} it keeps or breaks, and why a job is left out
 * ({@link org.earleaf.plan.WhyLeftOut}). Inside times are s, lengths m, volumes m3; money is $ of the whole job. Days are
 * numbers, or days after a date.
 *
 * <p>Not here: the search for a good plan ({@code plan.search}). Start at {@link org.earleaf.plan.Rules}.
 */
@NullMarked
package org.earleaf.plan;

import org.jspecify.annotations.NullMarked;
