// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.SetupEntry;
import org.earleaf.rig.FanHeight;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.FlowSetting;
import org.earleaf.rig.NozzleSize;
import org.earleaf.rig.OutletGroup;
import org.earleaf.rig.PulseWidth;
import org.earleaf.rig.SplitSolver;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What {@code earleaf rig} is told of the boom beyond one outlet: its fans, pulses, groups of outlets; and answers. */
final class RigBoom {
    /** Under what stands behind a heading. */
    private static final String IN = "          ";

    @Option(names = "--fan", paramLabel = "110", descriptionKey = "cli.rig-boom.option.fan")
    private String fan = "";

    @Option(names = "--label-height", paramLabel = "'24 in'", descriptionKey = "cli.rig-boom.option.label-height")
    private String labelHeight = "";

    @Option(names = "--pulses", paramLabel = "10", descriptionKey = "cli.rig-boom.option.pulses")
    private String pulses = "";

    @Option(names = "--split", paramLabel = "'top 40% 1.5, ear 60% 4'", descriptionKey = "cli.rig-boom.option.split")
    private String split = "";

    boolean isPulsed() {
        return !pulses.isBlank();
    }

    /** Adds what was asked to the setting's page. */
    void print(FlowSetting s, RigCommand.Told told, boolean metric, PrintWriter out) {
        Words words = Words.in(metric);
        if (!fan.isBlank()) {
            FanHeight.Window window = window(s);
            out.println(words.say(
                    "rig.height",
                    "aim",
                    height(FanHeight.AIM_OVERLAP, fan_deg(), s, metric),
                    "careful",
                    height(FanHeight.AIM_OVERLAP, fan_deg() - FanHeight.CAREFUL_LESS_DEG, s, metric),
                    "low",
                    FlowPart.WIDTH.text(window.low_m(), metric),
                    "high",
                    FlowPart.WIDTH.text(window.high_m(), metric)));
            if (!window.holdsSway()) {
                out.println(words.say("rig.height.sway"));
            }
        }
        if (isPulsed()) {
            PulseWidth.Held held = held(s, told);
            out.println(words.say(
                    "rig.pulses",
                    "duty",
                    share(held.duty()),
                    "slow",
                    FlowPart.SPEED.text(held.slowest_ms(), metric),
                    "fast",
                    FlowPart.SPEED.text(held.fastest_ms(), metric),
                    "shut",
                    FlowPart.WIDTH.text(held.shut_m(), metric)));
            held.remark().ifPresent(remark -> out.println(words.say(remark)));
        }
        if (!split.isEmpty()) {
            printSplit(s, told, metric, out);
        }
    }

    private void printSplit(FlowSetting s, RigCommand.Told told, boolean metric, PrintWriter out) {
        Words words = Words.in(metric);
        List<OutletGroup> groups = groups();
        SplitSolver.Split solved = solved(groups, s, told);
        out.println(words.say("rig.split", "pressure", FlowPart.PRESSURE.text(solved.pressure_Pa(), metric)));
        for (int i = 0; i < groups.size(); i++) {
            OutletGroup g = groups.get(i);
            out.println(IN
                    + words.say(
                            "rig.split.group",
                            "name",
                            g.name(),
                            "size",
                            solved.sizes().get(i).number(),
                            "share",
                            share(solved.shares()[i]),
                            "wanted",
                            share(g.share())));
        }
        solved.warnings(groups).forEach(w -> out.println(IN + words.say("rig.split.off", "what", w)));
    }

    Map<String, @Nullable Object> json(FlowSetting s, RigCommand.Told told, boolean metric) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        String length = metric ? "_cm" : "_in";
        if (!fan.isBlank()) {
            FanHeight.Window window = window(s);
            double aim_m = FanHeight.height_m(FanHeight.AIM_OVERLAP, fan_deg(), s.width_m());
            json.put("height" + length, FlowPart.WIDTH.outside(aim_m, metric));
            json.put("height_least" + length, FlowPart.WIDTH.outside(window.low_m(), metric));
            json.put("height_most" + length, FlowPart.WIDTH.outside(window.high_m(), metric));
        }
        if (isPulsed()) {
            PulseWidth.Held held = held(s, told);
            json.put("duty", held.duty());
            json.put("slowest" + (metric ? "_km_h" : "_mph"), FlowPart.SPEED.outside(held.slowest_ms(), metric));
            json.put("fastest" + (metric ? "_km_h" : "_mph"), FlowPart.SPEED.outside(held.fastest_ms(), metric));
            json.put("shut" + length, FlowPart.WIDTH.outside(held.shut_m(), metric));
        }
        if (!split.isEmpty()) {
            List<OutletGroup> groups = groups();
            SplitSolver.Split solved = solved(groups, s, told);
            List<Object> parts = new ArrayList<>();
            for (int i = 0; i < groups.size(); i++) {
                parts.add(Json.object(
                        "group", groups.get(i).name(),
                        "size", solved.sizes().get(i).number(),
                        "share", solved.shares()[i]));
            }
            json.put("split", parts);
            json.put(
                    "split_off",
                    solved.warnings(groups).stream().map(Words.in(metric)::say).toList());
            json.put(
                    metric ? "split_pressure_kpa" : "split_pressure_psi",
                    FlowPart.PRESSURE.outside(solved.pressure_Pa(), metric));
        }
        return json;
    }

    private FanHeight.Window window(FlowSetting s) {
        double label_m =
                labelHeight.isEmpty() ? Double.POSITIVE_INFINITY : Ranges.BOOM.read(labelHeight, "--label-height");
        return FanHeight.window(fan_deg(), s.width_m(), label_m);
    }

    private double fan_deg() {
        return Ranges.FAN.read(fan, "--fan");
    }

    private static String height(double overlap, double angle_deg, FlowSetting s, boolean metric) {
        return FlowPart.WIDTH.text(FanHeight.height_m(overlap, angle_deg, s.width_m()), metric);
    }

    private PulseWidth.Held held(FlowSetting s, RigCommand.Told told) {
        if (told.size().isEmpty() || told.pressure().isEmpty()) {
            throw new EarleafException(Problem.of(
                    "rig-boom.size-and-pressure", Said.text("--pulses"), Said.of("found.no-size-or-no-pressure")));
        }
        double pressure_Pa = Ranges.OUTLET_PRESSURE.read(told.pressure(), "--pressure");
        FlowPart.PRESSURE.require(pressure_Pa);
        PulseWidth.Held held = PulseWidth.held(
                s,
                NozzleSize.parse(told.size(), Said.text("--size")).rated_m3s(),
                pressure_Pa,
                Ranges.PULSES.read(pulses, "--pulses"));
        if (held.duty() > 1 || held.duty() < PulseWidth.LEAST_DUTY) {
            throw new EarleafException(Problem.of(
                    held.duty() > 1 ? "rig-boom.open-too-long" : "rig-boom.open-too-short",
                    Said.text("--size"),
                    Said.of("found.open-of-the-time", "told", told.size(), "share", share(held.duty()))));
        }
        return held;
    }

    private SplitSolver.Split solved(List<OutletGroup> groups, FlowSetting s, RigCommand.Told told) {
        return SplitSolver.solve(
                groups,
                NozzleSize.listAll(),
                s.flow_m3s(),
                s.densityFactor(),
                told.pressures_Pa()[0],
                told.pressures_Pa()[1]);
    }

    private List<OutletGroup> groups() {
        return SetupEntry.groups(split, "--split");
    }

    private static String share(double share) {
        return Figure.text(100 * share, 3) + " %";
    }
}
