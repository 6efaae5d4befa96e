// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.concurrent.Callable;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.brief.Brief;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf morning}: what to do today and in the next days, over the whole farm. */
@Command(name = "morning", mixinStandardHelpOptions = true)
public final class MorningCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--hindsight", descriptionKey = "cli.morning.option.hindsight")
    private boolean hindsight;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public MorningCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        FarmDay day;
        Brief brief;
        try (Progress progress = Progress.of(spec, tell("cli.morning.working-out-the-fields"))) {
            day = FarmSource.day(wiring, common, hindsight);
            brief = day.brief();
        }
        Printed.print(
                spec,
                common.isJson()
                        ? Json.text(MorningJson.of(day, common.isMetric()))
                        : MorningText.of(brief, common.isMetric()));
        return Faults.DONE;
    }
}
