// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.Instant;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.record.Amount;
import org.earleaf.record.Applicator;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;
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

    Told told(Instant filed) {
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
                amount("--area", area),
                amount("--amount", amount),
                time("--start", start),
                time("--end", end),
                extras,
                filed);
    }

    private static void put(Map<String, String> extras, String name, String value) {
        if (!value.isBlank()) {
            extras.put(name, value);
        }
    }

    private static Optional<Amount> amount(String option, String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(Amount.parse(text, option));
    }

    private static Optional<LocalTime> time(String option, String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalTime.parse(text.trim().length() == 4 ? "0" + text.trim() : text.trim()));
        } catch (DateTimeParseException notATime) {
            throw EarleafException.of(
                    option, "\"" + text + "\"", "a time of day, as 14:30", "Write hours and minutes.");
        }
    }
}
