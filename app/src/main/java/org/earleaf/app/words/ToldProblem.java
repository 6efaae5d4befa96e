// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

/** A problem in words: where it is, what stands there, what would be right and what to do. */
public record ToldProblem(
        String code, String what, String where, String found, String expected, String todo, String sentence) {
    /** Code and, of a range, the number that it is about: the same at every door. */
    public String key() {
        return what.isEmpty() ? code : code + " " + what;
    }
}
