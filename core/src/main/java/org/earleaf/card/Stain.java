// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * A stain, or several that ran together.
 *
 * @param area_px its pixels
 * @param length long axis over short axis of the ellipse of equal moments; 1 is round
 * @param cut whether the edge of the picture cuts it
 */
record Stain(int area_px, double length, boolean cut) {}
