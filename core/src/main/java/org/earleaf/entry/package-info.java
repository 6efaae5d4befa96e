/**
 * Entry: the one home of every rule on what people enter. A draft, text as typed, becomes a fact or a list of problems
 * with codes; files, commands and pages only say which column, option or box holds which part, and show the problems.
 *
 * <p>In: {@link org.earleaf.entry.Draft} (text by part), and what the farm knows ({@link org.earleaf.entry.Plots},
 * {@link org.earleaf.entry.Shelf}); where a door has columns or keys with units of their own it hands them in as
 * {@link org.earleaf.entry.Parts}. Out: {@link org.earleaf.entry.Entered} (the fact, the problems, the remarks). Start at
 * {@link org.earleaf.entry.ReadingEntry} and {@link org.earleaf.entry.Allowed}, which holds the range of every number.
 * Never: a clock (today is handed in). Not here: the columns and encodings of files (exchange), sentences (app).
 */
package org.earleaf.entry;
