/**
 * What is printed: load sheet, record and posting sheet as PDF, one page each on letter or A4, legible in black and
 * white. In: what is to be said, as a record that a template under {@code paper/} reads. Out: bytes of a PDF with its
 * fonts in it. Begin at {@link org.earleaf.app.paper.Paper}.
 */
package org.earleaf.app.paper;
