// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.rig.FlowPart.FLOW;
import static org.earleaf.rig.FlowPart.PRESSURE;
import static org.earleaf.rig.FlowPart.RATE;
import static org.earleaf.rig.FlowPart.SIZE;
import static org.earleaf.rig.FlowPart.SPEED;
import static org.earleaf.rig.FlowPart.WIDTH;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Flag;
import org.earleaf.units.Problem;

/**
 * Solves a setting for whatever is left out. Two relations tie its parts: flow = rate x speed x width, and flow with
 * size gives pressure. Three of rate, speed, width and flow are enough; size and pressure together stand for the flow;
 * with one of size and pressure given, the other follows. Too little, too much that disagrees, and values out of range
 * are refused with a message that says what to change.
 */
public final class FlowSolver {
    /** Figures that people type are rounded; up to this share apart they are taken as agreeing. */
    private static final double AGREES = 0.01;

    private static final List<FlowPart> GROUND = List.of(RATE, SPEED, WIDTH, FLOW);

    private final Map<FlowPart, Double> known = new EnumMap<>(FlowPart.class);
    private final FlowQuestion question;

    private FlowSolver(FlowQuestion question) {
        this.question = question;
        for (FlowPart part : FlowPart.values()) {
            if (question.has(part)) {
                known.put(part, question.of(part));
            }
        }
    }

    /** The whole setting; throws an {@link EarleafException} when it cannot be told. */
    public static FlowSetting solve(FlowQuestion question) {
        return new FlowSolver(question).solve();
    }

    private FlowSetting solve() {
        refuse(problems("", "Mend the value."));
        fillGround();
        fillOutlet();
        fillGround();
        refuse(tooLittle().stream().toList());
        refuse(conflict().stream().toList());
        refuse(problems(", solved from the others", solvedOutOfRange()));
        List<Flag> remarks = new ArrayList<>();
        known.forEach((part, value) -> part.findRemark(value).ifPresent(remarks::add));
        return new FlowSetting(
                value(RATE),
                value(SPEED),
                value(WIDTH),
                value(FLOW),
                value(PRESSURE),
                value(SIZE),
                question.densityFactor(),
                remarks);
    }

    private double value(FlowPart part) {
        return known.getOrDefault(part, Double.NaN);
    }

    /** Fills the one that is missing of rate, speed, width and flow. */
    private void fillGround() {
        List<FlowPart> missing =
                GROUND.stream().filter(part -> !known.containsKey(part)).toList();
        if (missing.size() == 1) {
            FlowPart part = missing.get(0);
            known.put(part, ground(part));
        }
    }

    private double ground(FlowPart part) {
        return switch (part) {
            case RATE -> FlowMath.rate_m3m2(value(FLOW), value(SPEED), value(WIDTH));
            case SPEED -> FlowMath.speed_ms(value(FLOW), value(RATE), value(WIDTH));
            case WIDTH -> FlowMath.width_m(value(FLOW), value(RATE), value(SPEED));
            default -> FlowMath.flow_m3s(value(RATE), value(SPEED), value(WIDTH));
        };
    }

    /** Fills the one that is missing of flow, size and pressure. */
    private void fillOutlet() {
        double factor = question.densityFactor();
        boolean flow = known.containsKey(FLOW);
        boolean size = known.containsKey(SIZE);
        boolean pressure = known.containsKey(PRESSURE);
        if (flow && size && !pressure) {
            known.put(PRESSURE, FlowMath.pressure_Pa(value(FLOW), value(SIZE), factor));
        } else if (flow && pressure && !size) {
            known.put(SIZE, FlowMath.rated_m3s(value(FLOW), value(PRESSURE), factor));
        } else if (size && pressure && !flow) {
            known.put(FLOW, FlowMath.flowAt_m3s(value(SIZE), value(PRESSURE), factor));
        }
    }

    private Optional<Problem> tooLittle() {
        List<FlowPart> missing =
                GROUND.stream().filter(part -> !known.containsKey(part)).toList();
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        int more = missing.size() - 1;
        String choices = words(missing.stream(), " or ");
        if (missing.contains(FLOW)) {
            boolean half = known.containsKey(SIZE) || known.containsKey(PRESSURE);
            String other = known.containsKey(SIZE) ? "pressure" : "size";
            choices += half ? " (" + other + " also gives the flow)" : " (size with pressure also gives the flow)";
        }
        String given = words(known.keySet().stream(), ", ");
        return Optional.of(new Problem(
                "setting",
                given.isEmpty() ? "nothing" : "only " + given,
                "three of rate, speed, width and flow",
                "Add " + (more == 1 ? "one" : "" + more) + " of: " + choices + "."));
    }

    private String solvedOutOfRange() {
        if (question.has(SIZE) && known.containsKey(PRESSURE) && !question.has(PRESSURE)) {
            double at40psi_m3s = value(FLOW) * question.densityFactor();
            return "Take another size (" + NozzleSize.nearest(at40psi_m3s).number()
                    + " is nearest to 40 psi), or change rate, speed or width.";
        }
        return "Change one of the others.";
    }

    /** The values given that cannot all be true. */
    private Optional<Problem> conflict() {
        double needed_m3s = FlowMath.flow_m3s(value(RATE), value(SPEED), value(WIDTH));
        if (!agrees(value(FLOW), needed_m3s)) {
            return Optional.of(contradiction(
                    "rate, speed, width, flow",
                    "rate, speed and width need " + FLOW.text(needed_m3s) + ", but flow is " + FLOW.text(value(FLOW)),
                    Stream.of(RATE, SPEED, WIDTH)
                            .map(part -> part.word() + " " + part.text(ground(part)))
                            .collect(Collectors.joining(", or "))));
        }
        if (!known.containsKey(SIZE) || !known.containsKey(PRESSURE)) {
            return Optional.empty();
        }
        double factor = question.densityFactor();
        double passed_m3s = FlowMath.flowAt_m3s(value(SIZE), value(PRESSURE), factor);
        if (agrees(value(FLOW), passed_m3s)) {
            return Optional.empty();
        }
        String from = question.has(FLOW) ? "flow" : "rate, speed, width";
        double pressure_Pa = FlowMath.pressure_Pa(value(FLOW), value(SIZE), factor);
        double rated_m3s = FlowMath.rated_m3s(value(FLOW), value(PRESSURE), factor);
        return Optional.of(contradiction(
                from + ", size, pressure",
                "the outlet passes " + FLOW.text(passed_m3s) + " at this pressure, but " + from
                        + (question.has(FLOW) ? " is " : " need ") + FLOW.text(value(FLOW)),
                "pressure " + PRESSURE.text(pressure_Pa) + ", or size " + SIZE.text(rated_m3s)));
    }

    private static Problem contradiction(String parts, String found, String wayOut) {
        return new Problem(
                parts,
                "values that disagree: " + found,
                "values that agree within " + Figure.text(100 * AGREES, 2) + " %",
                "Leave one of them out, or take " + wayOut + ".");
    }

    private static boolean agrees(double a, double b) {
        return Math.abs(a - b) <= AGREES * Math.max(a, b);
    }

    private List<Problem> problems(String how, String todo) {
        List<Problem> problems = new ArrayList<>();
        known.forEach((part, value) -> part.findProblem(value, how, todo).ifPresent(problems::add));
        return problems;
    }

    private static void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }

    private static String words(Stream<FlowPart> parts, String between) {
        return parts.map(FlowPart::word).collect(Collectors.joining(between));
    }
}
