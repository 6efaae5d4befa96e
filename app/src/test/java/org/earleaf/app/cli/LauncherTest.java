// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.Main;
import org.junit.jupiter.api.Test;

/** The script that starts Earleaf, and what the documents show of it. */
class LauncherTest {
    private static final Path HOUSE = Path.of("..");
    private static final TreeSet<String> COMMANDS =
            new TreeSet<>(Main.commandLine().getSubcommands().keySet());

    @Test
    void the_launcher_names_no_command_that_does_not_exist() throws IOException {
        String cases = Files.readString(HOUSE.resolve("earleaf"))
                .lines()
                .filter(line -> line.contains("TieredStopAtLevel"))
                .findFirst()
                .orElseThrow();
        List<String> named = Arrays.stream(
                        cases.substring(0, cases.indexOf(')')).split("\\|"))
                .map(String::strip)
                .filter(word -> !word.startsWith("-"))
                .toList();
        assertThat(named).isNotEmpty().isSubsetOf(COMMANDS);
    }

    @Test
    void the_readme_shows_no_command_that_does_not_exist() throws IOException {
        Matcher shown = Pattern.compile("\\./earleaf +([a-z]+)").matcher(Files.readString(HOUSE.resolve("README.md")));
        TreeSet<String> named = new TreeSet<>();
        while (shown.find()) {
            named.add(shown.group(1));
        }
        assertThat(named).isNotEmpty().isSubsetOf(COMMANDS);
    }
}
