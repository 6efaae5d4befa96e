// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Units;

/**
 * What is in a tank of finished spray: its volume and how much of each product, water among them. Part of it takes its
 * share of each.
 */
public record Contents(double volume_m3, Map<String, Amount> amounts) {
    private static final double EPS = 1e-9;

    public Contents {
        amounts = Collections.unmodifiableMap(new TreeMap<>(amounts));
    }

    public static Contents of(Load load) {
        Map<String, Amount> amounts = new TreeMap<>();
        load.steps().forEach(step -> amounts.merge(step.product(), step.amount(), Amount::plus));
        return new Contents(load.volume_m3(), amounts);
    }

    /** A part moved to another tank, and what is left. */
    public record Parted(Contents moved, Contents left) {}

    public Parted part(double moved_m3) {
        if (!(moved_m3 > 0) || moved_m3 > volume_m3 * (1 + EPS)) {
            throw EarleafException.of(
                    "part load",
                    Figure.text(moved_m3 / Units.M3_PER_GAL, 4) + " gal",
                    "more than 0 and at most the " + Figure.text(volume_m3 / Units.M3_PER_GAL, 4) + " gal in the tank",
                    "Mend the volume.");
        }
        Contents moved = times(Math.min(1, moved_m3 / volume_m3));
        Map<String, Amount> rest = new TreeMap<>();
        amounts.forEach((product, all) -> rest.put(
                product, all.plus(moved.amounts.getOrDefault(product, all).times(-1))));
        return new Parted(moved, new Contents(volume_m3 - moved.volume_m3, rest));
    }

    /** Two volumes of spray in one tank; only of the same recipe, which the caller has to make sure of. */
    public Contents with(Contents other) {
        Map<String, Amount> sum = new TreeMap<>(amounts);
        other.amounts.forEach((product, amount) -> sum.merge(product, amount, Amount::plus));
        return new Contents(volume_m3 + other.volume_m3, sum);
    }

    private Contents times(double share) {
        Map<String, Amount> part = new TreeMap<>();
        amounts.forEach((product, amount) -> part.put(product, amount.times(share)));
        return new Contents(volume_m3 * share, part);
    }

    /** What a product comes to on ground [m3/m2 or kg/m2] when this spray goes on at a rate. */
    public double onGround(String product, double rate_m3m2) {
        Amount amount = amounts.get(product);
        return amount == null ? 0 : amount.inside() / volume_m3 * rate_m3m2;
    }

    /** Volume still to be mixed for the ground left; negative when there is more than is needed. */
    public double missing_m3(double areaLeft_m2, double rate_m3m2) {
        return areaLeft_m2 * rate_m3m2 - volume_m3;
    }
}
