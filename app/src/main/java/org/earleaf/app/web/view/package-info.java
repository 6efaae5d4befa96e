// SPDX-License-Identifier: Apache-2.0
/**
 * Views: answers of core put into words, figures and drawings, mostly for one page each.
 *
 * <pre>
 * In         records of core, what the store keeps of loads and plans, the units of the reader
 * Out        records of text and safe markup, which templates and sheets only place
 * Start at   MorningView; Phrases, what several views say alike
 * Not here   requests and writing down: web; how numbers, units and dates are written: text, words
 * </pre>
 */
package org.earleaf.app.web.view;
