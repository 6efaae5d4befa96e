// SPDX-License-Identifier: Apache-2.0
/**
 * Table: comma-separated files with a header that names the unit, read so that every fault is told with file, row, column
 * and what was found. Knows nothing of farms.
 *
 * <pre>
 * In         a file, the columns and units asked of it
 * Out        rows whose cells are values or drafts; problems and remarks, each with its Place
 * Start at   Sheet.open
 * Not here   which range a number may have: entry; what was expected and what to do, in words: app
 * </pre>
 */
@NullMarked
package org.earleaf.exchange.table;

import org.jspecify.annotations.NullMarked;
