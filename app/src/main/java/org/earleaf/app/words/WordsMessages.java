// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.MessageSourceResolvable;

/** The catalogue for templates: {@code #{key}} is a text without values; those with values say {@code w.say(...)}. */
public final class WordsMessages implements MessageSource {
    @Override
    public String getMessage(
            String code, Object @Nullable [] arguments, @Nullable String otherwise, @Nullable Locale locale) {
        return Words.tell(code);
    }

    @Override
    public String getMessage(String code, Object @Nullable [] arguments, @Nullable Locale locale) {
        return Words.tell(code);
    }

    @Override
    public String getMessage(MessageSourceResolvable asked, @Nullable Locale locale) {
        return Words.tell(Objects.requireNonNull(asked.getCodes())[0]);
    }
}
