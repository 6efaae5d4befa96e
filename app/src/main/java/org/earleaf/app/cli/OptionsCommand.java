// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.field.Zone;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code earleaf options NAME}: what each pass that could be made is worth. */
@Command(name = "options", mixinStandardHelpOptions = true)
public final class OptionsCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Parameters(paramLabel = "NAME", descriptionKey = "cli.options.option.name")
    private String name = "";

    @Option(names = "--hindsight", descriptionKey = "cli.options.option.hindsight")
    private boolean hindsight;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public OptionsCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        FarmDay day = FarmSource.day(wiring, common, hindsight);
        List<Zone> zones = FarmSource.zones(day.farm(), name);
        String answer;
        try (Progress progress = Progress.of(spec, tell("cli.options.working-out-the-field"))) {
            answer = common.isJson() ? json(day, zones) : text(day, zones);
        }
        Printed.print(spec, answer);
        return Faults.DONE;
    }

    /** Nitrogen, then passes against disease and insects, each best first. */
    private List<org.earleaf.decide.Option> options(FarmDay day, Zone zone) {
        List<org.earleaf.decide.Option> all = new ArrayList<>();
        if (zone.isCorn()) {
            all.addAll(day.options(zone));
            all.addAll(day.protection(zone).options());
        }
        return all;
    }

    private static List<ProtectionAnswer.LeftOut> leftOut(FarmDay day, Zone zone) {
        return zone.isCorn() ? day.protection(zone).leftOut() : List.of();
    }

    private String json(FarmDay day, List<Zone> zones) {
        List<@Nullable Object> list = new ArrayList<>();
        for (Zone z : zones) {
            list.add(OptionsJson.of(z, day.on(), options(day, z), leftOut(day, z), common.isMetric()));
        }
        return Json.text(list.size() > 1 ? list : list.get(0));
    }

    private String text(FarmDay day, List<Zone> zones) {
        return zones.stream()
                .map(z -> z.isCorn()
                        ? OptionsText.of(z, day.on(), day.answer(z), common.isMetric())
                        : FieldJson.notModelledSentence(z) + "\n")
                .collect(Collectors.joining("\n"));
    }
}
