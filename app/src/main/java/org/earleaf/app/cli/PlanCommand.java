// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.desk.Search;
import org.earleaf.app.desk.Wiring;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.PlanInstance;
import org.earleaf.plan.search.Found;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf plan}: which rig does which field on which day. */
@Command(name = "plan", mixinStandardHelpOptions = true)
public final class PlanCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--instance", paramLabel = "DIR", descriptionKey = "cli.plan.option.instance")
    private @Nullable Path instance;

    @ArgGroup(validate = false, headingKey = "cli.plan.heading")
    private final PlanChanges changes = new PlanChanges();

    @Option(names = "--seconds", paramLabel = "N", descriptionKey = "cli.plan.option.seconds")
    private String seconds = String.valueOf(Search.USUAL_S);

    @Option(names = "--seed", paramLabel = "S", descriptionKey = "cli.plan.option.seed")
    private long seed = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public PlanCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        Path folder = instance;
        if (folder != null) {
            return solve(folder);
        }
        FarmDay day = FarmSource.day(wiring, common, false);
        Week week;
        WeekChange change = changes.change();
        try (Progress progress = Progress.of(spec, tell("cli.plan.working-out-the-fields"))) {
            week = day.week(seed);
        }
        if (change.isNone()) {
            return print(Json.text(WeekJson.of(week, seed, common.isMetric())), WeekText.of(week, common.isMetric()));
        }
        WeekChange.Anew anew = change.to(week, seed, day.how());
        return print(Json.text(WeekJson.of(anew, seed, common.isMetric())), WeekText.of(anew, common.isMetric()));
    }

    private int print(String json, String text) {
        Printed.print(spec, common.isJson() ? json : text);
        return Faults.DONE;
    }

    private int solve(Path folder) {
        changes.refuse();
        double longest_s = Ranges.SEARCH.read(seconds, "--seconds");
        PrintWriter err = spec.commandLine().getErr();
        PlanInstance.Read read = PlanInstance.read(folder);
        read.flags().forEach(f -> err.println(tell("cli.plan.note", "f", new Say(common.isMetric()).say(f))));
        Found found;
        try (Progress progress = Progress.of(spec, tell("cli.plan.searching"))) {
            found = Search.forPlan(read.problem(), longest_s, seed);
        }
        Printed.print(
                spec,
                common.isJson()
                        ? Json.text(PlanJson.of(read.problem(), found, seed))
                        : PlanText.of(read.problem(), found));
        return Faults.DONE;
    }
}
