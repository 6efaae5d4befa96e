// SPDX-License-Identifier: Apache-2.0
/**
 * Questions about a farm on a day, and their answers, kept while the facts behind them stand; and the notebook in which
 * pages write down what was done.
 *
 * <pre>
 * In         the stored farm, a day, questions of commands and pages, what they write down
 * Out        one future for each answer, shared by all who ask
 * Start at   FarmDay, what may be asked; AskedDay, how it is answered; StoredDays gives one for each day
 * Not here   what an answer is: core; how facts are kept: store
 * </pre>
 */
@NullMarked
package org.earleaf.app.desk;

import org.jspecify.annotations.NullMarked;
