// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.entry.Draft;
import org.earleaf.entry.Entered;
import org.earleaf.entry.Plots;
import org.earleaf.entry.ReadingEntry;
import org.earleaf.farm.Farm;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf read}: enters a reading. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description = {
            "Enters a reading: a soil test, stage, height, stand, rain in your own gauge ...",
            "Example: earleaf read --field 'Home Eighty' --kind nitrate --value '12 ppm' --top '0 in' --bottom '12 in'",
            "Example: earleaf read --field 'Home Eighty' --kind lesions --found 'gray leaf spot' --positive 58 --plants 100"
                    + " --leaf=-3"
        })
public final class ReadCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--field", required = true, paramLabel = "NAME", description = "The field.")
    private String field = "";

    @Option(names = "--zone", paramLabel = "NAME", description = "Its zone (default: the whole field).")
    private String zone = "";

    @Option(
            names = "--kind",
            required = true,
            paramLabel = "KIND",
            description = "nitrate, ammonium, stage, height, stand, lesions, insects, rain, moisture or cover.")
    private String kind = "";

    @Option(
            names = "--value",
            paramLabel = "VALUE",
            description = "With its unit: '12 ppm', '40 in', V9, '0.6 in' ... Not needed where plants are counted.")
    private String value = "";

    @Option(names = "--top", paramLabel = "DEPTH", description = "Upper depth of a soil test (default: 0 in).")
    private String top = "";

    @Option(names = "--bottom", paramLabel = "DEPTH", description = "Lower depth of a soil test (default: 12 in).")
    private String bottom = "";

    @Option(
            names = "--position",
            paramLabel = "WHERE",
            description = "Where cores were taken: random, row or middle (default: random).")
    private String position = "";

    @Option(
            names = "--found",
            paramLabel = "NAME",
            description = "Of lesions the disease, of insects which: 'gray leaf spot', aphids.")
    private String found = "";

    @Option(names = "--positive", paramLabel = "COUNT", description = "Plants that show it.")
    private String positive = "";

    @Option(names = "--plants", paramLabel = "COUNT", description = "Plants looked at.")
    private String plants = "";

    @Option(
            names = "--leaf",
            paramLabel = "LEAF",
            description = "Highest leaf with lesions, from the ear leaf (0): --leaf=-3 is the third below it.")
    private String leaf = "";

    @Option(names = "--lady-beetles", paramLabel = "COUNT", description = "With aphids: lady beetles on a plant.")
    private String ladyBeetles = "";

    @Option(names = "--lacewings", paramLabel = "COUNT", description = "With aphids: lacewing larvae on a plant.")
    private String lacewings = "";

    @Option(names = "--mummies", paramLabel = "COUNT", description = "With aphids: mummies on a plant.")
    private String mummies = "";

    @Option(names = "--above-threshold", description = "Of another insect: it was found above its threshold.")
    private boolean aboveThreshold;

    @Option(names = "--note", paramLabel = "TEXT", description = "Anything to add.")
    private String note = "";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public ReadCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        FarmSource.refuseFolder(common, "read");
        try (FarmStore store = FarmStore.open(common.farm())) {
            Farm farm = store.farm();
            Draft draft = draft().with(
                            "date", common.findOn().map(LocalDate::toString).orElse(""));
            Entered<Reading> entered = ReadingEntry.of(draft, Plots.of(farm), Optional.of(wiring.today(farm)));
            Reading kept = store.enter(entered.orThrow());
            Printed.print(spec, common.isJson() ? json(kept) : text(kept));
        }
        return Faults.DONE;
    }

    private Draft draft() {
        Draft count = Draft.of(
                "found", found,
                "positive", positive,
                "plants", plants,
                "leaf", leaf,
                "lady_beetles", ladyBeetles,
                "lacewings", lacewings,
                "mummies", mummies,
                "above_threshold", aboveThreshold ? "yes" : "");
        return Draft.of(
                        "field", field,
                        "zone", zone,
                        "kind", kind,
                        "value", value,
                        "top", top,
                        "bottom", bottom,
                        "position", position,
                        "note", note)
                .or(count);
    }

    private static String json(Reading r) {
        Scouted seen = r.scouted();
        return Json.text(Json.object(
                "id", r.id(),
                "field", r.field(),
                "zone", r.zone(),
                "date", r.date(),
                "kind", r.kind().word(),
                "entered", r.entered(),
                "top_mm", r.top_mm(),
                "bottom_mm", r.bottom_mm(),
                "position", r.position().name().toLowerCase(Locale.ROOT),
                "found", seen.disease().map(Disease::word).orElse(seen.insect()),
                "positive", seen.counted().map(Incidence::shows).orElse(null),
                "plants", seen.counted().map(Incidence::plants).orElse(null),
                "leaf", seen.leaf().isPresent() ? (Integer) seen.leaf().getAsInt() : null,
                "note", r.note()));
    }

    private static String text(Reading r) {
        return "Kept: " + r.field() + (r.zone().isEmpty() ? "" : ", " + r.zone()) + ", " + Say.full(r.date()) + ": "
                + r.kind().word() + " " + r.entered() + ".";
    }
}
