// SPDX-License-Identifier: Apache-2.0
/**
 * Exchange: formats in and out, to facts of core and from them; no agronomy.
 *
 * <pre>
 * In         a farm folder (docs/farm-folder.md), recipes, plans as plain files (docs/plan-instance.md), labels as typed,
 *            scans of cards
 * Out        Farm and the like, or one exception with every problem of every file; dates as iCalendar
 * Start at   FarmFolder.read; FarmFolder.readWeather serves a repeated import
 * Not here   rules on what a cell may hold: entry; sentences: app
 * </pre>
 */
@NullMarked
package org.earleaf.exchange;

import org.jspecify.annotations.NullMarked;
