// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Ranges;
import org.earleaf.label.Cautions;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.FlowQuestion;
import org.earleaf.rig.FlowSetting;
import org.earleaf.rig.FlowSolver;
import org.earleaf.rig.Liquid;
import org.earleaf.rig.NozzleSize;
import org.earleaf.rig.RigSetup;
import org.earleaf.units.Figure;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf rig}: solves rate, speed, width, flow, pressure and size for what is left out. */
@Command(name = "rig", mixinStandardHelpOptions = true)
public final class RigCommand implements Runnable {
    private static final int DIGITS = 4;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final Common common = new Common();

    @Mixin
    private final RigFind find = new RigFind();

    @Mixin
    private final RigBoom boom = new RigBoom();

    private final Wiring wiring;

    public RigCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Option(names = "--rate", paramLabel = "'15 gal/ac'", descriptionKey = "cli.rig.option.rate")
    private String rate = "";

    @Option(names = "--speed", paramLabel = "'10 mph'", descriptionKey = "cli.rig.option.speed")
    private String speed = "";

    @Option(names = "--width", paramLabel = "'20 in'", descriptionKey = "cli.rig.option.width")
    private String width = "";

    @Option(names = "--flow", paramLabel = "'0.5 gal/min'", descriptionKey = "cli.rig.option.flow")
    private String flow = "";

    @Option(names = "--pressure", paramLabel = "'40 psi'", descriptionKey = "cli.rig.option.pressure")
    private String pressure = "";

    @Option(names = "--size", paramLabel = "05", descriptionKey = "cli.rig.option.size")
    private String size = "";

    @Option(names = "--liquid", paramLabel = "water|uan28|uan32|DENSITY", descriptionKey = "cli.rig.option.liquid")
    private String liquid = "water";

    /** What the boom's own questions need of it. */
    record Told(String size, String pressure, double[] pressures_Pa) {}

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (find.isAsked()) {
            find(out);
            return;
        }
        Liquid what = Liquid.parse(liquid, Said.text("--liquid"));
        FlowSetting setting = FlowSolver.solve(new FlowQuestion(
                read(rate, Ranges.CARRIER, "--rate"),
                read(speed, Ranges.SPEED, "--speed"),
                read(width, Ranges.OUTLET_WIDTH, "--width"),
                read(flow, Ranges.OUTLET_FLOW, "--flow"),
                boom.isPulsed() ? Double.NaN : read(pressure, Ranges.OUTLET_PRESSURE, "--pressure"),
                size.isEmpty() || boom.isPulsed()
                        ? Double.NaN
                        : NozzleSize.parse(size, Said.text("--size")).rated_m3s(),
                what.densityFactor()));
        Told told = new Told(size, pressure, find.pressures_Pa());
        if (common.isJson()) {
            Map<String, @Nullable Object> json = json(setting, what);
            json.putAll(boom.json(setting, told, common.isMetric()));
            out.println(Json.text(json));
        } else {
            print(setting, what, out);
            boom.print(setting, told, common.isMetric(), out);
            out.println();
            out.println(Words.here().say(Cautions.LABEL));
        }
    }

    private void find(PrintWriter out) {
        RigSetup.Answer answer = find.answer(wiring, common, rate, speed, width, liquid);
        if (common.isJson()) {
            out.println(Json.text(
                    RigFind.json(answer, common.isMetric(), List.of(Words.here().say(Cautions.LABEL)))));
        } else {
            RigFind.print(answer, common.isMetric(), out);
            out.println();
            out.println(Words.here().say(Cautions.LABEL));
        }
    }

    private static double read(String text, Allowed allowed, String option) {
        return text.isEmpty() ? Double.NaN : allowed.read(text, option);
    }

    private Map<String, @Nullable Object> json(FlowSetting s, Liquid what) {
        boolean metric = common.isMetric();
        List<Map<String, @Nullable Object>> outlets = s.sizesThatServe().stream()
                .map(serves -> Json.object(
                        "size",
                        serves.size().number(),
                        metric ? "pressure_kpa" : "pressure_psi",
                        FlowPart.PRESSURE.outside(serves.pressure_Pa(), metric)))
                .toList();
        return Json.object(
                metric ? "rate_l_ha" : "rate_gal_ac",
                FlowPart.RATE.outside(s.rate_m3m2(), metric),
                metric ? "speed_km_h" : "speed_mph",
                FlowPart.SPEED.outside(s.speed_ms(), metric),
                metric ? "width_cm" : "width_in",
                FlowPart.WIDTH.outside(s.width_m(), metric),
                metric ? "flow_l_min" : "flow_gpm",
                FlowPart.FLOW.outside(s.flow_m3s(), metric),
                metric ? "pressure_kpa" : "pressure_psi",
                FlowPart.PRESSURE.outside(s.pressure_Pa(), metric),
                "density_factor",
                s.densityFactor(),
                metric ? "water_flow_l_min" : "water_flow_gpm",
                FlowPart.FLOW.outside(s.waterFlow_m3s(), metric),
                metric ? "rated_flow_l_min" : "rated_flow_gpm",
                FlowPart.SIZE.outside(s.rated_m3s(), metric),
                "liquid",
                what.name(),
                "sizes_that_serve",
                outlets,
                "remarks",
                s.remarks().stream().map(Words.in(metric)::say).toList(),
                "cautions",
                List.of(Words.here().say(Cautions.LABEL)));
    }

    private void print(FlowSetting s, Liquid what, PrintWriter out) {
        line(out, FlowPart.RATE, s.rate_m3m2());
        line(out, FlowPart.SPEED, s.speed_ms());
        line(out, FlowPart.WIDTH, s.width_m());
        line(out, FlowPart.FLOW, s.flow_m3s());
        if (boom.isPulsed()) {
            out.println(tell("cli.rig.pressure-size-see-pulses", "pressure", pressure, "size", size));
        } else if (s.hasPressure()) {
            line(out, FlowPart.PRESSURE, s.pressure_Pa());
            line(out, FlowPart.SIZE, s.rated_m3s());
        } else {
            out.println(tell("cli.rig.pressure-give-size-or-pressure"));
        }
        out.println(tell(
                "cli.rig.liquid-density-factor-water",
                "name",
                what.name(),
                "densityFactor",
                Figure.text(s.densityFactor(), DIGITS),
                "waterFlow",
                FlowPart.FLOW.text(s.waterFlow_m3s(), common.isMetric())));
        String serving = s.sizesThatServe().stream()
                .map(x -> tell(
                        "cli.rig.at",
                        "number",
                        x.size().number(),
                        "pressure",
                        FlowPart.PRESSURE.text(x.pressure_Pa(), common.isMetric())))
                .reduce((a, b) -> a + ", " + b)
                .orElse("none");
        out.println(tell("cli.rig.sizes", "serving", serving));
        s.remarks().forEach(r -> out.println(tell("cli.rig.note", "r", new Say(common.isMetric()).say(r))));
    }

    private void line(PrintWriter out, FlowPart part, double inside) {
        String value = part.text(inside, common.isMetric());
        Words words = Words.in(common.isMetric());
        out.printf(
                "%-9s %s%n",
                words.say(part), part == FlowPart.SIZE ? words.say("rig.at-40-psi", "flow", value) : value);
    }
}
