/**
 * Decide: options for the next pass, of nitrogen or against disease and insects, and what each is worth over the same
 * futures.
 *
 * <p>In: farm, season, protection. Out: options with mean gain, chance to pay, bad case, cost of waiting, the pass that
 * may follow, and the reasons as records that render to sentences. Start at {@link org.earleaf.decide.NitrogenOptions}. Not here: which day the rigs can do it (plan).
 */
package org.earleaf.decide;
