// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.earleaf.plan.Cleanout;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Job;
import org.earleaf.plan.LossByDay;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.Roads;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Spot;
import org.earleaf.plan.Supply;
import org.earleaf.plan.Tender;
import org.earleaf.units.Units;

/**
 * A made-up farm: 2 to 6 rigs, 1 or 2 tenders, 15 to 80 jobs, days cut short or rained out, last days by clearance, two
 * product classes with cleaning between, a spray some days after nitrogen on a few fields. Everything in whole minutes
 * and cents, so that a solver of whole numbers sees the same problem.
 */
final class Draw {
    private static final int[] BOOM_FT = {60, 90, 90, 100, 120};
    private static final double GAL_AC = 15;
    private static final int FILL_MIN = 15;

    private final SplittableRandom random;
    private final List<PlanRig> rigs = new ArrayList<>();
    private final List<Integer> boom_ft = new ArrayList<>();
    private final List<Integer> tank_gal = new ArrayList<>();
    private final List<Integer> sooner_d = new ArrayList<>();
    private final List<Integer> acres = new ArrayList<>();
    private final int tenders;
    private int days;

    private Draw(long seed) {
        random = new SplittableRandom(seed);
        int fleet = 2 + random.nextInt(5);
        tenders = 1 + random.nextInt(2);
        for (int r = 0; r < fleet; r++) {
            int boom = BOOM_FT[random.nextInt(BOOM_FT.length)];
            boom_ft.add(boom);
            tank_gal.add(boom < 90 ? 800 : 1200);
            sooner_d.add(boom < 90 ? 1 + random.nextInt(3) : 0);
            rigs.add(new PlanRig("R" + (r + 1), (boom * 3 + 20 * random.nextInt(4)) / 100.0 / 60, spot(4)));
        }
    }

    static PlanProblem of(long seed) {
        return new Draw(seed).problem();
    }

    private PlanProblem problem() {
        int n = 15 + random.nextInt(66);
        for (int j = 0; j < n; j++) {
            acres.add(40 + 10 * random.nextInt(13));
        }
        double work = 0;
        for (int a : acres) {
            work += minutes(a, random.nextInt(rigs.size()));
        }
        days = (int) Math.max(3, Math.min(10, Math.ceil(1.6 * work / (rigs.size() * 330.0)) + 1));
        List<Shift> shifts = shifts();
        List<Job> jobs = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            jobs.add(job(j));
            if (j > 0 && random.nextInt(8) == 0) {
                gaps.add(new Gap(j - 1, j, 1 + random.nextInt(2), false));
            }
        }
        Cleanout cleanout = new Cleanout(Map.of("N", Map.of("spray", 45 * 60.0), "spray", Map.of("N", 30 * 60.0)));
        return new PlanProblem(
                rigs,
                shifts,
                jobs,
                new Roads(6 * 60, 4 * 60 / Units.M_PER_MI),
                cleanout,
                new PlanProblem.Terms(supply(shifts), gaps, List.of()),
                List.of(),
                Optional.empty());
    }

    /** Days alike for all rigs but for a driver who ends sooner; one in five rained out, one in four cut short. */
    private List<Shift> shifts() {
        List<Shift> shifts = new ArrayList<>();
        for (int d = 1; d <= days; d++) {
            double kind = random.nextDouble();
            int minutes = kind < .2 ? 0 : kind < .45 ? 180 + 30 * random.nextInt(5) : 420 + 30 * random.nextInt(7);
            for (int r = 0; r < rigs.size() && minutes > 0; r++) {
                shifts.add(new Shift(r, d, 60 * (minutes - 30 * random.nextInt(3))));
            }
        }
        return shifts;
    }

    private Job job(int j) {
        int a = acres.get(j);
        List<Double> work = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        int tall = random.nextInt(3) == 0 ? 2 + random.nextInt(days) : days + 2;
        for (int r = 0; r < rigs.size(); r++) {
            work.add(60.0 * minutes(a, r));
            last.add(tall - sooner_d.get(r));
        }
        int release = random.nextInt(4) == 0 ? 1 + random.nextInt(Math.max(1, days / 2)) : 1;
        Map<Integer, Double> loss = new HashMap<>();
        double quarters = 0;
        for (int d = 1; d <= days; d++) {
            loss.put(d, quarters / 4 * a);
            quarters += d >= release ? random.nextInt(13) : 0;
        }
        String productClass = random.nextInt(3) == 0 ? "spray" : "N";
        double gal = "N".equals(productClass) ? GAL_AC * a : 0;
        double undone_usd = a * (25.0 + 5 * random.nextInt(8));
        return new Job(
                "F" + (j + 1),
                a * Units.M2_PER_AC,
                spot(12),
                work,
                new Job.Loss(new LossByDay(loss), undone_usd),
                release,
                last,
                productClass,
                gal * Units.M3_PER_GAL);
    }

    /** Field work at 8 mph and an efficiency of 0.70, and 15 min a fill. */
    private long minutes(int a, int r) {
        double acH = 8 * boom_ft.get(r) / 8.25 * .7;
        return (long) (Math.ceil(60 * a / acH) + FILL_MIN * Math.ceil(GAL_AC * a / tank_gal.get(r)));
    }

    private List<Supply> supply(List<Shift> shifts) {
        Tender tender = new Tender("T", 6000 * Units.M3_PER_GAL, 70 * 60, 20 * 60);
        Map<Integer, Double> longest = new HashMap<>();
        shifts.forEach(s -> longest.merge(s.day(), s.length_s(), Math::max));
        List<Supply> all = new ArrayList<>();
        longest.forEach((d, s) -> all.add(new Supply(d, tenders * tender.most_m3(s))));
        return all;
    }

    /** On a grid of quarter miles. */
    private Spot spot(int miles) {
        return new Spot(
                random.nextInt(4 * miles + 1) / 4.0 * Units.M_PER_MI,
                random.nextInt(4 * miles + 1) / 4.0 * Units.M_PER_MI);
    }

    int tenders() {
        return tenders;
    }
}
