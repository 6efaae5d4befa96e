// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * A remark on the quality of the data: something was filled in, clamped or assumed. It never stops the work.
 *
 * @param where file and row, or field and day
 * @param what what was found and what was taken instead, a clause without a full stop
 */
public record Flag(Said where, Said what) {
    /** The old way, in sentences; new flags take codes. */
    public Flag(String where, String what) {
        this(Said.text(where), Said.text(what));
    }
}
