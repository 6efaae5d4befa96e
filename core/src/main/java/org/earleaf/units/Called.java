// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * A thing's name, which may change, beside what it is known by for good.
 *
 * @param name for people, today's
 */
public record Called<I>(I id, String name) {}
