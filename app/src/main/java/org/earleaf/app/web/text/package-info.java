// SPDX-License-Identifier: Apache-2.0
/**
 * Text: which measure a figure of a page is and to how many decimals it stands there, and text that is safe HTML.
 *
 * <pre>
 * In         values in SI, texts from people
 * Out        texts of the catalogue, Markup
 * Start at   Format; Markup
 * Not here   how a number, unit, date or chance is written: words
 * </pre>
 */
package org.earleaf.app.web.text;
