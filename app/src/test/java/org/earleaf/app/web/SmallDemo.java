// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.farm.Farm;

/**
 * The demo's farm with two of its fields of corn, one with disease, and one of soybeans: every sentence of core as it
 * comes about, in a few seconds. A day is worked out once, whoever asks.
 */
final class SmallDemo {
    static final LocalDate DAY = LocalDate.of(2026, 6, 30);
    static final String CORN = "Cemetery Eighty";
    static final String SICK = "Weir Sixty";
    static final String OTHER = "Bean Forty";
    private static final Set<String> FIELDS = Set.of(CORN, SICK);
    private static final Set<String> BY_FIELD =
            Set.of("fields.csv", "soil.csv", "passes.csv", "readings.csv", "manure.csv", "yields.csv");

    private record Asked(Farm farm, LocalDate on, boolean hindsight) {}

    private final Map<Asked, FarmDay> days = new ConcurrentHashMap<>();
    private final Path folder;

    SmallDemo() throws IOException {
        Path demo = Path.of(System.getProperty("earleaf.root", "..")).resolve("demo-farm");
        folder = Files.createTempDirectory("earleaf-small-demo-");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                String name = file.getFileName().toString();
                List<String> rows = Files.readAllLines(file);
                Files.write(
                        folder.resolve(name),
                        BY_FIELD.contains(name)
                                ? rows.stream()
                                        .filter(r -> r.equals(rows.get(0)) || FIELDS.contains(r.split(",", 2)[0]))
                                        .toList()
                                : rows.stream()
                                        .filter(SmallDemo::isLate)
                                        .map(SmallDemo::waiting)
                                        .toList());
            }
        }
        add("fields.csv", OTHER + ",,40,soybean,2026-05-20,100,140000,15,corn,well,reduced,,,,,,");
        add("soil.csv", OTHER + ",,0,60,22,24,3,6.5,15");
    }

    /** Eight years of weather are enough for sentences. */
    private static boolean isLate(String row) {
        return !row.matches("20(0\\d|1[0-7])-.*");
    }

    /** A label that nobody has looked at again. */
    private static String waiting(String row) {
        return row.startsWith("Demo H1,") ? row.replace(",B. Helper,2026-03-11", ",,") : row;
    }

    private void add(String name, String row) throws IOException {
        Files.writeString(folder.resolve(name), Files.readString(folder.resolve(name)) + row + "\n");
    }

    Path folder() {
        return folder;
    }

    Wiring wiring() {
        Wiring live = Wiring.live();
        return new Wiring(
                live.folders(),
                (farm, on, hindsight) -> days.computeIfAbsent(
                        new Asked(farm, on, hindsight), a -> live.day(a.farm(), a.on(), a.hindsight())),
                Clock.fixed(Instant.parse("2026-06-30T15:00:00Z"), ZoneOffset.UTC));
    }
}
