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
            findings.problem(
                    Place.of(folder.toString()),
                    "no such folder",
                    "a farm folder",
                    "Give the folder that holds farm.csv.");
            return;
        }
        for (Path file : list(folder)) {
            String name = file.getFileName().toString();
            files.put(name, file);
            boolean text = name.endsWith(".md") || name.endsWith(".txt") || name.startsWith(".");
            if (!KNOWN.contains(name) && !text) {
                findings.flag(Place.of(name), "unknown file", "a file that is not known; it is not read");
            }
        }
    }

    private List<Path> list(Path of) {
        try (Stream<Path> all = Files.list(of)) {
            return all.sorted().toList();
        } catch (IOException e) {
            findings.problem(
                    Place.of(of.toString()), "a folder that cannot be read", "a readable folder", "Check its rights.");
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
                .ifPresent(s -> findings.flag(Place.of(name), "no rows", "a header and no rows"));
        return sheet;
    }

    /** A file that must be there. */
    Optional<Sheet> required(String name) {
        if (find(name).isEmpty()) {
            refuseMissing(name, name);
        }
        return find(name).flatMap(file -> Sheet.open(file, findings));
    }

    void refuseMissing(String name, String expected) {
        if (Files.isDirectory(folder)) {
            String there = files.isEmpty() ? "it is empty" : "it holds " + String.join(", ", files.keySet());
            findings.problem(
                    Place.of(name),
                    "no such file in the folder " + folder.getFileName() + " (" + there + ")",
                    expected,
                    "Add the file; docs/farm-folder.md says what belongs in it.");
        }
    }

    /** Station files in the folder weather, by name. */
    List<Path> stations() {
        return find("weather").filter(Files::isDirectory).map(this::list).orElse(List.of()).stream()
                .filter(file -> file.getFileName().toString().endsWith(".txt"))
                .toList();
    }
}
