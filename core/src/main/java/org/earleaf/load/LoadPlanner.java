// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.mix.Load;
import org.earleaf.mix.LoadJob;
import org.earleaf.mix.MixLine;
import org.earleaf.mix.Mixer;
import org.earleaf.rig.FlowPart;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Parts a job into loads and says how much of each product goes in each.
 *
 * <pre>
 * total = area x rate + heel + prime,  n = ceil(total / usable)
 * on ground: amount = dose x V / rate;  in the liquid: amount = dose x V
 * carrier = V - liquids - room of what dissolves
 *
 * V      volume of a load           [m3]
 * Range  rate 1 to 150 gal/ac; 200 loads at most
 * Source arithmetic; room of ammonium sulfate 0.068 gal/lb from its specific gravity 1.77
 * Check  LoadPlannerTest
 * </pre>
 *
 * <p>Equal loads are the same to the last digit. Products that fill the whole rate by themselves go on alone: no water.
 */
public final class LoadPlanner {
    private static final double EPS = 1e-9;
    /** Within this share of the volume products are taken to fill it by themselves. */
    private static final double NEAT = 0.005;
    /** A last load below this share of the tank agitates badly (common practice, no source). */
    private static final double SMALL_REST = 0.15;

    private static final int MOST_LOADS = 200;

    private final LoadJob job;
    private final double rate_m3m2;
    private final Mixer mixer;

    private LoadPlanner(LoadJob job) {
        this.job = job;
        this.rate_m3m2 = Double.isNaN(job.rate_m3m2()) ? rateOfAlone() : job.rate_m3m2();
        FlowPart.RATE.require(rate_m3m2);
        this.mixer = new Mixer(job, rate_m3m2, isNeat());
    }

    public static LoadPlan plan(LoadJob job) {
        return new LoadPlanner(job).plan();
    }

    private LoadPlan plan() {
        double extra_m3 = job.heel_m3() + job.prime_m3();
        double total_m3 = job.area_m2() * rate_m3m2 + extra_m3;
        double[] volumes = volumes(total_m3);
        if (volumes[0] <= extra_m3) {
            throw new EarleafException(Problem.of(
                    "load.below-heel",
                    Said.of("where.tank"),
                    Said.of("found.first-load", "volume", Measure.VOLUME.of(volumes[0])),
                    "least",
                    Measure.VOLUME.of(extra_m3)));
        }
        List<Load> loads = new ArrayList<>();
        for (int k = 0; k < volumes.length; k++) {
            double area_m2 = (volumes[k] - (k == 0 ? extra_m3 : 0)) / rate_m3m2;
            loads.add(new Load(k + 1, volumes.length, volumes[k], area_m2, mixer.steps(volumes[k])));
        }
        return new LoadPlan(job, total_m3, rate_m3m2, mixer.isNeat(), loads, remarks(volumes));
    }

    private double[] volumes(double total_m3) {
        double loads = Math.max(1, Math.ceil(total_m3 / job.usable_m3() * (1 - EPS)));
        if (loads > MOST_LOADS) {
            throw new EarleafException(Problem.of(
                    "load.too-many",
                    Said.of("where.loads"),
                    Said.of("found.loads", "loads", loads, "volume", Measure.VOLUME.of(job.usable_m3())),
                    "most",
                    MOST_LOADS));
        }
        double[] volumes = new double[(int) loads];
        for (int k = 0; k < volumes.length; k++) {
            volumes[k] = switch (job.split()) {
                case EQUAL -> total_m3 / volumes.length;
                case FULL -> k + 1 < volumes.length ? job.usable_m3() : total_m3 - k * job.usable_m3();
            };
        }
        return volumes;
    }

    private List<Said> remarks(double[] volumes) {
        List<Said> remarks = new ArrayList<>();
        double last = volumes[volumes.length - 1];
        if (volumes.length > 1 && last < SMALL_REST * job.usable_m3()) {
            remarks.add(Said.of("load.last-small", "volume", Measure.VOLUME.of(last)));
        }
        boolean both = job.lines().stream().anyMatch(line -> line.dose().onGround())
                && job.lines().stream().anyMatch(line -> !line.dose().onGround());
        if (both) {
            remarks.add(Said.of("load.mixed-rates"));
        }
        if (job.heel_m3() + job.prime_m3() > 0) {
            remarks.add(Said.of("load.heel-used", "volume", Measure.VOLUME.of(job.heel_m3() + job.prime_m3())));
        }
        return remarks;
    }

    /** Rate of products that go on alone: their sum on ground. */
    private double rateOfAlone() {
        double sum = 0;
        for (MixLine line : job.lines()) {
            if (!line.dose().onGround()) {
                throw new EarleafException(Problem.of(
                        "load.rate-missing",
                        Said.of("where.rate"),
                        Said.of("found.no-rate-for", "product", line.product())));
            }
            sum += line.dose().isMass() ? 0 : line.dose().inside();
        }
        boolean solution = job.lines().stream().anyMatch(MixLine::isNitrogenSolution);
        if (!solution) {
            throw new EarleafException(
                    Problem.of("load.rate-missing", Said.of("where.rate"), Said.of("found.no-rate")));
        }
        return sum;
    }

    /** Whether liquids fill the volume by themselves; refuses when they overfill it. */
    private boolean isNeat() {
        double taken = 0;
        for (MixLine line : job.lines()) {
            taken += line.room_m3(line.dose().in(rate_m3m2, rate_m3m2));
        }
        if (taken > rate_m3m2 * (1 + NEAT)) {
            throw new EarleafException(Problem.of(
                    "load.products-overfill",
                    Said.of("where.rate"),
                    Said.of("found.rate", "rate", FlowPart.RATE.measured(rate_m3m2)),
                    "taken",
                    FlowPart.RATE.measured(taken)));
        }
        return taken > rate_m3m2 * (1 - NEAT);
    }
}
