// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.earleaf.bench.season.Ratio;
import org.earleaf.brief.Morning;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/**
 * What the morning brief of a whole farm takes beside the season kernel alone: the same number of member-days, stepped in
 * full lanes, with passes as the brief tries them and nothing around them, shared out over the cores without loss. The kernel is timed by processor time, the
 * brief by the clock and by processor time, in turns.
 */
public final class BriefCost {
    private static final SideBySide POOL = SideBySide.in(ForkJoinPool.commonPool());
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final LocalDate ON = LocalDate.of(2026, 6, 30);
    private static final List<LocalDate> DAYS = List.of(
            ON,
            LocalDate.of(2026, 5, 20),
            LocalDate.of(2026, 6, 3),
            LocalDate.of(2026, 6, 10),
            LocalDate.of(2026, 6, 20));
    private static final int ROUNDS = 7;
    private static final int WARM = 2;
    private static final int LANES = 200;
    private static final double RATE_KGHA = 90;
    private static final int KERNEL_RUNS = 12;
    private static final int CORES = Runtime.getRuntime().availableProcessors();

    private final Farm farm;
    private final List<Zone> zones;
    private final List<ZoneEnsemble> futures;

    private BriefCost(Farm farm) {
        this.farm = farm;
        zones = farm.zones().stream().filter(Zone::isCorn).toList();
        futures = zones.stream().map(z -> ZoneEnsemble.of(farm, z, ON, false)).toList();
    }

    /** @param args folder of the farm */
    public static void main(String[] args) {
        new BriefCost(FarmFolder.read(Path.of(args[0]))).run();
        System.exit(0);
    }

    private void run() {
        RaceCost race = RaceCost.of(farm, DAYS);
        System.out.println(race.table());
        long past = 0;
        long all = 0;
        for (ZoneEnsemble ensemble : futures) {
            past += ensemble.memberDays();
            NitrogenOptions.of(ensemble, POOL);
            all += ensemble.memberDays();
        }
        double[] brief = new double[ROUNDS];
        double[] kernel = new double[ROUNDS];
        double[] worked = new double[ROUNDS];
        for (int r = -WARM; r < ROUNDS; r++) {
            long cpu = SYSTEM.getProcessCpuTime();
            double whole = brief_s();
            double work = (SYSTEM.getProcessCpuTime() - cpu) / 1e9 / CORES;
            double alone = (past * perDay_s(true) + (all - past) * perDay_s(false)) / CORES;
            if (r >= 0) {
                brief[r] = whole;
                kernel[r] = alone;
                worked[r] = work;
            }
        }
        Ratio ratio = Ratio.of(brief, kernel);
        Ratio work = Ratio.of(worked, kernel);
        System.out.printf(
                Locale.ROOT,
                "%d zones, %.1f million member-days, %.1f %% of them up to today, %d threads, %d rounds%n"
                        + "brief %.2f s; the kernel alone for the same days, by %d cores, %.2f s%nbrief_vs_kernel %s%n"
                        + "by processor time of the whole process, as if both cores were free: %s%n",
                zones.size(),
                all / 1e6,
                100.0 * past / all,
                ForkJoinPool.getCommonPoolParallelism() + 1,
                ROUNDS,
                Ratio.median(brief),
                CORES,
                Ratio.median(kernel),
                ratio,
                work);
        System.out.printf(
                Locale.ROOT,
                "{\"bench\":\"brief\",\"zones\":%d,\"member_days\":%d,\"brief_s\":%.3f,\"brief_vs_kernel\":%s,\"work_vs_kernel\":%s,%s}%n",
                zones.size(),
                all,
                Ratio.median(brief),
                ratio.json(),
                work.json(),
                race.json());
    }

    private double brief_s() {
        long start = System.nanoTime();
        List<NitrogenOptions.Answer> answers = Morning.answers(farm, ON, false, POOL);
        Week week = Week.of(farm, ON, answers, new Week.Search(1, () -> false, p -> {}, POOL));
        int passes = Morning.brief(farm, ON, answers, week).passes().size();
        if (passes == 0) {
            throw new IllegalStateException("the brief of " + farm.name() + " proposes nothing");
        }
        return (System.nanoTime() - start) / 1e9;
    }

    /** Seconds of one thread a member and day, of the days up to the brief's or of those after it, over all zones in turn. */
    private double perDay_s(boolean past) {
        long spent = 0;
        long days = 0;
        int[] from =
                IntStream.range(0, LANES).map(k -> k % ZoneEnsemble.MEMBERS).toArray();
        for (int k = 0; k < KERNEL_RUNS; k++) {
            ZoneEnsemble ensemble = futures.get(k % futures.size());
            int[] weatherOf = ZoneEnsemble.weatherOf(IntStream.of(from), ensemble.weather());
            SeasonRun morning = ensemble.members();
            SeasonRun run = past
                    ? SeasonRun.start(
                            ensemble.season().setup(),
                            IntStream.of(from).mapToObj(morning::parameters).toList(),
                            ensemble.weather(),
                            weatherOf)
                    : morning.branch(from, ensemble.weather(), weatherOf);
            if (!past) {
                dress(run);
            }
            long before = ensemble.memberDays();
            long start = THREADS.getCurrentThreadCpuTime();
            if (past) {
                ensemble.advance(run, ensemble.decisionDay());
            } else {
                ensemble.finish(run);
            }
            spent += THREADS.getCurrentThreadCpuTime() - start;
            days += ensemble.memberDays() - before;
        }
        return spent / 1e9 / days;
    }

    /** Every lane with a pass as the brief tries them: a field that got urea has more to step than one that did not. */
    private void dress(SeasonRun run) {
        List<Candidate> tried = Candidate.of(farm, farm.rigs());
        for (int lane = 0; lane < run.members(); lane++) {
            Candidate c = tried.get(lane / (run.members() / 2) * (tried.size() - 1));
            run.apply(lane, new Candidate.Trial(c, RATE_KGHA, c.rigs()).pass());
        }
    }
}
