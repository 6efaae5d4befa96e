// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.mix.MixStep.Part;

/**
 * Turns a volume into steps. The carrier goes in two parts, most of it first and the rest last to the mark, so that an
 * error in a product's room never overfills the tank. A nitrogen solution that makes up half of a mix or more is its
 * carrier; products are then wetted in water before they meet it.
 */
public final class Mixer {
    static final String WATER = "water";
    /** Rank of the emulsions in the mixing order. */
    private static final int EMULSIONS = 7;

    /** Share of the carrier that goes first; labels and guides say 50 to 70 %. */
    private static final double FIRST = 0.6;

    private final Set<MixOrder.Before> labels;
    private final List<MixLine> order;
    private final double rate_m3m2;
    private final boolean neat;
    private final Optional<MixLine> solution;

    public Mixer(LoadJob job, double rate_m3m2, boolean neat) {
        this.labels = job.order();
        this.order = MixOrder.of(job.lines(), labels);
        this.rate_m3m2 = rate_m3m2;
        this.neat = neat;
        this.solution = order.size() < 2
                ? Optional.empty()
                : order.stream().filter(line -> line.carries(rate_m3m2)).findFirst();
    }

    public boolean isNeat() {
        return neat;
    }

    public List<MixStep> steps(double volume_m3) {
        double water_m3 = neat ? 0 : volume_m3;
        for (MixLine line : order) {
            water_m3 -= neat ? 0 : line.room_m3(amount(line, volume_m3));
        }
        List<MixStep> steps = new ArrayList<>();
        boolean inSolution = solution.isPresent();
        Amount water = Amount.volume(water_m3, "gal");
        if (!neat && inSolution) {
            add(steps, WATER, Part.CARRIER_FIRST, water, MixHow.KEEP_PART, MixWhy.WETTED_IN_WATER);
        } else if (!neat) {
            add(steps, WATER, Part.CARRIER_FIRST, water.times(FIRST), MixHow.CLEAN_TANK, MixWhy.NEEDS_CARRIER);
        }
        solution.ifPresent(line -> add(
                steps,
                line.product(),
                Part.CARRIER_FIRST,
                amount(line, volume_m3).times(FIRST),
                MixHow.CLEAN_TANK,
                MixWhy.SOLUTION_CARRIES));
        for (MixLine line : order) {
            if (solution.filter(carrier -> carrier == line).isEmpty()) {
                add(steps, line.product(), Part.PRODUCT, amount(line, volume_m3), how(line, inSolution), why(line));
                steps.set(steps.size() - 1, steps.get(steps.size() - 1).after(before(line)));
            }
        }
        solution.ifPresent(line -> add(
                steps,
                line.product(),
                Part.CARRIER_LAST,
                amount(line, volume_m3).times(1 - FIRST),
                MixHow.TO_THE_MARK,
                MixWhy.ROOM));
        if (!neat && !inSolution) {
            add(steps, WATER, Part.CARRIER_LAST, water.times(1 - FIRST), MixHow.TO_THE_MARK, MixWhy.ROOM);
        }
        return steps;
    }

    private Amount amount(MixLine line, double volume_m3) {
        return line.dose().in(volume_m3, rate_m3m2);
    }

    private MixHow how(MixLine line, boolean inSolution) {
        if (neat && order.size() == 1) {
            return MixHow.CLEAN_TANK_METER;
        }
        if (inSolution && line.form().isDry()) {
            return MixHow.SLURRY_TWICE;
        }
        return inSolution && line.form().rank() == EMULSIONS
                ? MixHow.PREMIX_TWICE
                : line.form().how();
    }

    private MixWhy why(MixLine line) {
        return neat && order.size() == 1 ? MixWhy.ALONE : line.form().why();
    }

    /** Products of this mix that its label wants in before it. */
    private List<String> before(MixLine line) {
        return labels.stream()
                .filter(b -> b.then().equalsIgnoreCase(line.product())
                        && order.stream().anyMatch(o -> o.product().equalsIgnoreCase(b.first())))
                .map(MixOrder.Before::first)
                .sorted()
                .toList();
    }

    private static void add(List<MixStep> steps, String product, Part part, Amount amount, MixHow how, MixWhy why) {
        steps.add(new MixStep(steps.size() + 1, product, part, amount, how, why, List.of()));
    }
}
