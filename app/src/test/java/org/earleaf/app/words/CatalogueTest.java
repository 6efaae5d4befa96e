// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The catalogue and the code agree: every code has its text, every text its use, every value its place. */
class CatalogueTest {
    private static final Path HOUSE = house();
    private static final Catalogue CATALOGUE = Catalogue.of(Locale.US);
    private static Spoken spoken = new Spoken(List.of(), Set.of());

    @BeforeAll
    static void read_the_sources() {
        spoken = Spoken.in(HOUSE);
    }

    @Test
    void every_text_parses() {
        List<String> faults = new ArrayList<>();
        for (String key : CATALOGUE.keys()) {
            try {
                assertThat(CATALOGUE.find(key)).isPresent();
            } catch (IllegalArgumentException e) {
                faults.add(key + ": " + e.getMessage());
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void no_key_stands_twice() throws IOException {
        List<String> keys = Files.readAllLines(HOUSE.resolve("app/src/main/resources/words/en-US.properties")).stream()
                .filter(line -> line.matches("[\\w.-]+=.*"))
                .map(line -> line.substring(0, line.indexOf('=')))
                .toList();
        Set<String> seen = new HashSet<>();
        assertThat(keys.stream().filter(key -> !seen.add(key)).toList()).isEmpty();
        assertThat(seen).as("every line is a key, a comment or empty").isEqualTo(CATALOGUE.keys());
    }

    /** What is put together of parts cannot be put in the order of another language. */
    @Test
    void every_text_is_whole() {
        assertThat(CATALOGUE.keys())
                .allSatisfy(key -> assertThat(CATALOGUE.findText(key).orElseThrow())
                        .as(key)
                        .doesNotStartWith(" ")
                        .doesNotEndWith(" "));
    }

    @Test
    void every_code_of_the_sources_has_a_text_that_uses_the_values_given() {
        List<String> faults = new ArrayList<>();
        for (Spoken.Call call : spoken.calls()) {
            List<String> keys = keys(call);
            Set<String> asked = new LinkedHashSet<>();
            for (String key : keys) {
                if (CATALOGUE.has(key)) {
                    asked.addAll(names(key));
                } else {
                    faults.add(call.file() + ": no " + key);
                }
            }
            call.names()
                    .filter(given -> keys.stream().allMatch(CATALOGUE::has) && !given.equals(asked))
                    .ifPresent(given -> faults.add(
                            call.file() + ": " + call.code() + " is given " + given + ", its text asks for " + asked));
        }
        assertThat(faults).isEmpty();
        assertThat(spoken.calls()).hasSizeGreaterThan(5);
    }

    @Test
    void every_text_has_a_use() {
        Set<String> used = new HashSet<>(spoken.quoted());
        spoken.calls().forEach(call -> used.addAll(keys(call)));
        List<String> idle = CATALOGUE.keys().stream()
                .filter(key -> !used.contains(key) && !isUnit(key) && !isConstant(key) && !isHelp(key))
                .toList();
        assertThat(idle).isEmpty();
    }

    private static List<String> keys(Spoken.Call call) {
        return call.isProblem()
                ? List.of("problem." + call.code() + ".expected", "problem." + call.code() + ".todo")
                : List.of(call.code());
    }

    /** Names of values, without their forms. */
    private static Set<String> names(String key) {
        return CATALOGUE.names(key).stream()
                .filter(name -> !name.equals(Words.SYSTEM))
                .map(name -> name.contains("_") ? name.substring(0, name.indexOf('_')) : name)
                .collect(Collectors.toSet());
    }

    private static boolean isUnit(String key) {
        return (key.startsWith("unit.") || key.startsWith("each.") || key.startsWith("said."))
                && spoken.quoted().contains(key.substring(key.indexOf('.') + 1));
    }

    /** What picocli asks for by the names of commands. */
    private static boolean isHelp(String key) {
        Matcher named = Pattern.compile("cli\\.(.*\\.)?([a-z]+)\\.usage\\.(description|footer)")
                .matcher(key);
        return key.startsWith("cli.standard.")
                || key.equals("cli.usage.description")
                || named.matches() && spoken.quoted().contains(named.group(2));
    }

    /** Whether a key such as "Pass.State.MADE" or "Figure.WORTH.says" names a constant that is there. */
    private static boolean isConstant(String key) {
        String[] parts = key.split("\\.");
        if (!Character.isUpperCase(key.charAt(0)) || parts.length < 2) {
            return false;
        }
        String last = parts[parts.length - 1];
        if (Character.isLowerCase(last.charAt(0))) {
            return spoken.quoted().contains(last) && isConstant(key.substring(0, key.length() - last.length() - 1));
        }
        String type = String.join("$", List.of(parts).subList(0, parts.length - 1));
        return packages().anyMatch(p -> {
            try {
                Object[] constants = Class.forName(p + "." + type, false, CatalogueTest.class.getClassLoader())
                        .getEnumConstants();
                return constants != null
                        && Stream.of(constants)
                                .anyMatch(c -> ((Enum<?>) c).name().equals(parts[parts.length - 1]));
            } catch (ClassNotFoundException e) {
                return false;
            }
        });
    }

    private static Stream<String> packages() {
        try {
            List<String> found = new ArrayList<>();
            for (String room : List.of("core", "exchange", "app")) {
                Path java = HOUSE.resolve(room + "/src/main/java");
                try (Stream<Path> all = Files.walk(java)) {
                    all.filter(Files::isDirectory)
                            .forEach(
                                    d -> found.add(java.relativize(d).toString().replace('/', '.')));
                }
            }
            return found.stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The folder of the whole project, found by its launcher: tests run in the folder of their room. */
    static Path house() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("earleaf"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
