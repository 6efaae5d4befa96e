// SPDX-License-Identifier: Apache-2.0
/** Exchange: formats in and out. Parses files into the facts of core and writes files from them; no agronomy. */
@NullMarked
package org.earleaf.exchange;

import org.jspecify.annotations.NullMarked;
