/**
 * Load: what goes in the tank, how much, in which order, and what to mind while doing it.
 *
 * <p>In: recipe lines as people write them, area, rate, tank, and the setup of the rig. Out:
 * {@link org.earleaf.load.LoadPlan} (loads with amounts), {@link org.earleaf.mix.MixOrder} (order with reasons),
 * {@link org.earleaf.load.LoadSheet} (one sheet a load). Inside volumes are m3, masses kg, area m2, rate m3/m2.
 *
 * <p>{@link org.earleaf.load.LabelCheck} holds a load against labels over all that is made and reserved;
 * {@link org.earleaf.load.TankLoad} leads it from plan to ground with two keys a product; what a step asks of other
 * loads, lots, rigs and labels stands in {@link org.earleaf.load.LoadRules}, over a {@link org.earleaf.load.LoadLedger}
 * that whoever keeps loads hands in.
 *
 * <p>Not here: the filed account (record), where loads are kept (the store). Start at
 * {@link org.earleaf.load.LoadPlanner}.
 */
@NullMarked
package org.earleaf.load;

import org.jspecify.annotations.NullMarked;
