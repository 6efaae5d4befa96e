// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.entry.RecordEntry;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.record.Applicator;
import org.earleaf.record.Told;
import picocli.CommandLine.Option;

/** What only a person knows of a pass; the options of {@code record made} and {@code record correct}. */
final class ToldOptions {
    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who made the pass, or supervised it.")
    private String by = "";

    @Option(names = "--licence", paramLabel = "NUMBER", description = "Number of the applicator's certificate.")
    private String licence = "";

    @Option(names = "--for", paramLabel = "NAME", description = "The customer, when it was hired work.")
    private String customer = "";

    @Option(names = "--customer-address", paramLabel = "TEXT", description = "The customer's address.")
    private String customerAddress = "";

    @Option(names = "--helper", paramLabel = "NAME", description = "An uncertified applicator under supervision.")
    private String helper = "";

    @Option(names = "--helper-training", paramLabel = "TEXT", description = "Where the helper's training record is.")
    private String helperTraining = "";

    @Option(
            names = "--location",
            paramLabel = "TEXT",
            description = "Where the field lies: county, range, township and section, or map reference.")
    private String location = "";

    @Option(names = "--registration", paramLabel = "NUMBER", description = "Registration number on the label.")
    private String registration = "";

    @Option(names = "--rig", paramLabel = "NAME", description = "The rig.")
    private String rig = "";

    @Option(names = "--area", paramLabel = "AREA", description = "Ground treated, '72 ac' (default: all of it).")
    private String area = "";

    @Option(
            names = "--amount",
            paramLabel = "AMOUNT",
            description = "Total of the product, '812 gal' (default: rate times area, and the record says so).")
    private String amount = "";

    @Option(names = "--start", paramLabel = "HH:MM", description = "First drop.")
    private String start = "";

    @Option(names = "--end", paramLabel = "HH:MM", description = "Last drop.")
    private String end = "";

    @Option(names = "--wind", paramLabel = "TEXT", description = "Wind at the boom, '6 mph from SW'.")
    private String wind = "";

    @Option(names = "--temperature", paramLabel = "TEXT", description = "Air temperature, '78 F'.")
    private String temperature = "";

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything to add.")
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
                RecordEntry.time(start, "--start"),
                RecordEntry.time(end, "--end"),
                extras,
                filed);
    }

    private static void put(Map<String, String> extras, String name, String value) {
        if (!value.isBlank()) {
            extras.put(name, value);
        }
    }
}
