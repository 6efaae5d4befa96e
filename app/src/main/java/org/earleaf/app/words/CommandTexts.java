// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue for picocli: what {@code --help} says of commands and options. An option names its key itself; the key
 * of a command is made by picocli from its name, {@code earleaf.plan.usage.description}, and stands in the catalogue
 * as {@code cli.plan.usage.description}.
 */
public final class CommandTexts extends ResourceBundle {
    private static final String PROGRAM = "earleaf.";
    private static final String OURS = "cli.";
    private static final String STANDARD = "mixinStandardHelpOptions.";
    /** Of every help. */
    private static final Map<String, String> HEADINGS = Map.of(
            "usage.synopsisHeading", "cli.usage.synopsis-heading",
            "usage.commandListHeading", "cli.usage.command-list-heading");

    @Override
    protected @Nullable Object handleGetObject(String key) {
        String ours = ours(key);
        // Behind the heading the command stands on the same line.
        String behind = key.equals("usage.synopsisHeading") ? " " : "";
        return Words.here().has(ours) ? Words.tell(ours) + behind : null;
    }

    private static String ours(String key) {
        if (key.startsWith(STANDARD)) {
            return OURS + "standard." + key.substring(STANDARD.length());
        }
        return key.startsWith(PROGRAM) ? OURS + key.substring(PROGRAM.length()) : HEADINGS.getOrDefault(key, key);
    }

    /** Those of commands by the names that picocli asks for, too. */
    @Override
    public Enumeration<String> getKeys() {
        Stream<String> commands = Words.here().keys().stream()
                .filter(key -> key.startsWith(OURS))
                .flatMap(key -> Stream.of(
                        key, PROGRAM + key.substring(OURS.length()), key.replace(OURS + "standard.", STANDARD)));
        return Collections.enumeration(
                Stream.concat(HEADINGS.keySet().stream(), commands).toList());
    }
}
