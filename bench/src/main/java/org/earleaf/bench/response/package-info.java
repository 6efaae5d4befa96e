// SPDX-License-Identifier: Apache-2.0
/**
 * Response of yield to nitrogen on real weather, held against what this model gave when last refitted.
 *
 * <pre>
 * In         daily station files 1985-2014, which are not part of the project     ../shared/data/weather
 * Out        tables on standard output, one JSON object last, exit status 1 when a value is outside its tolerance
 * Start at   Response
 * Not here   what a rate is worth to a grower: decide
 * </pre>
 */
@NullMarked
package org.earleaf.bench.response;

import org.jspecify.annotations.NullMarked;
