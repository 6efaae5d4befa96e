// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Draft;
import org.earleaf.entry.PastEntry;
import org.earleaf.entry.Place;
import org.earleaf.entry.Plots;
import org.earleaf.farm.Farm;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PastYear;
import org.earleaf.field.Zone;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf past}: lists the years before this season, enters one, or takes one out again. */
@Command(name = "past", mixinStandardHelpOptions = true)
public final class PastCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--field", paramLabel = "NAME", descriptionKey = "cli.past.option.field")
    private String field = "";

    @Option(names = "--zone", paramLabel = "NAME", descriptionKey = "cli.past.option.zone")
    private String zone = "";

    @Option(names = "--year", paramLabel = "YEAR", descriptionKey = "cli.past.option.year")
    private String year = "";

    @Option(names = "--crop", paramLabel = "CROP", descriptionKey = "cli.past.option.crop")
    private String crop = "";

    @Option(names = "--yield", paramLabel = "YIELD", descriptionKey = "cli.past.option.yield")
    private String grain = "";

    @Option(names = "--nitrogen", paramLabel = "RATE", descriptionKey = "cli.past.option.nitrogen")
    private String nitrogen = "";

    @Option(names = "--out", descriptionKey = "cli.past.option.out")
    private boolean out;

    @Option(names = "--sure", descriptionKey = "cli.past.option.sure")
    private boolean sure;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public PastCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        boolean lists = !out && (year + crop + grain + nitrogen).isEmpty();
        Printed.print(spec, lists ? list(FarmSource.farm(wiring, common)) : changed());
        return Faults.DONE;
    }

    private Draft draft() {
        return Draft.of(
                Place.FIELD, field,
                Place.ZONE, zone,
                PastEntry.YEAR, year,
                PastEntry.CROP, crop,
                PastEntry.YIELD, grain,
                PastEntry.NITROGEN, nitrogen);
    }

    private String changed() {
        FarmSource.refuseFolder(common, "past");
        try (FarmStore store = FarmStore.open(common.farm())) {
            Plots plots = Plots.of(store.farm());
            if (out) {
                PastYear gone =
                        store.past().takeOut(PastEntry.named(draft(), plots).orThrow());
                return common.isJson() ? Json.text(json(gone)) : tell("cli.past.taken-out", "year", said(gone));
            }
            PastYear past = PastEntry.of(draft(), plots).orThrow(sure);
            store.past().keep(past);
            return common.isJson() ? Json.text(json(past)) : tell("cli.past.kept", "year", said(past));
        }
    }

    private String list(Farm farm) {
        List<PastYear> past = zones(farm).stream()
                .flatMap(z -> farm.past(z).stream())
                .distinct()
                .toList();
        if (common.isJson()) {
            return Json.text(Json.object("past", past.stream().map(this::json).toList()));
        }
        return past.isEmpty()
                ? tell("cli.past.none")
                : past.stream().map(p -> Words.here().say(said(p))).collect(Collectors.joining("\n"));
    }

    private List<Zone> zones(Farm farm) {
        if (field.isEmpty() && zone.isEmpty()) {
            return farm.zones();
        }
        Place place = Place.of(draft(), Plots.of(farm)).orThrow();
        FieldPart part = new FieldPart(place.field(), place.zone());
        return farm.zones().stream().filter(part::holds).toList();
    }

    private Map<String, @Nullable Object> json(PastYear p) {
        return new Keys(common.isMetric())
                .put("field", p.field())
                .put("zone", p.zone())
                .put("year", p.year())
                .put("crop", p.crop().word())
                .put("yield", JsonUnit.YIELD, p.yield_kgHa())
                .put("nitrogen", JsonUnit.NITROGEN, p.nitrogen_kgHa())
                .map();
    }

    private static Said said(PastYear p) {
        List<Object> told = new ArrayList<>(List.of(p.crop()));
        if (p.hasYield()) {
            told.add(Measure.YIELD.of(p.yield_kgHa()));
        }
        if (p.hasNitrogen()) {
            told.add(Measure.NITROGEN_RATE.of(p.nitrogen_kgHa()));
        }
        return Said.of("cli.past.year", "place", p.part().label(), "year", String.valueOf(p.year()), "told", told);
    }
}
