/**
 * Card: how much of a card of water-sensitive paper is stained, by how many drops, of what size.
 *
 * <p>In: the picture of a card that hung in the crop. Out: {@link org.earleaf.card.CardReading}, and whether that serves
 * the purpose. Never: a verdict of one card on a whole pass; cards differ more than passes do, so that only many of them
 * tell. Not here: files of pictures (exchange).
 */
package org.earleaf.card;
