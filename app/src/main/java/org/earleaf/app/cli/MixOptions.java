// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.Optional;
import java.util.Set;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Ranges;
import org.earleaf.farm.Farm;
import org.earleaf.label.CropStages;
import org.earleaf.load.LoadPlan;
import org.earleaf.mix.MixFacts;
import org.earleaf.mix.TenderTrips;
import org.earleaf.mix.WaterQuality;
import org.earleaf.rig.FieldCapacity;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import picocli.CommandLine.Option;

/** What {@code earleaf load} may be told beside the recipe: crop, water, tender. */
final class MixOptions {
    @Option(names = "--crop", paramLabel = "CROP", descriptionKey = "cli.mix-options.option.crop")
    private String crop = "";

    @Option(names = "--stage", paramLabel = "V8", descriptionKey = "cli.mix-options.option.stage")
    private String stage = "";

    @Option(
            names = "--water",
            paramLabel = "'Ca 120, Mg 40, Na 30, K 5, Fe 0.5'",
            descriptionKey = "cli.mix-options.option.water")
    private String water = "";

    @Option(names = "--tender", paramLabel = "'4000 gal'", descriptionKey = "cli.mix-options.option.tender")
    private String tender = "";

    @Option(names = "--round", paramLabel = "MINUTES", descriptionKey = "cli.mix-options.option.round")
    private String round = "90";

    @Option(names = "--rigs", paramLabel = "N", descriptionKey = "cli.mix-options.option.rigs")
    private String rigs = "1";

    @Option(names = "--speed", paramLabel = "'10 mph'", descriptionKey = "cli.mix-options.option.speed")
    private String speed = "10 mph";

    @Option(names = "--width", paramLabel = "'90 ft'", descriptionKey = "cli.mix-options.option.width")
    private String width = "90 ft";

    @Option(names = "--efficiency", paramLabel = "SHARE", descriptionKey = "cli.mix-options.option.efficiency")
    private String efficiency = "0.75";

    @Option(names = "--fill", paramLabel = "MINUTES", descriptionKey = "cli.mix-options.option.fill")
    private String fill = "12";

    @Option(names = "--travel", paramLabel = "MINUTES", descriptionKey = "cli.mix-options.option.travel")
    private String travel = "8";

    private static final double SECONDS = 60;

    /** What the farm knows of the mix; nothing where no crop was named. */
    MixFacts facts(Wiring wiring, Common common) {
        if (crop.isBlank()) {
            return MixFacts.NONE;
        }
        Farm farm = FarmSource.farm(wiring, common);
        double place = stage.isBlank()
                ? Double.NaN
                : CropStages.find(crop, stage)
                        .orElseThrow(() -> new EarleafException(Problem.of(
                                "mix-options.a-stage-of",
                                Said.text("--stage"),
                                Said.text("\"" + stage + "\""),
                                "crop",
                                crop,
                                "words",
                                Words.here().say("label.example.stage", "stages", CropStages.said(crop)))));
        return new MixFacts(farm.labels(), farm.products(), crop, place, Set.of());
    }

    Optional<WaterQuality> water() {
        return water.isBlank() ? Optional.empty() : Optional.of(WaterQuality.parse(water, Said.text("--water")));
    }

    /** Refuses what no tender and no rig can be, asked about or not. */
    void check() {
        round_s();
        rigs();
        Ranges.SPEED.read(speed, "--speed");
        Ranges.WIDTH.read(width, "--width");
        Ranges.EFFICIENCY.read(efficiency, "share", "--efficiency");
        Ranges.FILL.read(fill, "--fill");
        Ranges.TRAVEL.read(travel, "--travel");
    }

    /** Cycle of the first load, where a tender is told of. */
    Optional<TenderTrips> trips(LoadPlan plan) {
        if (tender.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(TenderTrips.of(
                plan.loads().get(0).volume_m3(),
                plan.rate_m3m2(),
                FieldCapacity.capacity_m2s(
                        Ranges.SPEED.read(speed, "--speed"),
                        Ranges.WIDTH.read(width, "--width"),
                        Ranges.EFFICIENCY.read(efficiency, "share", "--efficiency")),
                Ranges.FILL.read(fill, "--fill") * SECONDS,
                Ranges.TRAVEL.read(travel, "--travel") * SECONDS));
    }

    double tender_m3() {
        return Ranges.TENDER.read(tender, "--tender");
    }

    double round_s() {
        return Ranges.ROUND.read(round, "--round") * SECONDS;
    }

    int rigs() {
        return (int) Ranges.RIGS.read(rigs, "--rigs");
    }
}
