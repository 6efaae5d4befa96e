// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code earleaf field NAME}: where a field stands and how long its nitrogen lasts. */
@Command(name = "field", mixinStandardHelpOptions = true)
public final class FieldCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Parameters(arity = "0..1", paramLabel = "NAME", descriptionKey = "cli.field.option.name")
    private @Nullable String name;

    @Option(names = "--all", descriptionKey = "cli.field.option.all")
    private boolean all;

    @Option(names = "--hindsight", descriptionKey = "cli.field.option.hindsight")
    private boolean hindsight;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public FieldCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        FarmDay day = FarmSource.day(wiring, common, hindsight);
        List<Zone> zones = zones(day);
        String answer;
        try (Progress progress = Progress.of(spec, tell("cli.field.working-out-the-field"))) {
            answer = common.isJson() ? json(day, zones) : text(day, zones);
        }
        Printed.print(spec, answer);
        return Faults.DONE;
    }

    private List<Zone> zones(FarmDay day) {
        if (all) {
            return day.farm().zones();
        }
        if (name == null) {
            throw new EarleafException(
                    Problem.of("field.the-name-of-a-field", Said.text("field"), Said.of("found.no-name")));
        }
        return FarmSource.zones(day.farm(), name);
    }

    private String json(FarmDay day, List<Zone> zones) {
        List<@Nullable Object> list = new ArrayList<>();
        for (Zone z : zones) {
            list.add(z.isCorn() ? FieldJson.of(day.outlook(z), common.isMetric()) : FieldJson.notModelled(z, day.on()));
        }
        return Json.text(all || list.size() > 1 ? list : list.get(0));
    }

    private String text(FarmDay day, List<Zone> zones) {
        return zones.stream()
                .map(z -> z.isCorn()
                        ? FieldText.of(day.outlook(z), common.isMetric())
                        : FieldJson.notModelledSentence(z) + "\n")
                .collect(Collectors.joining("\n"));
    }
}
