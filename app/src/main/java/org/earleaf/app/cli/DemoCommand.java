// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.earleaf.app.desk.DemoFarm;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.web.Serving;
import org.earleaf.brief.Brief;
import org.earleaf.farm.Farm;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf demo}: an invented farm on a day in June, its brief printed and its pages served. */
@Command(name = "demo", mixinStandardHelpOptions = true)
public final class DemoCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--once", descriptionKey = "cli.demo.option.once")
    private boolean once;

    @Option(names = "--port", paramLabel = "N", descriptionKey = "cli.demo.option.port")
    private int port = 8080;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public DemoCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        FarmSource.refuseFolder(common, "demo");
        try (Serving serving = trial()) {
            FarmDay day;
            Brief brief;
            try (Progress progress = Progress.of(spec, tell("cli.demo.working-out-the-fields"))) {
                day = serving.today();
                brief = day.brief();
            }
            Printed.print(
                    spec,
                    common.isJson()
                            ? Json.text(MorningJson.of(day, common.isMetric()))
                            : MorningText.of(brief, common.isMetric()));
            if (!once) {
                String where = tell("cli.demo.stop-it-with-ctrl-c", "start", serving.start("127.0.0.1", port));
                // With JSON, standard output is the brief's alone.
                PrintWriter out = common.isJson()
                        ? spec.commandLine().getErr()
                        : spec.commandLine().getOut();
                out.println("\n" + where);
                out.flush();
                serving.untilInterrupted();
            }
        }
        return Faults.DONE;
    }

    /** The demo's folder is needed no longer than it takes to read it. */
    private Serving trial() {
        try (DemoFarm demo = DemoFarm.unpack()) {
            return Serving.onTrial(wiring, demo.folder(), Optional.of(on(demo.folder())));
        }
    }

    /** Late June of the last year of weather: there is always work to show. */
    private LocalDate on(Path folder) {
        return common.findOn().orElseGet(() -> {
            Farm farm = wiring.folders().farm(folder);
            return LocalDate.of(farm.weather().observed().last().getYear(), Month.JUNE, 30);
        });
    }
}
