// SPDX-License-Identifier: Apache-2.0
/**
 * The server under the pages: what holds for every answer, also for those that no page ever sees.
 *
 * <pre>
 * In         connections and what comes over them
 * Out        requests that are whole, in bounds and few enough at once; headers that keep a page to itself
 * Start at   Doorway
 * Not here   who may ask and by which name: Guard; the words of a page that went wrong: Faults
 * </pre>
 */
@NullMarked
package org.earleaf.app.web.server;

import org.jspecify.annotations.NullMarked;
