// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Tab-separated tables of measured corn with a line of names. */
final class Rows {
    private static final String A_FILE = "iowa-response.tsv";

    private final List<String> names;
    private final String[] cells;

    private Rows(List<String> names, String[] cells) {
        this.names = names;
        this.cells = cells;
    }

    static List<Rows> read(Path folder, String file) {
        try {
            return of(Files.readAllLines(folder.resolve(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A table of this package; lines from # on are remarks. */
    static List<Rows> bundled(String name) {
        try (InputStream in = Objects.requireNonNull(Rows.class.getResourceAsStream(name), name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return of(text.lines().filter(line -> !line.startsWith("#")).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Rows> of(List<String> lines) {
        List<String> names = Arrays.asList(lines.get(0).split("\t", -1));
        return lines.stream()
                .skip(1)
                .map(line -> new Rows(names, line.split("\t", -1)))
                .toList();
    }

    /** The folder of measured corn beside the project, looked for from the working folder upwards. */
    static Optional<Path> findFolder() {
        Path at = Path.of("").toAbsolutePath();
        while (at != null && !Files.exists(at.resolve("earleaf"))) {
            at = at.getParent();
        }
        return Optional.ofNullable(at)
                .map(house -> house.resolve("../shared/data/field").normalize())
                .filter(folder -> Files.exists(folder.resolve(A_FILE)));
    }

    String text(String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            throw new IllegalArgumentException("no column " + name + " among " + names);
        }
        return cells[at];
    }

    /** NaN where nothing stands. */
    double number(String name) {
        return text(name).isEmpty() ? Double.NaN : Double.parseDouble(text(name));
    }

    int whole(String name) {
        return Integer.parseInt(text(name));
    }

    LocalDate day(String name) {
        return LocalDate.parse(text(name));
    }
}
