// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.earleaf.season.SeasonRun;

/**
 * The season kernel beside the same equations in C, one member at a time and in lanes, and in NumPy: first all must agree
 * on every result of every member, then they work in turns on one core and are compared by processor time.
 */
public final class Season {
    static final int LANES = 128;
    private static final int ROUNDS = 11;
    private static final int WARM_TURNS = 12;
    private static final double TURN_S = 0.4;
    private static final double AGREE = 1e-9;
    /** Below this a result is compared as a difference: relative error of next to nothing says nothing. */
    private static final double SMALL = 1e-3;
    /** How many of each of the 128 members stand side by side in NumPy, whose calls cost less a member then. */
    private static final List<Integer> NUMPY_COPIES = List.of(1, 4, 8, 16);

    private final String c;
    private final List<String> numpy;
    private final Path folder;

    private Season(String c, List<String> numpy, Path folder) {
        this.c = c;
        this.numpy = numpy;
        this.folder = folder;
    }

    /** @param args a folder to write in, the C program, and the command that starts the NumPy program */
    public static void main(String[] args) {
        SeasonCase timed = Cases.timed(LANES);
        String cold = cold(timed);
        List<String> numpy = List.of(args).subList(2, args.length);
        Season bench = new Season(args[1], numpy, Path.of(args[0]));
        int differing = bench.differing(Cases.golden(), "golden")
                + bench.differing(timed, "timed")
                + new Advance(timed).differing();
        System.out.println(cold);
        Map<String, String> json = new LinkedHashMap<>();
        json.put("bench", "\"season\"");
        json.put("differing", Integer.toString(differing));
        bench.times(timed, json);
        json.put("bytes_per_day_step", String.format(Locale.ROOT, "%.3f", bytesPerStep(timed)));
        StringBuilder line = new StringBuilder();
        json.forEach(
                (key, value) -> line.append(",\"").append(key).append("\":").append(value));
        System.out.println("{" + line.substring(1) + "}");
        System.exit(differing == 0 ? 0 : 1);
    }

    /** The first block of a Java just started, before its compiler has done anything. */
    private static String cold(SeasonCase timed) {
        long wall = System.nanoTime();
        long cpu = Speed.cpu_ns();
        timed.together();
        return String.format(
                Locale.ROOT,
                "cold: the first %d seasons in a new Java took %.0f ms, %.0f ms of its thread, %.0f seasons a second",
                LANES,
                (System.nanoTime() - wall) / 1e6,
                (Speed.cpu_ns() - cpu) / 1e6,
                LANES / ((Speed.cpu_ns() - cpu) / 1e9));
    }

    private Peer c(String how, String name) {
        return new Peer(List.of(c, how, file(name)));
    }

    private Peer numpy(int copies, String name) {
        List<String> command = new ArrayList<>(numpy);
        command.addAll(List.of(file(name), Integer.toString(copies)));
        return new Peer(command);
    }

    private String file(String name) {
        return folder.resolve(name + ".case").toString();
    }

