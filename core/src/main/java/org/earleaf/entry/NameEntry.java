// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** Names of things and people, and short accounts of what was done, as a person enters them. */
public final class NameEntry {
    private static final int LONGEST = 60;

    private NameEntry() {}

    /** What a thing is to be called; refused where it is no name in one line. */
    public static void check(String name, String where) {
        boolean odd = name.chars().anyMatch(Character::isISOControl);
        if (name.isBlank() || odd || name.length() > LONGEST) {
            throw new EarleafException(Problem.of(
                    "name.unreadable",
                    Said.text(where),
                    odd ? Said.of("found.lines") : Problem.seen(name),
                    "most",
                    LONGEST));
        }
    }

    /** Who did something; refused where nobody is named. */
    public static String person(String text, String where) {
        if (text.isBlank()) {
            throw EarleafException.coded("person.missing", where, "");
        }
        return text.strip();
    }

    /** What was done, in the words of who did it; refused where nothing is told. */
    public static String told(String text, String where) {
        if (text.isBlank()) {
            throw EarleafException.coded("account.missing", where, "");
        }
        return text.strip();
    }
}
