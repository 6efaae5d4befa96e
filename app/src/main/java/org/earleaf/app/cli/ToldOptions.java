// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.entry.RecordEntry;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.record.Applicator;
import org.earleaf.record.Hours;
import org.earleaf.record.Told;
import picocli.CommandLine.Option;

/** What only a person knows of a pass; the options of {@code record made} and {@code record correct}. */
final class ToldOptions {
    @Option(names = "--by", required = true, paramLabel = "NAME", descriptionKey = "cli.told-options.option.by")
    private String by = "";

    @Option(names = "--licence", paramLabel = "NUMBER", descriptionKey = "cli.told-options.option.licence")
    private String licence = "";

    @Option(names = "--for", paramLabel = "NAME", descriptionKey = "cli.told-options.option.for")
    private String customer = "";

    @Option(
            names = "--customer-address",
            paramLabel = "TEXT",
            descriptionKey = "cli.told-options.option.customer-address")
    private String customerAddress = "";

    @Option(names = "--helper", paramLabel = "NAME", descriptionKey = "cli.told-options.option.helper")
    private String helper = "";

    @Option(
            names = "--helper-training",
            paramLabel = "TEXT",
            descriptionKey = "cli.told-options.option.helper-training")
    private String helperTraining = "";

    @Option(names = "--location", paramLabel = "TEXT", descriptionKey = "cli.told-options.option.location")
    private String location = "";

    @Option(names = "--registration", paramLabel = "NUMBER", descriptionKey = "cli.told-options.option.registration")
    private String registration = "";

    @Option(names = "--rig", paramLabel = "NAME", descriptionKey = "cli.told-options.option.rig")
    private String rig = "";

    @Option(names = "--area", paramLabel = "AREA", descriptionKey = "cli.told-options.option.area")
    private String area = "";

    @Option(names = "--amount", paramLabel = "AMOUNT", descriptionKey = "cli.told-options.option.amount")
    private String amount = "";

    @Option(names = "--start", paramLabel = "HH:MM", descriptionKey = "cli.told-options.option.start")
    private String start = "";

    @Option(names = "--end", paramLabel = "HH:MM", descriptionKey = "cli.told-options.option.end")
    private String end = "";

    @Option(names = "--wind", paramLabel = "TEXT", descriptionKey = "cli.told-options.option.wind")
    private String wind = "";

    @Option(names = "--temperature", paramLabel = "TEXT", descriptionKey = "cli.told-options.option.temperature")
    private String temperature = "";

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "cli.told-options.option.note")
    private String note = "";

    /** @param pass what it was told of */
    Told told(Farm farm, Pass pass, Instant filed) {
        Applicator.Kind kind = customer.isBlank() ? Applicator.Kind.PRIVATE : Applicator.Kind.COMMERCIAL;
        TreeMap<String, String> extras = new TreeMap<>();
        put(extras, "wind", wind);
        put(extras, "temperature", temperature);
        put(extras, "note", note);
        return new Told(
                new Applicator(kind, by, licence, customer, customerAddress, helper, helperTraining),
                location,
                registration,
                rig,
                RecordEntry.area(area, "--area", farm, pass.field(), pass.zone()),
                RecordEntry.amount(amount, "--amount"),
                new Hours(RecordEntry.time(start, "--start"), RecordEntry.time(end, "--end")),
                extras,
                filed);
    }

    private static void put(Map<String, String> extras, String name, String value) {
        if (!value.isBlank()) {
            extras.put(name, value);
        }
    }
}
