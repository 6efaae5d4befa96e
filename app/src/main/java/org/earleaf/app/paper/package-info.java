// SPDX-License-Identifier: Apache-2.0
/**
 * Paper: load sheet, record and posting sheet as PDF, on letter or A4, legible in black and white; on one page as long as
 * that can be read at arm's length.
 *
 * <pre>
 * In         what is to be said, as a record that a template under paper/ reads
 * Out        bytes of a PDF with its fonts in it
 * Start at   Paper
 * Not here   the words of a load sheet: web.view; sheets that a browser prints: pages
 * </pre>
 */
package org.earleaf.app.paper;
