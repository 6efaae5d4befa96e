// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/** Made-up fleets for tests, in whole minutes. */
public final class RandomFleet {
    private final SplittableRandom random;
    private final int rigs;
    private final int days;

    private RandomFleet(long seed, int rigs, int days) {
        random = new SplittableRandom(seed);
        this.rigs = rigs;
        this.days = days;
    }

    /** @param rich with windows, cleaning, supply and gaps */
    public static PlanProblem of(long seed, int rigs, int days, int jobs, boolean rich) {
        return new RandomFleet(seed, rigs, days).problem(jobs, rich);
    }

    private PlanProblem problem(int n, boolean rich) {
        List<PlanRig> fleet = new ArrayList<>();
        List<Shift> shifts = new ArrayList<>();
        for (int r = 0; r < rigs; r++) {
            fleet.add(new PlanRig("R" + (r + 1), (2 + random.nextInt(3)) / 60.0, spot()));
            for (int d = 1; d <= days; d++) {
                double length = 60 * (180 + 30 * random.nextInt(12));
                boolean windowed = rich && random.nextInt(3) == 0;
                Map<String, Window> windows = windowed ? Map.of("b", new Window(60 * 60, length - 30 * 60)) : Map.of();
                shifts.add(new Shift(r, d, length, Double.NaN, windows));
            }
        }
        List<Job> jobs = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            jobs.add(job(j));
        }
        Cleanout cleanout = rich
                ? new Cleanout(Map.of("a", Map.of("b", 2400.0, "c", 600.0), "b", Map.of("a", 1800.0)))
                : Cleanout.NONE;
        List<Supply> supply = rich ? List.of(new Supply(1, 60)) : List.of();
        List<Gap> gaps = rich && n > 5 ? List.of(new Gap(0, 1, 1, false), new Gap(2, 3, 2, true)) : List.of();
        return new PlanProblem(
                fleet,
                shifts,
                jobs,
                new Roads(360, .15),
                cleanout,
                new PlanProblem.Terms(supply, gaps, List.of()),
                List.of(),
                Optional.empty());
    }

    private Job job(int j) {
        double hectares = 10 + random.nextInt(60);
        List<Double> work = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        for (int r = 0; r < rigs; r++) {
            boolean able = random.nextInt(8) > 0;
            work.add(able ? 60.0 * Math.round(hectares * (2 + random.nextDouble())) : Double.NaN);
            last.add(1 + random.nextInt(days + 1));
        }
        Map<Integer, Double> loss = new HashMap<>();
        double usd = 0;
        for (int d = 1; d <= days; d++) {
            loss.put(d, usd);
            usd += hectares * random.nextInt(12);
        }
        int release = random.nextInt(4) == 0 ? 2 : 1;
        String productClass = List.of("a", "b", "c").get(random.nextInt(3));
        return new Job(
                "J" + j,
                hectares * 1e4,
                spot(),
                work,
                new Job.Loss(new LossByDay(loss), hectares * (40 + random.nextInt(80))),
                release,
                last,
                productClass,
                hectares * .15);
    }

    private Spot spot() {
        return new Spot(100 * random.nextInt(120), 100 * random.nextInt(120));
    }
}
