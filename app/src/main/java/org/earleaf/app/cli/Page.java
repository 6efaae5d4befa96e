// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.Locale;

/** A page of text being set: heads under rules, sentences broken at its width, tables in columns. */
final class Page {
    private final StringBuilder text = new StringBuilder();

    Page title(String title) {
        text.append(title).append('\n').append(Say.rule('=')).append('\n');
        return this;
    }

    Page head(String head) {
        text.append('\n').append(head).append('\n').append(Say.rule('-')).append('\n');
        return this;
    }

    Page say(String sentence) {
        return say(sentence, "");
    }

    Page say(String sentence, String margin) {
        Say.wrapped(sentence, margin).forEach(line -> text.append(line).append('\n'));
        return this;
    }

    /** One row of a table; each format as for {@link String#format}. */
    Page row(String format, Object... cells) {
        text.append(String.format(Locale.ROOT, format, cells).stripTrailing()).append('\n');
        return this;
    }

    Page gap() {
        text.append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
