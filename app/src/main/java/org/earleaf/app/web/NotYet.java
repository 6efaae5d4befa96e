// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Question;

/** An answer is being worked out still; {@link Waits} says so to who asked. */
final class NotYet extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient FarmDay day;
    private final transient Question<?> asked;

    NotYet(FarmDay day, Question<?> asked) {
        super(asked.toString(), null, false, false);
        this.day = day;
        this.asked = asked;
    }

    FarmDay day() {
        return day;
    }

    Question<?> asked() {
        return asked;
    }
}
