// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.units.Said;

/** The files of a folder, by name; those that no one knows are flagged. */
final class FolderFiles {
    private static final Set<String> KNOWN = Set.of(
            "farm.csv",
            "fields.csv",
            "boundaries.geojson",
            "soil.csv",
            "weather.csv",
            "forecast.csv",
            "hours.csv",
            "passes.csv",
            "readings.csv",
            "irrigation.csv",
            "labels.csv",
            "manure.csv",
            "products.csv",
            "recipes.csv",
            "rigs.csv",
            "stock.csv",
            "yields.csv",
            // Monthly means that an invented farm's weather was made from; not read.
            "climate.csv",
            "weather");

    private final Path folder;
    private final Findings findings;
    private final Map<String, Path> files = new TreeMap<>();

    FolderFiles(Path folder, Findings findings) {
        this.folder = folder;
        this.findings = findings;
        if (!Files.isDirectory(folder)) {
            findings.problem("folder.missing", Place.of(folder.toString()), Said.of("found.no-folder"));
            return;
        }
        for (Path file : list(folder)) {
            String name = file.getFileName().toString();
            files.put(name, file);
            boolean text = name.endsWith(".md") || name.endsWith(".txt") || name.startsWith(".");
            if (!KNOWN.contains(name) && !text) {
                findings.flag(Place.of(name), Said.of("flag.file-unknown"));
            }
        }
    }

    private List<Path> list(Path of) {
        try (Stream<Path> all = Files.list(of)) {
            return all.sorted().toList();
        } catch (IOException e) {
            findings.problem("folder.unreadable", Place.of(of.toString()), Said.of("found.unreadable-folder"));
            return List.of();
        }
    }

    Optional<Path> find(String name) {
        return Optional.ofNullable(files.get(name));
    }

    /** A file that may be missing. */
    Optional<Sheet> optional(String name) {
        Optional<Sheet> sheet = find(name).flatMap(file -> Sheet.open(file, findings));
        sheet.filter(s -> s.rows().isEmpty() && !findings.hasProblemsIn(name))
                .ifPresent(s -> findings.flag(Place.of(name), Said.of("found.header-alone")));
        return sheet;
    }

    /** A file that must be there. */
    Optional<Sheet> required(String name) {
        if (find(name).isEmpty()) {
            refuseMissing(name, Said.text(name));
        }
        return find(name).flatMap(file -> Sheet.open(file, findings));
    }

    void refuseMissing(String name, Said expected) {
        if (Files.isDirectory(folder)) {
            String in = String.valueOf(folder.getFileName());
            findings.problem(
                    "folder.file-missing",
                    Place.of(name),
                    files.isEmpty()
                            ? Said.of("found.empty-folder", "folder", in)
                            : Said.of("found.other-files", "folder", in, "files", List.copyOf(files.keySet())),
                    "file",
                    expected);
        }
    }

    /** Station files in the folder weather, by name. */
    List<Path> stations() {
        return find("weather").filter(Files::isDirectory).map(this::list).orElse(List.of()).stream()
                .filter(file -> file.getFileName().toString().endsWith(".txt"))
                .toList();
    }
}
