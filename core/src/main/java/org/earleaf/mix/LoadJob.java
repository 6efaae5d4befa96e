// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What is to be loaded.
 *
 * @param rate_m3m2 finished liquid on ground; NaN: the sum of liquids that go on alone
 * @param usable_m3 of the tank
 * @param heel_m3 that stays in the tank, once
 * @param prime_m3 that fills the lines, once
 * @param labels order that labels ask for beside what {@code facts} tell
 * @param facts what the farm knows of the mix
 */
public record LoadJob(
        List<MixLine> lines,
        double area_m2,
        double rate_m3m2,
        double usable_m3,
        double heel_m3,
        double prime_m3,
        Split split,
        Set<MixOrder.Before> labels,
        MixFacts facts) {
    private static final double M2_PER_HA = 10_000;

    /** How the whole is parted into loads. */
    public enum Split {
        EQUAL,
        FULL
    }

    public LoadJob {
        lines = List.copyOf(lines);
        labels = Set.copyOf(labels);
        List<Problem> problems = new ArrayList<>();
        if (lines.isEmpty()) {
            problems.add(Problem.of("load.no-product", Said.of("where.recipe"), Said.of("found.no-product")));
        }
        positive(problems, Said.of("where.area"), area_m2, Measure.AREA.of(area_m2 / M2_PER_HA));
        positive(problems, Said.of("where.tank"), usable_m3, Measure.VOLUME.of(usable_m3));
        notNegative(problems, Said.of("where.heel"), heel_m3);
        notNegative(problems, Said.of("where.prime"), prime_m3);
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
    }

    /** A job of which nothing but the recipe is known. */
    public LoadJob(
            List<MixLine> lines,
            double area_m2,
            double rate_m3m2,
            double usable_m3,
            double heel_m3,
            double prime_m3,
            Split split,
            Set<MixOrder.Before> labels) {
        this(lines, area_m2, rate_m3m2, usable_m3, heel_m3, prime_m3, split, labels, MixFacts.NONE);
    }

    /** What labels say on order, all of it. */
    public Set<MixOrder.Before> order() {
        Set<MixOrder.Before> all = new HashSet<>(labels);
        all.addAll(facts.order(lines));
        return all;
    }

    /** A job without heel, prime or label order. */
    public static LoadJob of(List<MixLine> lines, double area_m2, double rate_m3m2, double usable_m3, Split split) {
        return new LoadJob(lines, area_m2, rate_m3m2, usable_m3, 0, 0, split, Set.of());
    }

    private static void positive(List<Problem> problems, Said place, double inside, Measured found) {
        if (!(inside > 0) || Double.isInfinite(inside)) {
            problems.add(Problem.of("load.not-above-zero", place, Said.of("found.quantity", "quantity", found)));
        }
    }

    private static void notNegative(List<Problem> problems, Said place, double volume_m3) {
        if (!(volume_m3 >= 0) || Double.isInfinite(volume_m3)) {
            Said found = Said.of("found.quantity", "quantity", Measure.VOLUME.of(volume_m3));
            problems.add(Problem.of("load.below-zero", place, found));
        }
    }
}
