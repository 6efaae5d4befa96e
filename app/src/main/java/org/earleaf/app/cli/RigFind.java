// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Draft;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.RigEntry;
import org.earleaf.entry.SetupEntry;
import org.earleaf.farm.Rig;
import org.earleaf.rig.FlowPart;
import org.earleaf.rig.RigSetup;
import org.earleaf.rig.Setup;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What {@code earleaf rig --find} is told of the machine and of the droplets wanted, and what it answers. */
final class RigFind {
    private static final int MOST = 8;

    @Option(names = "--find", descriptionKey = "cli.rig-find.option.find")
    private boolean find;

    @Option(names = "--rig", paramLabel = "NAME", descriptionKey = "cli.rig-find.option.rig")
    private String rig = "";

    @Option(names = "--boom", paramLabel = "'90 ft'", descriptionKey = "cli.rig-find.option.boom")
    private String boom = "";

    @Option(names = "--pressures", paramLabel = "'15 to 60 psi'", descriptionKey = "cli.rig-find.option.pressures")
    private String pressures = "15 to 60 psi";

    @Option(names = "--speeds", paramLabel = "'4 to 12 mph'", descriptionKey = "cli.rig-find.option.speeds")
    private String speeds = "4 to 12 mph";

    @Option(names = "--tank", paramLabel = "'1000 gal'", descriptionKey = "cli.rig-find.option.tank")
    private String tank = "1000 gal";

    @Option(names = "--placement", paramLabel = "'over the top'", descriptionKey = "cli.rig-find.option.placement")
    private String placement = "";

    @Option(names = "--rows", paramLabel = "'30 in'", descriptionKey = "cli.rig-find.option.rows")
    private String rows = "";

    @Option(names = "--droplets", paramLabel = "'M to VC'", descriptionKey = "cli.rig-find.option.droplets")
    private String droplets = "";

    @Option(
            names = "--nozzle",
            paramLabel = "'NAME, 05: VC 20 psi, C 30 psi, M 50 psi'",
            descriptionKey = "cli.rig-find.option.nozzle")
    private List<String> nozzles = List.of();

    double[] pressures_Pa() {
        return SetupEntry.range(pressures, Ranges.PRESSURE, "--pressures");
    }

    boolean isAsked() {
        return find;
    }

    RigSetup.Answer answer(Wiring wiring, Common common, String rate, String speed, String width, String liquid) {
        return new SetupEntry(rate, speed, liquid, placement, width, rows, droplets, String.join("; ", nozzles))
                .on(machine(wiring, common));
    }

    private Rig machine(Wiring wiring, Common common) {
        if (!rig.isEmpty()) {
            return SetupEntry.rig(FarmSource.farm(wiring, common).rigs(), rig);
        }
        if (boom.isEmpty()) {
            throw new EarleafException(
                    Problem.of("rig-find.rig-with-a-farm-or", Said.text("--find"), Said.of("found.no-rig")));
        }
        Draft draft = Draft.of("width", boom, "tank", tank, "speeds", speeds, "pressures", pressures);
        return RigEntry.machine(draft, tell("cli.rig-find.the-rig")).orThrow();
    }

    static void print(RigSetup.Answer answer, boolean metric, PrintWriter out) {
        Words words = Words.in(metric);
        answer.setups().stream().limit(MOST).forEach(s -> {
            out.println(words.say(s.outletSaid()));
            out.println("  "
                    + tell(
                            "cli.rig-find.at-each",
                            "pressure",
                            FlowPart.PRESSURE.text(s.setting().pressure_Pa(), metric),
                            "speed",
                            FlowPart.SPEED.text(s.setting().speed_ms(), metric),
                            "flow",
                            FlowPart.FLOW.text(s.setting().flow_m3s(), metric)));
            out.println("  "
                    + tell(
                            "cli.rig-find.holds-the-rate-from-to",
                            "slowest",
                            FlowPart.SPEED.text(s.speeds().slowest_ms(), metric),
                            "slowestBinds",
                            words.say(s.speeds().slowestBinds()),
                            "fastest",
                            FlowPart.SPEED.text(s.speeds().fastest_ms(), metric),
                            "fastestBinds",
                            words.say(s.speeds().fastestBinds())));
            s.remarks().forEach(r -> out.println("  " + words.say(r)));
        });
        int more = answer.setups().size() - MOST;
        if (more > 0) {
            out.println(tell("cli.rig-find.more-serve", "more", more));
        }
        if (answer.setups().isEmpty()) {
            out.println(tell("cli.rig-find.no-outlet-serves"));
            answer.reasons().forEach(r -> out.println("- " + words.say(r.said())));
        }
    }

    static Map<String, @Nullable Object> json(RigSetup.Answer answer, boolean metric, List<String> cautions) {
        return Json.object(
                "setups",
                answer.setups().stream().map(s -> setup(s, metric)).toList(),
                "reasons",
                answer.reasons().stream()
                        .map(r -> Words.in(metric).say(r.said()))
                        .toList(),
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
                FlowPart.SPEED.outside(s.speeds().slowest_ms(), metric),
                "slowest_binds",
                words.say(s.speeds().slowestBinds()),
                "fastest_" + speed,
                FlowPart.SPEED.outside(s.speeds().fastest_ms(), metric),
                "fastest_binds",
                words.say(s.speeds().fastestBinds()),
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
