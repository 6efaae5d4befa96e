// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.week.WeekChange;
import picocli.CommandLine.Option;

/** What has come to pass since a week was planned, as told on the command line. */
final class PlanChanges {
    @Option(
            names = "--rain",
            paramLabel = "DAY",
            converter = Common.DateConverter.class,
            description = "A day on which nothing can be done; may be repeated.")
    private List<LocalDate> rain = new ArrayList<>();

    @Option(names = "--down", paramLabel = "RIG@DAY", description = "A rig that cannot go on a day.")
    private List<String> down = new ArrayList<>();

    @Option(names = "--done", paramLabel = "FIELD", description = "A field, zone or pass that is done or given up.")
    private List<String> done = new ArrayList<>();

    @Option(
            names = "--pin",
            paramLabel = "PASS=RIG@DAY",
            description = "A pass (\"Oxbow, nitrogen\") put on a rig and a day by hand.")
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
            throw EarleafException.of(
                    "--instance",
                    "--rain, --down, --done or --pin beside it",
                    "these only for a farm's own week",
                    "Change shifts.csv or jobs.csv instead.");
        }
    }
}
