// SPDX-License-Identifier: Apache-2.0
/**
 * Questions about a farm on a day, and their answers, kept while the facts behind them stand.
 *
 * <pre>
 * In         the stored farm, a day, questions of commands and pages
 * Out        one future for each answer, shared by all who ask
 * Start at   AskedDay; StoredDays gives one for each day
 * Not here   what an answer is: core
 * </pre>
 */
@NullMarked
package org.earleaf.app.desk;

import org.jspecify.annotations.NullMarked;
