// SPDX-License-Identifier: Apache-2.0
/**
 * The same problem to a general local-search library: a list of jobs a shift, a score kept up to date by hand.
 *
 * <pre>
 * In         a problem, seconds, a seed
 * Out        its plan, and what each better plan cost when it stood
 * Start at   Contender
 * </pre>
 */
@NullMarked
package org.earleaf.bench.plan.library;

import org.jspecify.annotations.NullMarked;
