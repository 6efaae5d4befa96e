// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.FarmStore;
import org.earleaf.exchange.table.CsvRows;
import org.earleaf.field.Reading;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf export}: writes photographs with the readings they go with. */
@Command(name = "export", mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
    private static final String LIST = "photographs.csv";

    @Mixin
    private final Common common = new Common();

    @Option(
            names = "--photographs",
            required = true,
            paramLabel = "DIR",
            descriptionKey = "cli.export.option.photographs")
    private Path folder = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        FarmSource.refuseFolder(common, "export");
        try (FarmStore store = FarmStore.open(common.farm())) {
            Map<String, Reading> readings = new LinkedHashMap<>();
            store.farm().readings().forEach(r -> readings.put(r.id(), r));
            List<Photograph.Note> notes = store.photographs().stream()
                    .filter(n -> readings.containsKey(n.reading()))
                    .toList();
            List<String> names = names(notes, readings);
            refuseExisting(names);
            write(store, notes, names, readings);
            Printed.print(
                    spec,
                    common.isJson()
                            ? Json.text(Json.object("folder", folder.toString(), "photographs", names))
                            : tell(
                                    "cli.export.written-to-listed-in",
                                    "n",
                                    names.size(),
                                    "folder",
                                    String.valueOf(folder),
                                    "list",
                                    LIST));
        }
        return Faults.DONE;
    }

    /** "2026-06-30 Oxbow height.jpg"; with a number where that is not enough. */
    private static List<String> names(List<Photograph.Note> notes, Map<String, Reading> readings) {
        List<String> names = new ArrayList<>();
        for (Photograph.Note n : notes) {
            Reading r = Objects.requireNonNull(readings.get(n.reading()));
            String place = r.zone().isEmpty() ? r.field() : r.field() + " " + r.zone();
            // Letters, figures and gaps only: a field's name must not lead to another folder.
            String name = (r.date() + " " + place + " " + r.kind().word()).replaceAll("[^\\p{L}\\p{N} -]+", "_");
            String ending = n.type().equals("image/png") ? ".png" : ".jpg";
            String free = name + ending;
            for (int k = 2; isTaken(names, free); k++) {
                free = name + " " + k + ending;
            }
            names.add(free);
        }
        return names;
    }

    /** Some file systems do not tell capitals. */
    private static boolean isTaken(List<String> names, String name) {
        return names.stream().anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)));
    }

    private void refuseExisting(List<String> names) {
        List<String> all = new ArrayList<>(names);
        all.add(LIST);
        for (String name : all) {
            if (Files.exists(folder.resolve(name))) {
                throw new EarleafException(Problem.of(
                        "export.a-folder-without-it",
                        Said.text(folder.resolve(name).toString()),
                        Said.of("found.a-file-that-is-there")));
            }
        }
    }

    private void write(
            FarmStore store, List<Photograph.Note> notes, List<String> names, Map<String, Reading> readings) {
        List<List<String>> list = new ArrayList<>();
        list.add(List.of("file", "field", "zone", "date", "kind", "reading", "note"));
        try {
            Files.createDirectories(folder);
            for (int k = 0; k < notes.size(); k++) {
                Photograph p = store.findPhotograph(notes.get(k).id()).orElseThrow();
                Files.write(folder.resolve(names.get(k)), p.image(), StandardOpenOption.CREATE_NEW);
                Reading r = Objects.requireNonNull(readings.get(notes.get(k).reading()));
                list.add(List.of(
                        names.get(k),
                        r.field(),
                        r.zone(),
                        r.date().toString(),
                        r.kind().word(),
                        r.entered(),
                        r.note()));
            }
            Files.writeString(
                    folder.resolve(LIST), CsvRows.text(list), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }
}
