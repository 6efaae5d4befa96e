// SPDX-License-Identifier: Apache-2.0
/** Bench: measurements of speed and agreement. Never shipped. */
@NullMarked
package org.earleaf.bench;

import org.jspecify.annotations.NullMarked;
