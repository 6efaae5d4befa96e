// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One thing broken in a farm folder, and what the message must hold.
 *
 * @param name what is wrong
 * @param breaking how it comes about
 * @param where file, row and column of the first problem
 * @param parts of the message: what was found, what was expected, what to do
 * @param problems how many there are in all; one fault must not make other files look wrong
 */
record Fault(String name, UnaryOperator<TinyFolder> breaking, String where, List<String> parts, int problems) {
    /** One text replaced by another in a file. */
    static Fault of(String name, String file, String from, String to, String where, String... parts) {
        return new Fault(name, folder -> folder.edit(file, from, to), where, List.of(parts), 1);
    }

    static Fault of(String name, UnaryOperator<TinyFolder> breaking, String where, String... parts) {
        return new Fault(name, breaking, where, List.of(parts), 1);
    }

    Fault problems(int count) {
        return new Fault(name, breaking, where, parts, count);
    }

    @Override
    public String toString() {
        return name;
    }
}
