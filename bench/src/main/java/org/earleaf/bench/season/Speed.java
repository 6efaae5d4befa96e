// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/** How often a second of processor time this thread does something, and what it allocates. */
final class Speed {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private Speed() {}

    /** Times a second of processor time, over at least so long. */
    static double of(Runnable work, double seconds) {
        long start = cpu_ns();
        long done = 0;
        double spent;
        do {
            work.run();
            done++;
            spent = (cpu_ns() - start) / 1e9;
        } while (spent < seconds);
        return done / spent;
    }

    static long cpu_ns() {
        return THREADS.getCurrentThreadCpuTime();
    }

    static long allocatedBytes() {
        return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
    }
}
