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
import java.util.function.BiFunction;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

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
        refuse(problems(FlowPart::findProblem));
        fillGround();
        fillOutlet();
        fillGround();
        refuse(tooLittle().stream().toList());
        refuse(conflict().stream().toList());
        refuse(problems(this::findSolvedProblem));
        List<Said> remarks = new ArrayList<>();
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
        Said place = Said.of("where.setting");
        Said given = known.isEmpty()
                ? Said.of("found.nothing")
                : Said.of("found.only", "parts", List.copyOf(known.keySet()));
        if (!missing.contains(FLOW)) {
            return Optional.of(Problem.of("flow.too-little", place, given, "more", more, "choices", missing));
        }
        if (!known.containsKey(SIZE) && !known.containsKey(PRESSURE)) {
            return Optional.of(Problem.of("flow.too-little-outlet", place, given, "more", more, "choices", missing));
        }
        FlowPart other = known.containsKey(SIZE) ? PRESSURE : SIZE;
        return Optional.of(
                Problem.of("flow.too-little-half", place, given, "more", more, "choices", missing, "other", other));
    }

    /** What is wrong with a value that follows from the others. */
    private Optional<Problem> findSolvedProblem(FlowPart part, double value) {
        if (part.accepts(value) || part.findProblem(value).isEmpty() || !Double.isFinite(part.high())) {
            return part.findProblem(value);
        }
        Said place = Said.of("where.flow-solved", "part", part);
        Measured low = part.measured(part.low());
        Measured high = part.measured(part.high());
        if (question.has(SIZE) && known.containsKey(PRESSURE) && !question.has(PRESSURE)) {
            String nearest =
                    NozzleSize.nearest(value(FLOW) * question.densityFactor()).number();
            return Optional.of(Problem.of(
                    "flow.other-size", place, part.found(value), "low", low, "high", high, "nearest", nearest));
        }
        return Optional.of(Problem.of("flow.solved-out-of-range", place, part.found(value), "low", low, "high", high));
    }

    /** The values given that cannot all be true. */
    private Optional<Problem> conflict() {
        double needed_m3s = FlowMath.flow_m3s(value(RATE), value(SPEED), value(WIDTH));
        if (!agrees(value(FLOW), needed_m3s)) {
            return Optional.of(Problem.of(
                    "flow.ground-disagrees",
                    parts(GROUND),
                    Said.of("found.ground-disagrees", "needed", FLOW.measured(needed_m3s), "flow", told(FLOW)),
                    "within",
                    Measure.SHARE.of(AGREES),
                    "rate",
                    RATE.measured(ground(RATE)),
                    "speed",
                    SPEED.measured(ground(SPEED)),
                    "width",
                    WIDTH.measured(ground(WIDTH))));
        }
        if (!known.containsKey(SIZE) || !known.containsKey(PRESSURE)) {
            return Optional.empty();
        }
        double passed_m3s = FlowMath.flowAt_m3s(value(SIZE), value(PRESSURE), question.densityFactor());
        return agrees(value(FLOW), passed_m3s) ? Optional.empty() : Optional.of(outletDisagrees(passed_m3s));
    }

    private Problem outletDisagrees(double passed_m3s) {
        double factor = question.densityFactor();
        boolean flow = question.has(FLOW);
        Measured passed = FLOW.measured(passed_m3s);
        return Problem.of(
                "flow.outlet-disagrees",
                parts(flow ? List.of(FLOW, SIZE, PRESSURE) : List.of(RATE, SPEED, WIDTH, SIZE, PRESSURE)),
                flow
                        ? Said.of("found.outlet-passes", "passed", passed, "flow", told(FLOW))
                        : Said.of("found.outlet-passes-ground", "passed", passed, "needed", told(FLOW)),
                "within",
                Measure.SHARE.of(AGREES),
                "pressure",
                PRESSURE.measured(FlowMath.pressure_Pa(value(FLOW), value(SIZE), factor)),
                "size",
                SIZE.measured(FlowMath.rated_m3s(value(FLOW), value(PRESSURE), factor)));
    }

    private Measured told(FlowPart part) {
        return part.measured(value(part));
    }

    private static Said parts(List<FlowPart> parts) {
        return Said.of("where.flow-parts", "parts", parts);
    }

    private static boolean agrees(double a, double b) {
        return Math.abs(a - b) <= AGREES * Math.max(a, b);
    }

    private List<Problem> problems(BiFunction<FlowPart, Double, Optional<Problem>> find) {
        List<Problem> problems = new ArrayList<>();
        known.forEach((part, value) -> find.apply(part, value).ifPresent(problems::add));
        return problems;
    }

    private static void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }
}
