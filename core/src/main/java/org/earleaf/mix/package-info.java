/**
 * Mix: what goes in the tank, how much and in which order, and what does not go together.
 *
 * <p>In: recipe lines as people write them, labels, water. Out: {@link org.earleaf.mix.MixOrder} (order with reasons),
 * {@link org.earleaf.mix.Load} (amounts of one tank). Inside volumes are m3, masses kg, area m2, rate m3/m2. Start at
 * {@link org.earleaf.mix.LoadJob}. Not here: the sheet and the tank's own story (load).
 */
package org.earleaf.mix;
