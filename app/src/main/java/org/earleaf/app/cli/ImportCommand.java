// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.Difference;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.ImportReport;
import org.earleaf.exchange.FolderWeather;
import org.earleaf.farm.Farm;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code earleaf import --folder DIR}: brings a farm folder into the database, as often as wanted. */
@Command(name = "import", mixinStandardHelpOptions = true)
public final class ImportCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public ImportCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        Path folder = common.findFolder()
                .orElseThrow(() -> new EarleafException(Problem.of(
                        "import.the-farm-folder-to-import", Said.text("--folder"), Said.of("found.nothing"))));
        ImportReport report = isWeatherAlone(folder) ? weather(folder) : farm(folder);
        Printed.print(spec, common.isJson() ? json(report) : text(report));
        return Faults.DONE;
    }

    private static boolean isWeatherAlone(Path folder) {
        return Files.isDirectory(folder)
                && Stream.of("farm.csv", "fields.csv", "soil.csv").noneMatch(name -> Files.exists(folder.resolve(name)))
                && Stream.of("weather.csv", "weather", "forecast.csv", "hours.csv")
                        .anyMatch(name -> Files.exists(folder.resolve(name)));
    }

    /** The folder is read to its end before the database is touched: nothing is stored when anything is wrong. */
    private ImportReport farm(Path folder) {
        Farm farm = wiring.folders().farm(folder);
        List<WeatherDay> written = wiring.folders().weather(folder).observed();
        try (FarmStore store = FarmStore.create(common.farm())) {
            return store.importFarm(farm, written);
        }
    }

    private ImportReport weather(Path folder) {
        FolderWeather weather = wiring.folders().weather(folder);
        try (FarmStore store = FarmStore.open(common.farm())) {
            return store.importWeather(
                    weather.observed(), weather.filled(store.farm().site()));
        }
    }

    private String json(ImportReport r) {
        return Json.text(Json.object(
                "farm", r.farm(),
                "database", common.farm().toString(),
                "first", r.first(),
                "added", r.added(),
                "weather_from", r.weatherFrom(),
                "weather_to", r.weatherTo(),
                "differences", sentences(r.differences()),
                "flags", r.flags().stream().map(this::sentence).toList()));
    }

    private List<String> sentences(List<Difference> differences) {
        return differences.stream().map(d -> d.sentence(common.isMetric())).toList();
    }

    private String sentence(Flag flag) {
        return new Say(common.isMetric()).say(flag);
    }

    private String text(ImportReport r) {
        List<String> added = r.added().entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> added(e.getKey(), e.getValue()))
                .toList();
        StringBuilder text = new StringBuilder();
        text.append(tell(
                        r.first() ? "cli.import.imported" : "cli.import.brought-up-to-date",
                        "farm",
                        r.farm(),
                        "file",
                        common.farm().toString()))
                .append('\n')
                .append(added.isEmpty() ? tell("cli.import.nothing-new") : tell("cli.import.new", "added", added))
                .append(' ')
                .append(tell("cli.import.weather", "from", r.weatherFrom(), "to", r.weatherTo()))
                .append('\n');
        section(text, tell("cli.import.different-from-before"), sentences(r.differences()));
        section(
                text,
                tell("cli.import.filled-in-or-limited"),
                r.flags().stream().map(this::sentence).toList());
        return text.toString();
    }

    private static String added(String kind, int n) {
        return switch (kind) {
            case "passes" -> tell("cli.import.passes", "n", n);
            case "readings" -> tell("cli.import.readings", "n", n);
            case "irrigations" -> tell("cli.import.irrigations", "n", n);
            case "manure" -> tell("cli.import.manure", "n", n);
            case "past years" -> tell("cli.import.past-years", "n", n);
            case "weather days" -> tell("cli.import.weather-days", "n", n);
            default -> throw new IllegalStateException(kind);
        };
    }

    private static void section(StringBuilder text, String head, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n').append(head).append(":\n");
            lines.forEach(line -> text.append("  ").append(line).append('\n'));
        }
    }
}
