// SPDX-License-Identifier: Apache-2.0
/**
 * How many seasons of one field the season model computes in a second, on one thread.
 *
 * <pre>
 * In         invented weather from a seed; one silt loam
 * Out        a table on standard output, one JSON object last
 * Start at   Kernel
 * </pre>
 */
@NullMarked
package org.earleaf.bench.kernel;

import org.jspecify.annotations.NullMarked;
