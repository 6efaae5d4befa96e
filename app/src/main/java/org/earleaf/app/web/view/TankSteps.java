// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.earleaf.app.words.Amounts;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Product;
import org.earleaf.label.LabelBook;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.LoadSteps;
import org.earleaf.load.TankLoad;

/** The mixing of a kept load, line by line. */
public final class TankSteps {
    private TankSteps() {}

    /** How it goes in, why in this order, and what to mind. */
    public record Says(String how, String why, String caution) {}

    /**
     * One step.
     *
     * @param order of the sheet, water with it
     * @param line number under which its keys are kept; 0: water, or the rest of what was keyed before
     * @param keys what was confirmed, in words
     * @param codes by which its containers are known
     * @param state "done", "now", "to do"
     */
    public record Step(
            int order,
            int line,
            String product,
            String amount,
            String unit,
            Says says,
            List<String> keys,
            String codes,
            String state) {
        public boolean isNow() {
            return state.equals("now");
        }

        public boolean isDone() {
            return state.equals("done");
        }
    }

    /** Number of the line whose key is next. */
    static int next(TankLoad load) {
        return load.state() == LoadState.MIXING
                ? load.lines().stream()
                        .filter(l -> !l.isIn())
                        .map(LoadLine::order)
                        .findFirst()
                        .orElse(0)
                : 0;
    }

    static List<Step> of(TankLoad load, Farm farm, LabelBook labels, boolean metric) {
        Words words = Words.in(metric);
        List<Step> steps = new ArrayList<>();
        int next = next(load);
        boolean allIn = load.lines().stream().allMatch(LoadLine::isIn);
        for (LoadSteps.Step s : LoadSteps.of(load, farm, labels)) {
            Optional<LoadLine> line = s.line();
            int order = line.map(LoadLine::order).orElse(0);
            // A carrier's whole is keyed at once, before its first part goes in.
            String amount = Amounts.text(s.mix().amount(), metric);
            String whole = line.filter(
                            l -> s.mix().amount().inside() < l.planned().inside() * .999)
                    .map(l -> tell("page.tank-steps.of-in-all", "planned", Amounts.text(l.planned(), metric)))
                    .orElse("");
            steps.add(new Step(
                    s.mix().order(),
                    order,
                    s.mix().product(),
                    amount + whole,
                    line.map(l -> l.planned().unit()).orElse(""),
                    new Says(
                            words.say(s.mix().how()),
                            words.say(s.mix().reason()),
                            line.flatMap(l -> farm.findProduct(l.product()))
                                    .map(Product::caution)
                                    .orElse("")),
                    line.map(l -> keys(l, metric)).orElse(List.of()),
                    line.map(l -> tell("page.tank-steps.codes", "codes", List.copyOf(new TreeSet<>(l.codes()))))
                            .orElse(""),
                    state(load, order, next, allIn, steps.isEmpty())));
        }
        return steps;
    }

    private static String state(TankLoad load, int order, int next, boolean allIn, boolean first) {
        boolean in = load.state() == LoadState.MIXED || load.state() == LoadState.APPLIED;
        if (in || order > 0 && (allIn || next > order && load.state() == LoadState.MIXING)) {
            return "done";
        }
        if (load.state() != LoadState.MIXING) {
            return tell("page.tank-steps.to-do");
        }
        return order > 0 && order == next || order == 0 && (first && next == 1 || !first && allIn)
                ? "now"
                : tell("page.tank-steps.to-do");
    }

    private static List<String> keys(LoadLine line, boolean metric) {
        List<String> said = new ArrayList<>();
        for (LoadLine.Key k : line.keys()) {
            said.add(k.code().strip() + ", "
                    + ShelfView.amount(
                            k.measured(),
                            line.planned().isMass(),
                            line.planned().unit(),
                            metric) + ", "
                    + k.person().strip()
                    + (k.reason().isBlank() ? "" : ": " + k.reason().strip()));
        }
        if (line.isSingle()) {
            said.add(Words.in(metric).say("load.single-key"));
        }
        return said;
    }
}
