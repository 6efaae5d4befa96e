// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The same work by one thread and by two, in turns, by the clock on the wall: blocks of members, of which a thread takes
 * the next when it has finished one. The ratio is that of the machine as much as ours: it is held back by whatever else
 * runs on the second core, so the share of the processors that the two threads were given stands beside it.
 *
 * @param speedUp wall time of one thread over that of two
 * @param work processor time of two threads over that of one: above 1 they are in each other's way
 * @param given processors that the two threads had on average
 */
record TwoThreads(Ratio speedUp, Ratio work, double given) {
    private static final int BLOCKS = 96;

    static TwoThreads measure(SeasonCase timed, int rounds) {
        double[][] wall = new double[2][rounds];
        double[][] cpu = new double[2][rounds];
        double[] given = new double[rounds];
        for (int r = 0; r < rounds; r++) {
            // Who begins changes from round to round.
            for (int k = 0; k < 2; k++) {
                int more = (r + k) % 2;
                AtomicLong spent = new AtomicLong();
                long start = System.nanoTime();
                run(timed, 1 + more, spent);
                wall[more][r] = System.nanoTime() - start;
                cpu[more][r] = spent.get();
            }
            given[r] = cpu[1][r] / wall[1][r];
        }
        return new TwoThreads(Ratio.of(wall[0], wall[1]), Ratio.of(cpu[1], cpu[0]), Ratio.median(given));
    }

    private static void run(SeasonCase timed, int threads, AtomicLong spent) {
        AtomicInteger next = new AtomicInteger();
        List<Thread> all = new ArrayList<>();
        for (int k = 0; k < threads; k++) {
            Thread thread = new Thread(() -> {
                long start = Speed.cpu_ns();
                while (next.getAndIncrement() < BLOCKS) {
                    timed.together();
                }
                spent.addAndGet(Speed.cpu_ns() - start);
            });
            all.add(thread);
            thread.start();
        }
        for (Thread thread : all) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
