// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One thing that is wrong with an input. The catalogue holds under {@code problem.CODE.expected} and
 * {@code problem.CODE.todo} what would be right and what to do next.
 *
 * @param rule its code is the rule that is broken, its values what the two sentences need
 * @param place file, row and column, or field, pass and day
 * @param seen what stands there
 */
public record Problem(Said rule, Said place, Said seen) {
    /** {@code Problem.of("rate.above-most", where, found, "most", Measure.NITROGEN_RATE.of(336))}. */
    public static Problem of(String code, Said place, Said seen, Object... namesAndValues) {
        return new Problem(Said.of(code, namesAndValues), place, seen);
    }

    /** What stands there, as it was entered; blank: nothing. */
    public static Said seen(String text) {
        return text.isBlank() ? Said.of("found.nothing") : Said.of("found.quoted", "text", text);
    }

    /** The rule that is broken: stable, for tests and programs. */
    public String code() {
        return rule.code();
    }

    /** The same at a place that is better known now. */
    public Problem at(Said known) {
        return new Problem(rule, known, seen);
    }

    /** What would be right, to be put into words. */
    public Said right() {
        return part("expected");
    }

    /** The next step, to be put into words. */
    public Said next() {
        return part("todo");
    }

    private Said part(String which) {
        Map<String, Object> values = new LinkedHashMap<>(rule.values());
        return new Said("problem." + code() + "." + which, values);
    }

    /** For logs and tests; people are told by the doors. */
    public String where() {
        return place.toString();
    }

    public String found() {
        return seen.toString();
    }

    public String expected() {
        return right().toString();
    }

    public String todo() {
        return next().toString();
    }

    /** For logs and tests; people are told by the doors. */
    public String sentence() {
        return code() + " at " + where() + ": found " + found();
    }
}