    private int differing(SeasonCase season, String name) {
        if (!Files.exists(Path.of(file(name)))) {
            CaseFile.write(season, Path.of(file(name)));
        }
        SeasonRun run = season.together();
        int differing = 0;
        for (String who : List.of("C scalar", "C lanes", "NumPy")) {
            double[][] theirs;
            try (Peer peer = who.equals("NumPy") ? numpy(1, name) : c(who.substring(2), name)) {
                theirs = peer.results(season.members());
            }
            double worst = 0;
            for (int m = 0; m < season.members(); m++) {
                double[] ours = SeasonCase.results(run, m);
                for (int k = 0; k < ours.length; k++) {
                    double miss = Math.abs(theirs[m][k] - ours[k]) / Math.max(SMALL, Math.abs(ours[k]));
                    worst = Math.max(worst, miss);
                    differing += miss <= AGREE ? 0 : 1;
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s season, %d members, against %s: largest relative difference %.1e%n",
                    name,
                    season.members(),
                    who,
                    worst);
        }
        return differing;
    }

    private void times(SeasonCase timed, Map<String, String> json) {
        String core = Integer.toString(Machine.CORES - 1);
        int copies = bestCopies();
        List<Contender> all;
        boolean pinned;
        Machine.Meter meter;
        try (Peer scalar = c("scalar", "timed");
                Peer alone = Ours.start(Ours.Shape.ALONE);
                Peer lanes = c("lanes", "timed");
                Peer together = Ours.start(Ours.Shape.TOGETHER);
                Peer mixed = Ours.start(Ours.Shape.TOGETHER_AFTER_ALONE);
                Peer many = numpy(copies, "timed");
                Peer day = Ours.start(Ours.Shape.ONE_DAY)) {
            all = List.of(
                    new Contender("C, one member at a time", scalar),
                    new Contender("ours, one member at a time", alone),
                    new Contender("C, 128 lanes", lanes),
                    new Contender("ours, 128 lanes", together),
                    new Contender("the same where members run alone too", mixed),
                    new Contender("NumPy, " + copies * LANES + " members", many),
                    new Contender("ours, 128 lanes on by one day", day));
            // The first answer of each comes when it is warm.
            all.forEach(contender -> contender.peer.speed(TURN_S));
            pinned = all.stream().allMatch(contender -> Machine.pin(core, contender.peer.pid()));
            meter = new Machine.Meter();
            for (int r = 0; r < ROUNDS; r++) {
                for (Contender contender : all) {
                    contender.turns[r] = contender.peer.speed(TURN_S);
                }
            }
        }
        System.out.printf(
                "%d rounds in turns, %s; %s%n",
                ROUNDS, pinned ? "all on core " + core : "not pinned (no taskset)", meter.words());
        for (Contender contender : all) {
            System.out.printf(
                    Locale.ROOT,
                    "%-38s %9.0f a second of processor time%n",
                    contender.name,
                    Ratio.median(contender.turns));
        }
        double[] ours = all.get(3).turns;
        ratio("single_vs_c", Ratio.of(all.get(1).turns, all.get(0).turns), json);
        ratio("lanes_vs_c", Ratio.of(ours, all.get(0).turns), json);
        ratio("lanes_vs_c_lanes", Ratio.of(ours, all.get(2).turns), json);
        ratio("mixed_vs_c_lanes", Ratio.of(all.get(4).turns, all.get(2).turns), json);
        ratio("lanes_vs_numpy", Ratio.of(ours, all.get(5).turns), json);
        twoThreads(timed, json);
        Ratio day = Ratio.of(ours, all.get(6).turns);
        System.out.printf("%-38s %s%n", "advance_day_share", day);
        json.put("advance_day_share", String.format(Locale.ROOT, "%.5f", day.median()));
    }

    /** Member-seasons (or member-days) a second of processor time, by round. */
    private static final class Contender {
        private final String name;
        private final Peer peer;
        private final double[] turns = new double[ROUNDS];

        Contender(String name, Peer peer) {
            this.name = name;
            this.peer = peer;
        }
    }

    private static void ratio(String name, Ratio ratio, Map<String, String> json) {
        System.out.printf("%-38s %s%n", name, ratio);
        json.put(name, ratio.json());
    }

    /** What suits NumPy best here. */
    private int bestCopies() {
        double[] speeds = NUMPY_COPIES.stream()
                .mapToDouble(copies -> {
                    try (Peer peer = numpy(copies, "timed")) {
                        peer.speed(TURN_S);
                        return peer.speed(2 * TURN_S);
                    }
                })
                .toArray();
        int best = 0;
        for (int k = 0; k < speeds.length; k++) {
            System.out.printf(
                    Locale.ROOT,
                    "NumPy with %5d members: %6.0f seasons a second of processor time%n",
                    NUMPY_COPIES.get(k) * LANES,
                    speeds[k]);
            best = speeds[k] > speeds[best] ? k : best;
        }
        return NUMPY_COPIES.get(best);
    }

    private static void twoThreads(SeasonCase timed, Map<String, String> json) {
        for (int k = 0; k < WARM_TURNS; k++) {
            Speed.of(timed::together, TURN_S);
        }
        Machine.Meter meter = new Machine.Meter();
        TwoThreads two = TwoThreads.measure(timed, ROUNDS);
        ratio("two_threads_vs_one", two.speedUp(), json);
        System.out.printf(
                Locale.ROOT,
                "    by wall time, so it counts only where the second core is free: the two threads had %.2f processors;%n"
                        + "    for the same work they took %s of the processor time of one, so two free cores%n"
                        + "    would make it %.2f at most%n    %s%n",
                two.given(),
                two.work().toString().trim(),
                2 / two.work().median(),
                meter.words());
    }

    private static double bytesPerStep(SeasonCase timed) {
        SeasonRun run = timed.start();
        int warm = 30;
        for (int day = 0; day < warm; day++) {
            timed.step(run, day);
        }
        long allocated = 0;
        for (int day = warm; day < timed.days(); day++) {
            timed.applyPasses(run, day);
            long before = Speed.allocatedBytes();
            run.step();
            allocated += Speed.allocatedBytes() - before;
        }
        return (double) allocated / (timed.days() - warm);
    }
}
