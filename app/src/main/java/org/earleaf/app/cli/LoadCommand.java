// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.RecipeFile;
import org.earleaf.load.LoadPlan;
import org.earleaf.load.LoadPlanner;
import org.earleaf.load.LoadSheet;
import org.earleaf.mix.Amount;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixStep;
import org.earleaf.rig.FlowPart;
import org.earleaf.units.Dimension;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** {@code earleaf load}: how many loads, what goes in each, in which order. */
@Command(name = "load", mixinStandardHelpOptions = true)
public final class LoadCommand implements Runnable {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--recipe", required = true, paramLabel = "FILE.csv", descriptionKey = "cli.load.option.recipe")
    private Path recipe = Path.of("");

    @Option(names = "--area", required = true, paramLabel = "'72 ac'", descriptionKey = "cli.load.option.area")
    private String area = "";

    @Option(names = "--rate", paramLabel = "'15 gal/ac'", descriptionKey = "cli.load.option.rate")
    private String rate = "";

    @Option(names = "--tank", required = true, paramLabel = "'1200 gal'", descriptionKey = "cli.load.option.tank")
    private String tank = "";

    @Option(
            names = "--split",
            paramLabel = "equal|full",
            converter = SplitConverter.class,
            descriptionKey = "cli.load.option.split")
    private LoadJob.Split split = LoadJob.Split.EQUAL;

    @Option(names = "--heel", paramLabel = "'8 gal'", descriptionKey = "cli.load.option.heel")
    private String heel = "0 gal";

    @Option(names = "--prime", paramLabel = "'6 gal'", descriptionKey = "cli.load.option.prime")
    private String prime = "0 gal";

    @Option(names = "--field", paramLabel = "NAME", descriptionKey = "cli.load.option.field")
    private String field = "";

    @Mixin
    private final MixOptions mix = new MixOptions();

    private final Wiring wiring;

    public LoadCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public void run() {
        mix.check();
        LoadPlan plan = LoadPlanner.plan(new LoadJob(
                RecipeFile.read(recipe),
                Ranges.LOAD_AREA.read(area, "--area"),
                rate.isEmpty() ? Double.NaN : Ranges.CARRIER.read(rate, "--rate"),
                Ranges.TANK.read(tank, "--tank"),
                Ranges.HEEL.read(heel, "--heel"),
                Ranges.PRIME.read(prime, "--prime"),
                split,
                Set.of(),
                mix.facts(wiring, common)));
        MixText told = new MixText(plan, mix, common.isMetric());
        List<LoadSheet> sheets = LoadSheet.of(plan, field, Optional.empty(), List.of(), common.isMetric());
        Words words = Words.in(common.isMetric());
        List<String> cautions =
                sheets.get(0).cautions().stream().map(c -> words.say(c.said())).toList();
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (common.isJson()) {
            out.println(Json.text(json(plan, cautions, told)));
            return;
        }
        LoadText text = new LoadText(out, common.isMetric());
        sheets.forEach(text::print);
        plan.remarks().forEach(remark -> out.println(tell("cli.load.note", "remark", words.say(remark))));
        told.print(out);
        out.println(tell("cli.load.cautions"));
        cautions.forEach(caution -> out.println("- " + caution));
    }

    private Map<String, @Nullable Object> json(LoadPlan plan, List<String> cautions, MixText told) {
        boolean metric = common.isMetric();
        Map<String, @Nullable Object> json = Json.object(
                "loads",
                plan.loads().stream().map(this::json).toList(),
                metric ? "total_l" : "total_gal",
                volume(plan.total_m3()),
                metric ? "rate_l_ha" : "rate_gal_ac",
                FlowPart.RATE.outside(plan.rate_m3m2(), metric),
                "remarks",
                plan.remarks().stream().map(Words.in(metric)::say).toList(),
                "cautions",
                cautions);
        json.putAll(told.json());
        return json;
    }

    private Map<String, @Nullable Object> json(Load load) {
        boolean metric = common.isMetric();
        return Json.object(
                metric ? "volume_l" : "volume_gal",
                volume(load.volume_m3()),
                metric ? "area_ha" : "area_ac",
                Dimension.AREA.outside(load.area_m2(), metric ? "ha" : "ac"),
                "items",
                load.steps().stream().map(this::json).toList());
    }

    private Map<String, @Nullable Object> json(MixStep step) {
        Amount amount = step.amount();
        String unit = Amounts.unit(amount, common.isMetric());
        return Json.object(
                "product", step.product(),
                "amount", amount.in(unit),
                "unit", unit,
                "order", step.order(),
                "part", step.part().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                "how", Words.in(common.isMetric()).say(step.how()),
                "why", Words.in(common.isMetric()).say(step.reason()));
    }

    private double volume(double volume_m3) {
        return Dimension.VOLUME.outside(volume_m3, common.isMetric() ? "l" : "gal");
    }

    /** Reads how to part the whole. */
    static final class SplitConverter implements ITypeConverter<LoadJob.Split> {
        @Override
        public LoadJob.Split convert(String text) {
            return switch (text.trim().toLowerCase(Locale.ROOT)) {
                case "equal" -> LoadJob.Split.EQUAL;
                case "full" -> LoadJob.Split.FULL;
                default -> throw new TypeConversionException(tell("cli.load.found-expected-equal-or", "text", text));
            };
        }
    }
}
