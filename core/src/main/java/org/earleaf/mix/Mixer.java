// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.earleaf.mix.MixStep.Part;

/**
 * Turns a volume into steps. The carrier goes in two parts, most of it first and the rest last to the mark, so that an
 * error in a product's room never overfills the tank. A nitrogen solution that makes up half of a mix or more is its
 * carrier; products are then wetted in water before they meet it.
 */
public final class Mixer {
    static final String WATER = "water";

    /** Share of the carrier that goes first; labels and guides say 50 to 70 %. */
    private static final double FIRST = 0.6;

    private static final String LAST_HOW = "Fill to the mark, then agitate 5 minutes in full before leaving.";
    private static final String LAST_WHY = "Filling to the mark makes up for the room that products take.";

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
            add(
                    steps,
                    WATER,
                    Part.CARRIER_FIRST,
                    water,
                    "Keep part of it for wetting products.",
                    "Products are wetted in water before they meet the solution.");
        } else if (!neat) {
            add(
                    steps,
                    WATER,
                    Part.CARRIER_FIRST,
                    water.times(FIRST),
                    "Tank clean and screens in; agitation on.",
                    "Products need carrier to disperse in.");
        }
        solution.ifPresent(line -> add(
                steps,
                line.product(),
                Part.CARRIER_FIRST,
                amount(line, volume_m3).times(FIRST),
                "Tank clean and screens in; agitation on.",
                "The solution carries the mix."));
        for (MixLine line : order) {
            if (solution.filter(carrier -> carrier == line).isEmpty()) {
                add(steps, line.product(), Part.PRODUCT, amount(line, volume_m3), how(line, inSolution), why(line));
            }
        }
        solution.ifPresent(line -> add(
                steps,
                line.product(),
                Part.CARRIER_LAST,
                amount(line, volume_m3).times(1 - FIRST),
                LAST_HOW,
                LAST_WHY));
        if (!neat && !inSolution) {
            add(steps, WATER, Part.CARRIER_LAST, water.times(1 - FIRST), LAST_HOW, LAST_WHY);
        }
        return steps;
    }

    private Amount amount(MixLine line, double volume_m3) {
        return line.dose().in(volume_m3, rate_m3m2);
    }

    private String how(MixLine line, boolean inSolution) {
        if (neat && order.size() == 1) {
            return "Tank clean and screens in; pump through the meter and check it against the tank's mark.";
        }
        if (inSolution && line.form().isDry()) {
            return "Slurry first in twice its volume of water, then pour in slowly; wait until it is dispersed.";
        }
        if (inSolution && line.form().rank() == 7) {
            return "Premix in at least twice its volume of water, then pour in slowly.";
        }
        return line.form().how();
    }

    private String why(MixLine line) {
        if (neat && order.size() == 1) {
            return "It goes on alone, without water.";
        }
        String first = labels.stream()
                .filter(b -> b.then().equalsIgnoreCase(line.product())
                        && order.stream().anyMatch(o -> o.product().equalsIgnoreCase(b.first())))
                .map(MixOrder.Before::first)
                .sorted()
                .collect(Collectors.joining(", "));
        return line.form().why() + (first.isEmpty() ? "" : " Its label wants " + first + " in before it.");
    }

    private static void add(List<MixStep> steps, String product, Part part, Amount amount, String how, String why) {
        steps.add(new MixStep(steps.size() + 1, product, part, amount, how, why));
    }
}
