// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * A formula as it stands above the code that computes it. All of them travel with the program as docs/equations.md,
 * which is made from those comments and held to them by a test.
 *
 * @param of the part of the code it belongs to
 * @param says what it is for
 * @param formula with its symbols, units and range
 * @param source where it comes from
 * @param check the tests that hold it
 */
record Equation(String of, String says, String formula, String source, String check) {
    private static final String LIST = "/reference/equations.md";
    private static final Map<String, Equation> ALL = read();

    /** The equation of a part of the code. */
    static Equation of(String part) {
        return Objects.requireNonNull(ALL.get(part), part);
    }

    /** The part's name in words, English as all of the reference: "Nitrogen options". */
    public String title() {
        String part = of.substring(of.lastIndexOf('.') + 1).replaceAll("_.*", "");
        return Phrases.capital(part.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.US));
    }

    private static Map<String, Equation> read() {
        try (InputStream in = Objects.requireNonNull(Equation.class.getResourceAsStream(LIST), LIST)) {
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(LIST, e);
        }
    }

    /** By part of the code. */
    static Map<String, Equation> parse(String page) {
        Map<String, Equation> all = new LinkedHashMap<>();
        for (String part : page.split("\n### ")) {
            String[] lines = part.split("\n");
            if (lines.length > 2 && lines[1].equals("```text")) {
                all.put(lines[0].strip(), equation(lines));
            }
        }
        return all;
    }

    private static Equation equation(String[] lines) {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        String into = "says";
        for (int k = 2; k < lines.length && !lines[k].equals("```"); k++) {
            String line = lines[k].replaceAll("\\{@\\w+ ([^}]*)}", "$1");
            if (line.startsWith("Source ") || line.startsWith("Check ")) {
                into = line.substring(0, line.indexOf(' '));
                line = line.substring(into.length());
            } else if (into.equals("says") && line.isBlank()) {
                into = "formula";
            } else if (!into.equals("says") && !line.startsWith(" ")) {
                into = "formula";
            }
            parts.computeIfAbsent(into, p -> new ArrayList<>()).add(line);
        }
        return new Equation(
                lines[0].strip(),
                sentence(parts, "says"),
                String.join("\n", parts.getOrDefault("formula", List.of())).strip(),
                // A page that shows it ends the sentence.
                sentence(parts, "Source").replaceAll("[.]$", ""),
                sentence(parts, "Check"));
    }

    private static String sentence(Map<String, List<String>> parts, String name) {
        return String.join(
                        " ",
                        parts.getOrDefault(name, List.of()).stream()
                                .map(String::strip)
                                .toList())
                .strip();
    }
}
