// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.WeekChange;
import org.earleaf.units.EarleafException;
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
                down.stream().map(PlanChanges::down).toList(),
                done,
                pins.stream().map(PlanChanges::pin).toList());
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

    private static WeekChange.Down down(String text) {
        int at = text.lastIndexOf('@');
        if (at < 1) {
            throw wrong("--down", text, "RIG@DAY, such as Highboy@2026-07-01");
        }
        return new WeekChange.Down(text.substring(0, at), day("--down", text, text.substring(at + 1)));
    }

    private static WeekChange.PinAt pin(String text) {
        int is = text.indexOf('=');
        int at = text.lastIndexOf('@');
        if (is < 1 || at < is + 2) {
            throw wrong("--pin", text, "PASS=RIG@DAY, such as \"Oxbow, nitrogen=Highboy@2026-07-01\"");
        }
        return new WeekChange.PinAt(
                text.substring(0, is), text.substring(is + 1, at), day("--pin", text, text.substring(at + 1)));
    }

    private static LocalDate day(String option, String text, String day) {
        try {
            return LocalDate.parse(day.strip());
        } catch (DateTimeParseException notADay) {
            throw wrong(option, text, "a day that exists after the @, as YYYY-MM-DD");
        }
    }

    private static EarleafException wrong(String option, String found, String expected) {
        return EarleafException.of(option, "\"" + found + "\"", expected, "Write it so.");
    }
}
