/**
 * Farm: rigs, products with their limits, prices, people, and what earlier proof says; and the arithmetic that both
 * deciding and filing need: may this rig enter, may this product go on.
 *
 * <p>In: units, weather, soil, field. Out: {@link org.earleaf.farm.Farm}, the facts of one business.
 */
package org.earleaf.farm;
