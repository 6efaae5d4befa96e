// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.earleaf.Cautions;
import org.earleaf.app.Search;
import org.earleaf.exchange.PlanInstance;
import org.earleaf.plan.search.Found;
import org.earleaf.units.EarleafException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf plan}: which rig does which field on which day. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Which rig does which field on which day, so that the fewest dollars are lost.",
        footer = Cautions.LABEL)
public final class PlanCommand implements Callable<Integer> {
    @Mixin
    private final Common common = new Common();

    @Option(
            names = "--instance",
            paramLabel = "DIR",
            required = true,
            description = "A problem as plain files (docs/plan-instance.md).")
    private Path instance = Path.of("");

    @Option(names = "--seconds", paramLabel = "N", description = "Longest search (default: 10).")
    private double seconds = Search.USUAL_S;

    @Option(names = "--seed", paramLabel = "S", description = "Seed of the search (default: 1).")
    private long seed = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (!(seconds >= 0)) {
            throw EarleafException.of("--seconds", seconds + "", "0 or more", "Give the longest search in seconds.");
        }
        PrintWriter err = spec.commandLine().getErr();
        PlanInstance.Read read = PlanInstance.read(instance);
        read.flags().forEach(f -> err.println("note: " + f.where() + ": " + f.what()));
        Found found;
        try (Progress progress = Progress.of(spec, "Searching")) {
            found = Search.forPlan(read.problem(), seconds, seed);
        }
        Printed.print(
                spec,
                common.isJson()
                        ? Json.text(PlanJson.of(read.problem(), found, seed))
                        : PlanText.of(read.problem(), found));
        return Faults.DONE;
    }
}
