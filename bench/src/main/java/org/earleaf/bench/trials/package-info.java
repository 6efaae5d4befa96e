// SPDX-License-Identifier: Apache-2.0
/**
 * The season model and its advice held against measured corn: trials of four Iowa research farms, the oldest experimental
 * field of the United States, and plants measured through five seasons near Ames. The measurements lie outside the
 * project and are never copied into it.
 */
@NullMarked
package org.earleaf.bench.trials;

import org.jspecify.annotations.NullMarked;
