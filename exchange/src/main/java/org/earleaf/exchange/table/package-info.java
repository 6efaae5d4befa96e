// SPDX-License-Identifier: Apache-2.0
/**
 * Table: comma-separated files with a header that names the unit, read so that every fault is told with file, row,
 * column, what was found, what was expected and what to do. Knows nothing of farms.
 *
 * <p>Start at {@link org.earleaf.exchange.table.Sheet#open}.
 */
@NullMarked
package org.earleaf.exchange.table;

import org.jspecify.annotations.NullMarked;
