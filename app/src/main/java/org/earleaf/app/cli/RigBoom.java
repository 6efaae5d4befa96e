// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Ranges;
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
    private static final double NONE = Double.NaN;
    private static final Pattern GROUP = Pattern.compile("(.+?)\\s+([0-9.]+)\\s*%\\s+([0-9.]+)");

    @Option(names = "--fan", paramLabel = "110", descriptionKey = "cli.rig-boom.option.fan")
    private double fan = NONE;

    @Option(names = "--label-height", paramLabel = "'24 in'", descriptionKey = "cli.rig-boom.option.label-height")
    private String labelHeight = "";

    @Option(names = "--pulses", paramLabel = "10", descriptionKey = "cli.rig-boom.option.pulses")
    private double pulses_hz = NONE;

    @Option(names = "--split", paramLabel = "'top 40% 1.5, ear 60% 4'", descriptionKey = "cli.rig-boom.option.split")
    private String split = "";

    boolean isPulsed() {
        return !Double.isNaN(pulses_hz);
    }

    /** Adds what was asked to the setting's page. */
    void print(FlowSetting s, RigCommand.Told told, boolean metric, PrintWriter out) {
        Words words = Words.in(metric);
        if (!Double.isNaN(fan)) {
            FanHeight.Window window = window(s);
            out.println(words.say(
                    "rig.height",
                    "aim",
                    height(FanHeight.AIM_OVERLAP, fan, s, metric),
                    "careful",
                    height(FanHeight.AIM_OVERLAP, fan - FanHeight.CAREFUL_LESS_DEG, s, metric),
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
            out.println(words.say(
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
    }

    Map<String, @Nullable Object> json(FlowSetting s, RigCommand.Told told, boolean metric) {
        Map<String, @Nullable Object> json = new LinkedHashMap<>();
        String length = metric ? "_cm" : "_in";
        if (!Double.isNaN(fan)) {
            FanHeight.Window window = window(s);
            double aim_m = FanHeight.height_m(FanHeight.AIM_OVERLAP, fan, s.width_m());
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
                    metric ? "split_pressure_kpa" : "split_pressure_psi",
                    FlowPart.PRESSURE.outside(solved.pressure_Pa(), metric));
        }
        return json;
    }

    private FanHeight.Window window(FlowSetting s) {
        if (!(fan >= FanHeight.LEAST_DEG && fan <= FanHeight.MOST_DEG)) {
            throw new EarleafException(Problem.of(
                    "rig-boom.15-to-150-degrees",
                    Said.text("--fan"),
                    Said.of("found.degrees", "fan", Figure.text(fan, 4))));
        }
        double label_m =
                labelHeight.isEmpty() ? Double.POSITIVE_INFINITY : Ranges.BOOM.read(labelHeight, "--label-height");
        return FanHeight.window(fan, s.width_m(), label_m);
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
                s, NozzleSize.parse(told.size(), Said.text("--size")).rated_m3s(), pressure_Pa, pulses_hz);
        if (held.duty() > 1 || held.duty() < PulseWidth.LEAST_DUTY) {
            throw new EarleafException(Problem.of(
                    "rig-boom.25-to-100-of-the",
                    Said.text("--size"),
                    Said.of("found.open-of-the-time", "told", told.size(), "share", share(held.duty())),
                    "more",
                    held.duty() > 1 ? "Take a larger size or more pressure." : "Take a smaller size."));
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
        List<OutletGroup> groups = new ArrayList<>();
        for (String one : split.split(",")) {
            Matcher m = GROUP.matcher(one.strip());
            if (!m.matches()) {
                throw new EarleafException(Problem.of(
                        "rig-boom.name-share-and-outlets", Said.text("--split"), Said.text("\"" + one.strip() + "\"")));
            }
            groups.add(
                    new OutletGroup(m.group(1), Double.parseDouble(m.group(3)), Double.parseDouble(m.group(2)) / 100));
        }
        return groups;
    }

    private static String share(double share) {
        return Figure.text(100 * share, 3) + " %";
    }
}
