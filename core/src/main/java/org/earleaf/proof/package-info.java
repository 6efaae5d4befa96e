/**
 * Proof: whether a pass landed where it should.
 *
 * <p>In: the picture of a card of water-sensitive paper that hung in the crop. Out:
 * {@link org.earleaf.proof.CardReading}: how much of it is stained, by how many drops, of what size, and whether that
 * serves the purpose. Never: a verdict of one card on a whole pass; cards differ more than passes do, so that only many
 * of them tell. Not here: files of pictures (exchange).
 */
@NullMarked
package org.earleaf.proof;

import org.jspecify.annotations.NullMarked;
