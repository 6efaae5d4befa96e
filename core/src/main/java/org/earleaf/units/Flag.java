// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * A remark on the quality of the data: something was filled in, clamped or assumed. It never stops the work.
 *
 * @param where file and row, or field and day
 * @param what what was found and what was taken instead
 */
public record Flag(String where, String what) {}
