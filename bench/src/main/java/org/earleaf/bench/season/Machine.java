// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** The machine under the measurement: which cores we stand on, and what others take of it meanwhile. */
final class Machine {
    private static final OperatingSystemMXBean SYSTEM =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    /** Asked before anything is pinned: Java then counts only the cores it stands on. */
    static final int CORES = Runtime.getRuntime().availableProcessors();

    /** Fields of the first line of /proc/stat, after its name. */
    private static final int IDLE = 3;

    private static final int IO_WAIT = 4;
    private static final int STEAL = 7;
    private static final int FIELDS = 8;

    private Machine() {}

    /** Puts all threads of a process on these cores ("1", "0,1"); false where that cannot be done. */
    static boolean pin(String cores, long pid) {
        try {
            Process taskset = new ProcessBuilder("taskset", "-a", "-p", "-c", cores, Long.toString(pid))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return taskset.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    static String load() {
        try {
            return Files.readString(Path.of("/proc/loadavg")).replaceFirst("^(\\S+ \\S+ \\S+).*\\s*", "$1");
        } catch (IOException e) {
            return "unknown";
        }
    }

    /** What the cores did since a moment. */
    static final class Meter {
        private final long[] before = ticks();
        private final long ours = SYSTEM.getProcessCpuTime();
        private final long start = System.nanoTime();

        private static long[] ticks() {
            try {
                String line = Files.readAllLines(Path.of("/proc/stat")).get(0);
                return Arrays.stream(line.trim().split("\\s+"))
                        .skip(1)
                        .limit(FIELDS)
                        .mapToLong(Long::parseLong)
                        .toArray();
            } catch (IOException e) {
                return new long[0];
            }
        }

        /** Share of all cores that the host gave to other machines, and that was busy here, in words. */
        String words() {
            long[] now = ticks();
            if (now.length < FIELDS || before.length < FIELDS) {
                return "load average " + load() + "; steal unknown";
            }
            long[] gone = new long[FIELDS];
            Arrays.setAll(gone, k -> now[k] - before[k]);
            double all = Math.max(1, Arrays.stream(gone).sum());
            double busy = 1 - (gone[IDLE] + gone[IO_WAIT] + gone[STEAL]) / all;
            double own = (SYSTEM.getProcessCpuTime() - ours) / ((double) (System.nanoTime() - start) * CORES);
            return String.format(
                    Locale.ROOT,
                    "load average %s; of %d cores %.0f %% busy, this Java %.0f %%, %.1f %% stolen by the host",
                    load(),
                    CORES,
                    100 * busy,
                    100 * own,
                    100 * gone[STEAL] / all);
        }
    }
}
