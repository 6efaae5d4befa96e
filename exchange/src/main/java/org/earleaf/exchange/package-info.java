// SPDX-License-Identifier: Apache-2.0
/**
 * Exchange: formats in and out. Parses files into the facts of core and writes files from them; no agronomy.
 *
 * <p>In: a farm folder (docs/farm-folder.md). Out: {@link org.earleaf.farm.Farm}, or one exception with every problem of
 * every file. Start at {@link org.earleaf.exchange.FarmFolder#read}; {@link org.earleaf.exchange.FarmFolder#readWeather}
 * serves a repeated import.
 */
@NullMarked
package org.earleaf.exchange;

import org.jspecify.annotations.NullMarked;
