/**
 * Soil: from texture and organic matter to the water and nitrogen properties of six layers.
 *
 * <p>In: units. Out: {@link org.earleaf.soil.SoilProfile}. Layers end at 2, 6, 12, 24, 36 and 60 in, so that they match
 * the depths of soil tests.
 */
package org.earleaf.soil;
