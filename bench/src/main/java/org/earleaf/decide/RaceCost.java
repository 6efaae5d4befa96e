// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.decide.NitrogenOptions.Answer;
import org.earleaf.decide.NitrogenOptions.Search;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;

/**
 * The race of choices beside the search that runs all of them: processor-seconds a zone, how often both propose the same
 * pass, and what the race's proposal is worth less. A pass is priced by whichever of the two looked for more after it.
 */
final class RaceCost {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int WEEK_D = 7;

    private final List<Double> lost = new ArrayList<>();
    private final List<Double> pickLost = new ArrayList<>();
    private int same;
    private int samePicks;
    private double all_s;
    private double raced_s;

    /** @param days the first warms up the machine: its answers count, its time does not */
    static RaceCost of(Farm farm, List<LocalDate> days) {
        RaceCost cost = new RaceCost();
        List<Zone> zones = farm.zones().stream().filter(Zone::isCorn).toList();
        int timed = Math.max(1, (days.size() - 1) * zones.size());
        for (LocalDate day : days) {
            double[] s = {0, 0};
            for (Zone zone : zones) {
                long start = THREADS.getCurrentThreadCpuTime();
                ZoneEnsemble futures = ZoneEnsemble.of(farm, zone, day, false);
                double before = since_s(start);
                start = THREADS.getCurrentThreadCpuTime();
                Answer all = NitrogenOptions.of(futures, SideBySide.IN_TURN, Search.ALL);
                s[0] += before + since_s(start);
                start = THREADS.getCurrentThreadCpuTime();
                Answer raced = NitrogenOptions.of(futures, SideBySide.IN_TURN, Search.RACED);
                s[1] += before + since_s(start);
                cost.compare(all, raced, day);
            }
            if (!day.equals(days.get(0))) {
                cost.all_s += s[0] / timed;
                cost.raced_s += s[1] / timed;
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s  all %.2f s, raced %.2f s a zone%n",
                    day,
                    s[0] / zones.size(),
                    s[1] / zones.size());
        }
        return cost;
    }

    private static double since_s(long start) {
        return (THREADS.getCurrentThreadCpuTime() - start) / 1e9;
    }

    private void compare(Answer all, Answer raced, LocalDate day) {
        same += isSame(all.proposed(), raced.proposed()) ? 1 : 0;
        lost.add(Math.max(0, worth(all, all.proposed()) - worth(all, raced.proposed())));
        for (Option pick : all.picks()) {
            if (pick.date().isBefore(day.plusDays(WEEK_D))) {
                Optional<Option> other = raced.picks().stream()
                        .filter(o -> o.date().equals(pick.date()) && o.rig().equals(pick.rig()))
                        .findFirst();
                samePicks += isSame(Optional.of(pick), other) ? 1 : 0;
                pickLost.add(Math.max(0, worth(all, Optional.of(pick)) - worth(all, other)));
            }
        }
    }

    private static boolean isSame(Optional<Option> a, Optional<Option> b) {
        return a.map(Option::date).equals(b.map(Option::date))
                && a.map(Option::application).equals(b.map(Option::application));
    }

    private static double worth(Answer all, Optional<Option> of) {
        return of.map(o -> all.options().stream()
                                .filter(x -> isSame(Optional.of(x), of))
                                .mapToDouble(x -> x.worth().mean_usdHa())
                                .reduce(o.worth().mean_usdHa(), Math::max)
                        * Units.HA_PER_AC)
                .orElse(0.0);
    }

    private static double mean(List<Double> of) {
        return of.stream().mapToDouble(x -> x).average().orElse(0);
    }

    private static double worst(List<Double> of) {
        return of.stream().mapToDouble(x -> x).max().orElse(0);
    }

    String table() {
        return String.format(
                Locale.ROOT,
                "a zone: all %.2f s, raced %.2f s%n"
                        + "proposals of %d zones and days: %.1f %% the same, lost $%.3f/ac, at worst $%.2f%n"
                        + "the best of each rig on each of a week's days, %d: %.1f %% the same, lost $%.3f/ac, at worst $%.2f",
                all_s,
                raced_s,
                lost.size(),
                100.0 * same / lost.size(),
                mean(lost),
                worst(lost),
                pickLost.size(),
                100.0 * samePicks / Math.max(1, pickLost.size()),
                mean(pickLost),
                worst(pickLost));
    }

    /** Members of the bench's last line. */
    String json() {
        return String.format(
                Locale.ROOT,
                "\"zone_s_all\":%.3f,\"zone_s_raced\":%.3f,\"same_proposal\":%.3f,\"lost_usd_ac\":%.4f,\"lost_worst_usd_ac\":%.3f,"
                        + "\"same_pick\":%.3f,\"pick_lost_usd_ac\":%.4f,\"pick_lost_worst_usd_ac\":%.3f",
                all_s,
                raced_s,
                (double) same / lost.size(),
                mean(lost),
                worst(lost),
                (double) samePicks / Math.max(1, pickLost.size()),
                mean(pickLost),
                worst(pickLost));
    }
}
