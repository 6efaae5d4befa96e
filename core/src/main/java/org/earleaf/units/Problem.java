// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

/**
 * One thing that is wrong with an input, in the words of the person who must mend it.
 *
 * @param where file, row and column, or field, pass and day
 * @param found what stands there
 * @param expected what would be right, with its unit and range
 * @param todo the next step
 */
public record Problem(String where, String found, String expected, String todo) {
    public String sentence() {
        return where + ": found " + found + "; expected " + expected + ". " + todo;
    }
}
