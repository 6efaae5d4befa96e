// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

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
@Command(name = "read", mixinStandardHelpOptions = true)
public final class ReadCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--field", required = true, paramLabel = "NAME", descriptionKey = "cli.read.option.field")
    private String field = "";

    @Option(names = "--zone", paramLabel = "NAME", descriptionKey = "cli.read.option.zone")
    private String zone = "";

    @Option(names = "--kind", required = true, paramLabel = "KIND", descriptionKey = "cli.read.option.kind")
    private String kind = "";

    @Option(names = "--value", paramLabel = "VALUE", descriptionKey = "cli.read.option.value")
    private String value = "";

    @Option(names = "--top", paramLabel = "DEPTH", descriptionKey = "cli.read.option.top")
    private String top = "";

    @Option(names = "--bottom", paramLabel = "DEPTH", descriptionKey = "cli.read.option.bottom")
    private String bottom = "";

    @Option(names = "--position", paramLabel = "WHERE", descriptionKey = "cli.read.option.position")
    private String position = "";

    @Option(names = "--found", paramLabel = "NAME", descriptionKey = "cli.read.option.found")
    private String found = "";

    @Option(names = "--positive", paramLabel = "COUNT", descriptionKey = "cli.read.option.positive")
    private String positive = "";

    @Option(names = "--plants", paramLabel = "COUNT", descriptionKey = "cli.read.option.plants")
    private String plants = "";

    @Option(names = "--leaf", paramLabel = "LEAF", descriptionKey = "cli.read.option.leaf")
    private String leaf = "";

    @Option(names = "--lady-beetles", paramLabel = "COUNT", descriptionKey = "cli.read.option.lady-beetles")
    private String ladyBeetles = "";

    @Option(names = "--lacewings", paramLabel = "COUNT", descriptionKey = "cli.read.option.lacewings")
    private String lacewings = "";

    @Option(names = "--mummies", paramLabel = "COUNT", descriptionKey = "cli.read.option.mummies")
    private String mummies = "";

    @Option(names = "--above-threshold", descriptionKey = "cli.read.option.above-threshold")
    private boolean aboveThreshold;

    @Option(names = "--sure", descriptionKey = "cli.read.option.sure")
    private boolean sure;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "cli.read.option.note")
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
            Reading kept = store.enter(entered.orThrow(sure));
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
        return tell(
                "cli.read.kept",
                "field",
                r.zone().isEmpty() ? r.field() : r.field() + ", " + r.zone(),
                "day",
                r.date(),
                "kind",
                r.kind(),
                "entered",
                r.entered());
    }
}
