// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import com.sun.management.ThreadMXBean;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.earleaf.season.SeasonRun;

/**
 * The season kernel beside the same equations written in C, one member at a time and in lanes, in turns and by
 * processor time; first all three must agree on every result of every member.
 */
public final class Season {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final int LANES = 128;
    private static final int ROUNDS = 11;
    private static final double TURN_S = 0.4;
    private static final double AGREE = 1e-9;
    /** Below this a result is compared as a difference: relative error of next to nothing says nothing. */
    private static final double SMALL = 1e-3;

    private final Path program;
    private final Path folder;

    private Season(Path program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** @param args the C program, a folder to write in */
    public static void main(String[] args) throws IOException {
        Season bench = new Season(Path.of(args[0]), Path.of(args[1]));
        SeasonCase golden = Cases.golden();
        SeasonCase timed = Cases.timed(LANES);
        int differing = bench.differing(golden, "golden") + bench.differing(timed, "timed");
        String times = bench.times(timed);
        System.out.printf("{\"bench\":\"season\",\"differing\":%d,%s}%n", differing, times);
        System.exit(differing == 0 ? 0 : 1);
    }

    /** The C program on a case, asked line by line. */
    private final class Peer implements AutoCloseable {
        private final Process process;
        private final BufferedReader answers;

        Peer(String how, SeasonCase c, String name) throws IOException {
            Path file = folder.resolve(name + ".case");
            if (!Files.exists(file)) {
                CaseFile.write(c, file);
            }
            process = new ProcessBuilder(program.toString(), how, file.toString()).start();
            answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
        }

        void ask(String question) throws IOException {
            process.getOutputStream().write((question + "\n").getBytes(StandardCharsets.US_ASCII));
            process.getOutputStream().flush();
        }

        String answer() throws IOException {
            String line = answers.readLine();
            if (line == null) {
                throw new IOException("the C program stopped without an answer");
            }
            return line;
        }

        double speed() {
            try {
                ask("turn " + TURN_S);
                return Double.parseDouble(answer());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void close() {
            process.destroy();
        }
    }

    private int differing(SeasonCase c, String name) throws IOException {
        SeasonRun run = c.together();
        int differing = 0;
        for (String how : new String[] {"scalar", "lanes"}) {
            double worst = 0;
            try (Peer peer = new Peer(how, c, name)) {
                peer.ask("check");
                for (int m = 0; m < c.members(); m++) {
                    String[] theirs = peer.answer().trim().split(" ");
                    double[] ours = SeasonCase.results(run, m);
                    for (int k = 0; k < ours.length; k++) {
                        double miss =
                                Math.abs(Double.parseDouble(theirs[k]) - ours[k]) / Math.max(SMALL, Math.abs(ours[k]));
                        worst = Math.max(worst, miss);
                        differing += miss <= AGREE ? 0 : 1;
                    }
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "%s season, %d members, against C %s: largest relative difference %.1e%n",
                    name,
                    c.members(),
                    how,
                    worst);
        }
        return differing;
    }

    private static double speed(Runnable work, int seasons) {
        long start = THREADS.getCurrentThreadCpuTime();
        long done = 0;
        double spent;
        do {
            work.run();
            done += seasons;
            spent = (THREADS.getCurrentThreadCpuTime() - start) / 1e9;
        } while (spent < TURN_S);
        return done / spent;
    }

    private String times(SeasonCase timed) throws IOException {
        int[] next = {0};
        Runnable one = () -> timed.alone(next[0]++ % LANES);
        for (int k = 0; k < 12; k++) {
            timed.together();
            IntStream.range(0, 30).forEach(m -> one.run());
        }
        double[][] speeds = new double[5][ROUNDS];
        try (Peer scalar = new Peer("scalar", timed, "timed");
                Peer lanes = new Peer("lanes", timed, "timed")) {
            for (int r = 0; r < ROUNDS; r++) {
                speeds[0][r] = scalar.speed();
                speeds[1][r] = speed(one, 1);
                speeds[2][r] = lanes.speed();
                speeds[3][r] = speed(timed::together, LANES);
                speeds[4][r] = twoThreads(timed);
            }
        }
        String[] names = {"C, one member at a time", "ours, one member", "C, 128 lanes", "ours, 128 lanes"};
        for (int k = 0; k < names.length; k++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-26s %9.0f seasons of 214 days a second of processor time%n",
                    names[k],
                    median(speeds[k]));
        }
        return ratio("single_vs_c", speeds[1], speeds[0]) + "," + ratio("lanes_vs_c", speeds[3], speeds[0]) + ","
                + ratio("lanes_vs_c_lanes", speeds[3], speeds[2]) + ",\"lanes_vs_numpy\":null,"
                + ratio("two_threads_vs_one", speeds[4], ones(ROUNDS)) + ","
                + String.format(
                        Locale.ROOT,
                        "\"bytes_per_day_step\":%.3f,\"advance_day_share\":%.5f",
                        bytesPerStep(timed),
                        advanceShare(timed));
    }

    /** Wall time of two blocks one after the other over that of both at once. */
    private static double twoThreads(SeasonCase timed) {
        long start = System.nanoTime();
        for (int k = 0; k < 8; k++) {
            timed.together();
        }
        long alone = System.nanoTime() - start;
        start = System.nanoTime();
        IntStream.range(0, 2).parallel().forEach(thread -> {
            for (int k = 0; k < 4; k++) {
                timed.together();
            }
        });
        return (double) alone / (System.nanoTime() - start);
    }

    private static double bytesPerStep(SeasonCase timed) {
        SeasonRun run = timed.start();
        int warm = 30;
        for (int day = 0; day < warm; day++) {
            run.step();
        }
        long thread = Thread.currentThread().getId();
        long before = THREADS.getThreadAllocatedBytes(thread);
        for (int day = warm; day < timed.days(); day++) {
            run.step();
        }
        long after = THREADS.getThreadAllocatedBytes(thread);
        return (double) (after - before) / (timed.days() - warm);
    }

    /** Restoring a snapshot and stepping one day, over a whole season. */
    private static double advanceShare(SeasonCase timed) {
        SeasonRun run = timed.start();
        for (int day = 0; day < 120; day++) {
            timed.step(run, day);
        }
        double[] snapshot = run.snapshot();
        double day = speed(
                () -> {
                    run.restore(snapshot);
                    run.step();
                },
                1);
        double season = speed(timed::together, 1);
        return season / day;
    }

    private static double[] ones(int n) {
        double[] all = new double[n];
        Arrays.fill(all, 1);
        return all;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Ratio of medians with its 95 % bootstrap interval over rounds. */
    private static String ratio(String name, double[] ours, double[] theirs) {
        SplittableRandom random = new SplittableRandom(1);
        double[] draws = new double[2000];
        for (int d = 0; d < draws.length; d++) {
            double[] a = new double[ours.length];
            double[] b = new double[ours.length];
            for (int r = 0; r < a.length; r++) {
                int pick = random.nextInt(a.length);
                a[r] = ours[pick];
                b[r] = theirs[pick];
            }
            draws[d] = median(a) / median(b);
        }
        Arrays.sort(draws);
        double middle = median(ours) / median(theirs);
        System.out.printf(Locale.ROOT, "%-26s %6.2f (%.2f to %.2f)%n", name, middle, draws[49], draws[1949]);
        return String.format(
                Locale.ROOT,
                "\"%s\":{\"median\":%.4f,\"low\":%.4f,\"high\":%.4f}",
                name,
                middle,
                draws[49],
                draws[1949]);
    }
}
