// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.app.words.Words;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.app.SetupFinder;
import org.earleaf.app.desk.Wiring;
import org.earleaf.entry.Ranges;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.RigSetup;
import org.earleaf.rig.Setup;
import org.earleaf.units.EarleafException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What {@code earleaf rig --find} is told of the machine and of the droplets wanted, and what it answers. */
final class RigFind {
    private static final int MOST = 8;

    @Option(
            names = "--find",
            description = "Finds the outlets, pressures and speeds that serve, the best first, or says why none does.")
    private boolean find;

    @Option(names = "--rig", paramLabel = "NAME", description = "With --find: a rig of the farm.")
    private String rig = "";

    @Option(names = "--boom", paramLabel = "'90 ft'", description = "With --find, without a farm: width of the boom.")
    private String boom = "";

    @Option(
            names = "--pressures",
            paramLabel = "'15 to 60 psi'",
            description = "With --split, or with --find without a farm: lowest and highest pressure at the outlet.")
    private String pressures = "15 to 60 psi";

    @Option(
            names = "--speeds",
            paramLabel = "'4 to 12 mph'",
            description = "With --find, without a farm: slowest and fastest speed.")
    private String speeds = "4 to 12 mph";

    @Option(names = "--tank", paramLabel = "'1000 gal'", description = "With --find, without a farm: the tank.")
    private String tank = "1000 gal";

    @Option(
            names = "--placement",
            paramLabel = "'over the top'",
            description = "With --find: where it goes on (default: over the top, else the rig's first).")
    private String placement = "";

    @Option(names = "--rows", paramLabel = "'30 in'", description = "With --find: rows apart, for outlets by row.")
    private String rows = "";

    @Option(
            names = "--droplets",
            paramLabel = "'M to VC'",
            description = "With --find: droplet classes that serve; needs --nozzle.")
    private String droplets = "";

    @Option(
            names = "--nozzle",
            paramLabel = "'NAME, 05: VC 20 psi, C 30 psi, M 50 psi'",
            description = "With --droplets: what the maker's sheet says of a nozzle; once for each.")
    private List<String> nozzles = List.of();

    double[] pressures_Pa() {
        return SetupFinder.range(pressures, Ranges.PRESSURE, "--pressures");
    }

    boolean isAsked() {
        return find;
    }

    RigSetup.Answer answer(Wiring wiring, Common common, String rate, String speed, String width, String liquid) {
        return new SetupFinder(rate, speed, liquid, placement, width, rows, droplets, String.join("; ", nozzles))
                .on(machine(wiring, common));
    }

    private Rig machine(Wiring wiring, Common common) {
        if (!rig.isEmpty()) {
            return SetupFinder.rig(FarmSource.farm(wiring, common).rigs(), rig);
        }
        if (boom.isEmpty()) {
            throw EarleafException.of(
                    "--find", "no rig", "--rig with a farm, or --boom with its width", "Give one of the two.");
        }
        double[] pressure_Pa = pressures_Pa();
        double[] speed_ms = SetupFinder.range(speeds, Ranges.SPEED, "--speeds");
        double no = Double.NaN;
        return new Rig(
                "the rig",
                "self-propelled",
                no,
                Ranges.WIDTH.read(boom, "--boom"),
                Ranges.TANK.read(tank, "--tank"),
                speed_ms[0],
                speed_ms[1],
                pressure_Pa[0],
                pressure_Pa[1],
                1,
                Set.of(Placement.values()),
                no,
                0,
                0,
                no);
    }

    static void print(RigSetup.Answer answer, boolean metric, PrintWriter out) {
        Words words = Words.in(metric);
        answer.setups().stream().limit(MOST).forEach(s -> {
            out.println(words.say(s.outletSaid()));
            out.println("  " + FlowPart.PRESSURE.text(s.setting().pressure_Pa(), metric) + " at "
                    + FlowPart.SPEED.text(s.setting().speed_ms(), metric) + ", "
                    + FlowPart.FLOW.text(s.setting().flow_m3s(), metric) + " each");
            out.println("  holds the rate from " + FlowPart.SPEED.text(s.slowest_ms(), metric) + " ("
                    + words.say(s.slowestBinds()) + ") to " + FlowPart.SPEED.text(s.fastest_ms(), metric) + " ("
                    + words.say(s.fastestBinds()) + ")");
            s.remarks().forEach(r -> out.println("  " + words.say(r)));
        });
        int more = answer.setups().size() - MOST;
        if (more > 0) {
            out.println(more + " more serve.");
        }
        if (answer.setups().isEmpty()) {
            out.println("No outlet serves.");
            answer.reasons().forEach(r -> out.println("- " + words.say(r.said())));
        }
    }

    static Map<String, @Nullable Object> json(RigSetup.Answer answer, boolean metric, List<String> cautions) {
        return Json.object(
                "setups",
                answer.setups().stream().map(s -> setup(s, metric)).toList(),
                "reasons",
                answer.reasons().stream().map(r -> Words.in(metric).say(r.said())).toList(),
                "cautions",
                cautions);
    }

    private static Map<String, @Nullable Object> setup(Setup s, boolean metric) {
        Words words = Words.in(metric);
        String speed = metric ? "km_h" : "mph";
        String flow = metric ? "l_min" : "gpm";
        return Json.object(
                "outlet",
                words.say(s.outlet().said()),
                "outlets_per_row",
                s.outletsPerRow(),
                "outlets",
                s.outlets(),
                metric ? "pressure_kpa" : "pressure_psi",
                FlowPart.PRESSURE.outside(s.setting().pressure_Pa(), metric),
                "speed_" + speed,
                FlowPart.SPEED.outside(s.setting().speed_ms(), metric),
                "slowest_" + speed,
                FlowPart.SPEED.outside(s.slowest_ms(), metric),
                "slowest_binds",
                words.say(s.slowestBinds()),
                "fastest_" + speed,
                FlowPart.SPEED.outside(s.fastest_ms(), metric),
                "fastest_binds",
                words.say(s.fastestBinds()),
                "flow_" + flow,
                FlowPart.FLOW.outside(s.setting().flow_m3s(), metric),
                "total_" + flow,
                FlowPart.FLOW.outside(s.total_m3s(), metric),
                "pump_" + flow,
                FlowPart.FLOW.outside(s.pump_m3s(), metric),
                "remarks",
                s.remarks().stream().map(words::say).toList());
    }
}
