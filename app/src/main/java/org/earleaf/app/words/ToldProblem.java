// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

/** A problem in words: where it is, what stands there, what would be right and what to do. */
public record ToldProblem(String code, String where, String found, String expected, String todo, String sentence) {}
