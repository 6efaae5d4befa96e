/**
 * Drawings: pure functions from records to SVG. Styled by class alone, geometry in attributes, so that the pages'
 * security policy needs no exception; every drawing stands beside a table or sentence with the same values.
 *
 * <p>A stretched drawing has no viewBox: x runs in per cent of the page's width and y in pixels, so that its type keeps
 * its size from phone to desk.
 */
package org.earleaf.app.web.drawing;
