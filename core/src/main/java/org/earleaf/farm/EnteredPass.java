// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

/** A pass as a person enters it at a door, checked against the farm; every problem is told at once. */
public final class EnteredPass {
    private static final Pattern NUMBER_UNIT = Pattern.compile("\\s*(\\d+\\.?\\d*|\\.\\d+)\\s*(\\S.*?)\\s*");

    private final Farm farm;
    private final List<Problem> problems = new ArrayList<>();

    private EnteredPass(Farm farm) {
        this.farm = farm;
    }

    /**
     * What was entered, all as text; an empty text is "not given".
     *
     * @param id of the planned pass that it stands for; then whatever is not given is as planned
     * @param zone empty: the whole field
     * @param rate with its unit, "40 lb N/ac"
     */
    public record Entry(
            String id,
            String field,
            String zone,
            LocalDate date,
            String product,
            String rate,
            String placement,
            String inhibitor) {}

    /** The pass in the state given; refused with every problem found. */
    public static Pass of(Farm farm, Entry entry, Pass.State state) {
        EnteredPass entered = new EnteredPass(farm);
        return entered.pass(entered.filled(entry), state);
    }

    /** The entry with what is not given taken from the planned pass. */
    private Entry filled(Entry e) {
        if (e.id().isBlank()) {
            return e;
        }
        Pass planned = farm.passes().stream()
                .filter(p -> p.id().equals(e.id().trim()))
                .findFirst()
                .orElseThrow(() -> EarleafException.of(
                        "pass", "\"" + e.id() + "\"", "the id of a pass of this farm", "See: earleaf record list"));
        String rate = planned.rate() + " " + planned.rateUnit();
        return new Entry(
                planned.id(),
                or(e.field(), planned.field()),
                or(e.zone(), planned.zone()),
                e.date(),
                or(e.product(), planned.product()),
                or(e.rate(), rate),
                or(e.placement(), planned.placement().word()),
                or(e.inhibitor(), planned.inhibitor().word()));
    }

    private static String or(String given, String otherwise) {
        return given.isBlank() ? otherwise : given.trim();
    }

    private Pass pass(Entry e, Pass.State state) {
        List<Zone> zones = farm.zonesOf(e.field());
        checkPlace(e, zones);
        Optional<Placement> placement = Placement.findByWord(e.placement());
        if (placement.isEmpty()) {
            say("placement", e.placement(), "one of " + Placement.words(), "Name where the product went.");
        }
        Optional<Inhibitor> inhibitor = Inhibitor.findByWord(or(e.inhibitor(), Inhibitor.NONE.word()));
        if (inhibitor.isEmpty()) {
            say("inhibitor", e.inhibitor(), "one of " + Inhibitor.words(), "Name one of these.");
        }
        Optional<Product> shelf = farm.findProduct(e.product().trim());
        Optional<NitrogenProduct> nitrogen = farm.findNitrogen(e.product());
        if (shelf.isEmpty() && nitrogen.isEmpty()) {
            say("product", e.product(), "one of " + products(), "Name one of these, or add it to products.csv.");
        }
        Rate rate = rate(e.rate(), e.product(), nitrogen);
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
        return new Pass(
                e.id().trim(),
                zones.get(0).field(),
                zone(e, zones),
                e.date(),
                shelf.map(Product::name)
                        .or(() -> nitrogen.map(NitrogenProduct::name))
                        .orElseThrow(),
                rate.amount(),
                rate.unit(),
                rate.nitrogen_kgHa(),
                placement.orElseThrow(),
                inhibitor.orElseThrow(),
                state);
    }

    private void checkPlace(Entry e, List<Zone> zones) {
        if (zones.isEmpty()) {
            String fields = farm.zones().stream().map(Zone::field).distinct().collect(Collectors.joining(", "));
            say("field", e.field(), "one of " + fields, "Name one of these fields.");
        } else if (!e.zone().isBlank()
                && zones.stream()
                        .noneMatch(z -> z.zone().equalsIgnoreCase(e.zone().trim()))) {
            String names =
                    zones.stream().map(Zone::zone).filter(n -> !n.isEmpty()).collect(Collectors.joining(", "));
            say(
                    "zone",
                    e.zone(),
                    names.isEmpty() ? "nothing, the field is one zone" : "one of " + names,
                    "Correct it or leave it out.");
        }
    }

    private static String zone(Entry e, List<Zone> zones) {
        return zones.stream()
                .map(Zone::zone)
                .filter(z -> z.equalsIgnoreCase(e.zone().trim()))
                .findFirst()
                .orElse("");
    }

    private String products() {
        return Stream.of(
                        farm.products().stream().map(Product::name),
                        farm.nitrogen().stream().map(NitrogenProduct::name),
                        NitrogenProduct.builtIn().stream().map(NitrogenProduct::name))
                .flatMap(names -> names)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private record Rate(double amount, String unit, double nitrogen_kgHa) {}

    private Rate rate(String text, String product, Optional<NitrogenProduct> nitrogen) {
        Rate none = new Rate(0, "", 0);
        Matcher m = NUMBER_UNIT.matcher(text);
        Optional<RateUnit> unit = m.matches() ? RateUnit.findByWord(m.group(2)) : Optional.empty();
        if (unit.isEmpty()) {
            say("rate", text, "a number with one of " + RateUnit.words(), "Write both, as in 40 lb N/ac.");
            return none;
        }
        double amount = Double.parseDouble(m.group(1));
        if (amount <= 0) {
            say("rate", text, "a rate above 0", "Write what was put on.");
            return none;
        }
        try {
            return new Rate(
                    amount, unit.get().word(), unit.get().nitrogen_kgHa(amount, product, nitrogen.orElse(null)));
        } catch (EarleafException e) {
            problems.addAll(e.problems());
            return none;
        }
    }

    private void say(String where, String found, String expected, String todo) {
        problems.add(new Problem(where, found.isBlank() ? "nothing" : "\"" + found + "\"", expected, todo));
    }
}
