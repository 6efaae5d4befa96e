// SPDX-License-Identifier: Apache-2.0
/**
 * Store: one database file with all that is kept of a farm: its facts, labels, loads and stock, catch tests, photographs,
 * plans handed out and filed records.
 *
 * <p>In and out: {@link org.earleaf.farm.Farm}, equal to the one that was put in, and the records of core beside it. Start
 * at {@link org.earleaf.app.store.FarmStore}. Each kind of fact has one {@link org.earleaf.app.store.Table} that says how
 * it lies in the database, when two facts are the same one, and how a difference between them is told; writing, reading
 * and merging are then written once, for all kinds.
 */
@NullMarked
package org.earleaf.app.store;

import org.jspecify.annotations.NullMarked;
