// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.week.WeekChange;
import picocli.CommandLine.Option;

/** What has come to pass since a week was planned, as told on the command line. */
final class PlanChanges {
    @Option(
            names = "--rain",
            paramLabel = "DAY",
            converter = Common.DateConverter.class,
            descriptionKey = "cli.plan-changes.option.rain")
    private List<LocalDate> rain = new ArrayList<>();

    @Option(names = "--down", paramLabel = "RIG@DAY", descriptionKey = "cli.plan-changes.option.down")
    private List<String> down = new ArrayList<>();

    @Option(names = "--done", paramLabel = "FIELD", descriptionKey = "cli.plan-changes.option.done")
    private List<String> done = new ArrayList<>();

    @Option(names = "--pin", paramLabel = "PASS=RIG@DAY", descriptionKey = "cli.plan-changes.option.pin")
    private List<String> pins = new ArrayList<>();

    WeekChange change() {
        return new WeekChange(
                rain,
                down.stream().map(WeekChange.Down::parse).toList(),
                done,
                pins.stream().map(WeekChange.PinAt::parse).toList());
    }

    /** A problem posed as files has pins of its own, and no week told before. */
    void refuse() {
        if (!change().isNone()) {
            throw new EarleafException(Problem.of(
                    "plan-changes.these-only-for-a-farms",
                    Said.text("--instance"),
                    Said.text("--rain, --down, --done or --pin beside it")));
        }
    }
}
