// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

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

    /** The part of it that the load itself tells. */
    public static MixGate of(
            TankLoad load,
            LocalDate today,
            List<LabelFinding> findings,
            boolean rigReady,
            boolean jarTest,
            boolean stock,
            boolean tankKnown) {
        boolean fresh = load.lines().stream().noneMatch(LoadLine::labelled)
                || load.grounds().stream()
                        .allMatch(g -> Math.abs(ChronoUnit.DAYS.between(g.stageSeen(), today)) <= STAGE_DAYS);
        return new MixGate(
                load.isLocked() && fresh,
                LabelCheck.allows(findings),
                rigReady,
                load.lines().stream().allMatch(LoadLine::isIn),
                inOrder(load.lines()),
                jarTest,
                stock,
                tankKnown);
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
        List<Problem> problems = new ArrayList<>();
        say(
                problems,
                load,
                locked,
                "a lock that no longer fits, or a stage older than " + STAGE_DAYS + " days",
                "the recipe locked to field, crop, stage and rig",
                "Look at the stage and reserve the load again.");
        say(
                problems,
                load,
                labels,
                "a label that does not allow it",
                "every label kept with today's sums",
                "See the limits of the load.");
        say(
                problems,
                load,
                rigReady,
                "a tank that last held something else, or a calibration that has run out",
                "a clean tank or the same recipe, and a calibration that holds or a reason why not",
                "Clean it out as the label says and note it; catch the outlets.");
        say(
                problems,
                load,
                keys,
                "a product without two keys",
                "two keys for every product",
                "Confirm what is missing.");
        say(
                problems,
                load,
                order,
                "products confirmed out of order",
                "the order of mixing",
                "Ask the supplier before you go on.");
        say(
                problems,
                load,
                jarTest,
                "no jar test of this mix, or one that failed",
                "a jar test of this mix that did not fail",
                "Make one, wait 15 and 30 minutes, and note it; what failed is never mixed.");
        say(
                problems,
                load,
                stock,
                "less on the shelf than was drawn",
                "lots that hold it",
                "Count the lots and mend the shelf.");
        say(
                problems,
                load,
                tankKnown,
                "a tank of unknown contents",
                "an empty tank, or its known heel",
                "Find out what is in it.");
        return problems;
    }

    void require(String load) {
        List<Problem> problems = problems(load);
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }

    private static void say(
            List<Problem> problems, String load, boolean met, String found, String expected, String todo) {
        if (!met) {
            problems.add(new Problem("load " + load, found, expected, todo));
        }
    }
}
