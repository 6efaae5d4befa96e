// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.concurrent.Callable;
import org.earleaf.app.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.farm.EnteredReading;
import org.earleaf.farm.Farm;
import org.earleaf.field.Reading;
import org.earleaf.field.ScoutingCount;
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
            Reading kept = store.enter(EnteredReading.of(
                    farm,
                    new EnteredReading.Entry(
                            field,
                            zone,
                            common.findOn().orElseGet(() -> wiring.today(farm)),
                            kind,
                            value,
                            top,
                            bottom,
                            position,
                            note,
                            new ScoutingCount(found, positive, plants, leaf))));
            Printed.print(spec, common.isJson() ? json(kept) : text(kept));
        }
        return Faults.DONE;
    }

    private static String json(Reading r) {
        return Json.text(Json.object(
                "id", r.id(),
                "field", r.field(),
                "zone", r.zone(),
                "date", r.date(),
                "kind", r.kind().word(),
                "entered", r.entered(),
                "top_mm", r.top_mm(),
                "bottom_mm", r.bottom_mm(),
                "position", r.position().name().toLowerCase(java.util.Locale.ROOT),
                "note", r.note()));
    }

    private static String text(Reading r) {
        return "Kept: " + r.field() + (r.zone().isEmpty() ? "" : ", " + r.zone()) + ", " + Say.full(r.date()) + ": "
                + r.kind().word() + " " + r.entered() + ".";
    }
}
