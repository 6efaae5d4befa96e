/**
 * Decide: options for the next pass and what each is worth over the same futures.
 *
 * <p>In: farm, season. Out: options with mean gain, chance to pay, bad case, cost of waiting, and the reasons as
 * records that render to sentences. Not here: which day the rigs can do it (plan).
 */
package org.earleaf.decide;
