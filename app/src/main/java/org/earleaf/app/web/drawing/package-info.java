// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings: pure functions from records to SVG. Styled by class alone, geometry in attributes, so that the pages'
 * security policy needs no exception; every drawing stands beside a table or sentence with the same values.
 *
 * <p>A drawing stretched to its page has x in per cent and y in pixels, so that its type keeps its size from phone to desk;
 * only curves and bars in it, which hold no type, are stretched by a viewBox. Start at
 * {@link org.earleaf.app.web.drawing.Tally}, the smallest.
 */
package org.earleaf.app.web.drawing;
