// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What must be so before a load may be marked mixed; all eight or nothing.
 *
 * @param locked recipe bound to field, crop, rig, and a stage seen at most three days ago
 * @param labels every label allows it with today's sums
 * @param rigReady tank clean, or holding the rest of the same recipe; calibration holds, or it is said why not
 * @param keys two keys for every product
 * @param order products confirmed in the order of mixing
 * @param jarTest none failed, and one passed where a rule asks for it
 * @param stock the lots hold what was drawn
 * @param tankKnown the tank held before filling what it should
 */
public record MixGate(
        boolean locked,
        boolean labels,
        boolean rigReady,
        boolean keys,
        boolean order,
        boolean jarTest,
        boolean stock,
        boolean tankKnown) {
    /** A stage older than this is no longer known; common practice, no source. */
    private static final int STAGE_DAYS = 3;

    /** What the load itself does not tell: its rig, its jar test, the lots, what its tank held. */
    public record Yard(boolean rigReady, boolean jarTest, boolean stock, boolean tankKnown) {}

    public static MixGate of(TankLoad load, LocalDate today, List<LabelFinding> findings, Yard yard) {
        boolean fresh = load.lines().stream().noneMatch(LoadLine::labelled)
                || load.grounds().stream()
                        .allMatch(g -> Math.abs(ChronoUnit.DAYS.between(g.stageSeen(), today)) <= STAGE_DAYS);
        return new MixGate(
                load.isLocked() && fresh,
                LabelCheck.allows(findings),
                yard.rigReady(),
                load.lines().stream().allMatch(LoadLine::isIn),
                inOrder(load.lines()),
                yard.jarTest(),
                yard.stock(),
                yard.tankKnown());
    }

    private static boolean inOrder(List<LoadLine> lines) {
        for (int k = 1; k < lines.size(); k++) {
            LoadLine before = lines.get(k - 1);
            LoadLine after = lines.get(k);
            boolean known = before.isIn() && !after.keys().isEmpty();
            if (known && after.keys().get(0).at().isBefore(before.keys().get(1).at())) {
                return false;
            }
        }
        return true;
    }

    public boolean isOpen() {
        return problems("").isEmpty();
    }

    /** Every condition that is not met, with what to do. */
    public List<Problem> problems(String load) {
        Said place = load.isEmpty() ? Said.of("where.this-load") : Said.of("where.load", "id", load);
        List<Problem> problems = new ArrayList<>();
        add(problems, locked, Problem.of("gate.locked", place, Said.of("found.lock-lapsed", "days", STAGE_DAYS)));
        add(problems, labels, Problem.of("gate.labels", place, Said.of("found.label-forbids")));
        add(problems, rigReady, Problem.of("gate.rig", place, Said.of("found.rig-not-ready")));
        add(problems, keys, Problem.of("gate.keys", place, Said.of("found.key-missing")));
        add(problems, order, Problem.of("gate.order", place, Said.of("found.out-of-order")));
        add(problems, jarTest, Problem.of("gate.jar", place, Said.of("found.no-jar-test")));
        add(problems, stock, Problem.of("gate.stock", place, Said.of("found.less-stock")));
        add(problems, tankKnown, Problem.of("gate.tank", place, Said.of("found.unknown-tank")));
        return problems;
    }

    void require(String load) {
        List<Problem> problems = problems(load);
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }

    private static void add(List<Problem> problems, boolean met, Problem problem) {
        if (!met) {
            problems.add(problem);
        }
    }
}
