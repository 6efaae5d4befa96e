// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The parts of a fact as a door gives them: columns of a row, keys of a file, options of a command, boxes of a page. Reading
 * one that is wrong notes the problem; the rules of the fact stand in its entry and ask for the parts by name.
 */
public interface Parts {
    /** Without the blanks around it; empty: not given. */
    String text(String part);

    /** In the unit of its bounds; NaN where it is not given, or is refused. */
    double number(String part, Allowed allowed);

    /** What is usual where it is not given, and remarked. */
    double number(String part, Allowed allowed, double usual);

    /** The day; empty where it is not given, or is refused. */
    Optional<LocalDate> date(String part);

    /** Notes that a rule is broken, told at the part that the problem names as its place. */
    void refuse(Problem problem);

    /** Notes what is possible and was taken, but that a person may want to look at again. */
    void remark(String part, Said said);

    /** Notes that a word was not given, and which is taken. */
    void assumed(String part, String word);

    /** Whether nothing was refused so far. */
    boolean isGood();

    default boolean has(String part) {
        return !text(part).isEmpty();
    }

    /** Notes that a rule is broken by what stands in a part. */
    default void refuse(String code, String part, String found, Object... namesAndValues) {
        refuse(Problem.of(code, Said.text(part), Problem.seen(found), namesAndValues));
    }

    /** Text that has to be given. */
    default String filled(String part) {
        if (!has(part)) {
            refuse("cell.empty", part, "");
        }
        return text(part);
    }

    /** A number that has to be given. */
    default double needed(String part, Allowed allowed) {
        return filled(part).isEmpty() ? Double.NaN : number(part, allowed);
    }

    /** One of a few words; empty where it is not given, or is refused. */
    default <T> Optional<T> word(String part, Function<String, Optional<T>> find, String words) {
        Optional<T> value = has(part) ? find.apply(text(part)) : Optional.empty();
        if (value.isEmpty() && has(part)) {
            refuse("word.unknown", part, text(part), "words", words);
        }
        return value;
    }

    /** One of a few words that has to be given. */
    default <T> Optional<T> neededWord(String part, Function<String, Optional<T>> find, String words) {
        return filled(part).isEmpty() ? Optional.empty() : word(part, find, words);
    }

    /** One of a few words; the usual one where it is not given, and remarked. */
    default <T> T word(String part, Function<String, Optional<T>> find, String words, T usual, String usualWord) {
        if (!has(part)) {
            assumed(part, usualWord);
        }
        return word(part, find, words).orElse(usual);
    }
}
