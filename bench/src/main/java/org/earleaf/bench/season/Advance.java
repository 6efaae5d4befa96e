// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.season.SeasonRun;

/**
 * What a new day of weather costs: a run is begun with the weather that now reaches one day further, the snapshot of the
 * evening before is put back into it, and the day is stepped. Snapshots stand every thirtieth day of the season, and a
 * turn goes through all of them, since a day before planting is cheaper than one in July.
 */
final class Advance {
    private static final int EVERY = 30;

    private final SeasonCase timed;
    private final List<Integer> days = new ArrayList<>();
    private final List<double[]> evenings = new ArrayList<>();
    private final List<double[]> nextEvenings = new ArrayList<>();
    private int next;

    Advance(SeasonCase timed) {
        this.timed = timed;
        SeasonRun run = timed.start();
        for (int day = 0; day < timed.days(); day++) {
            boolean kept = day % EVERY == EVERY - 1;
            if (kept) {
                days.add(day);
                evenings.add(run.snapshot());
            }
            timed.step(run, day);
            if (kept) {
                nextEvenings.add(run.snapshot());
            }
        }
    }

    private SeasonRun advance(int k) {
        SeasonRun run = timed.start();
        run.restore(evenings.get(k));
        timed.step(run, days.get(k));
        return run;
    }

    /** Days that do not end, to the last bit, as they did without a snapshot. */
    int differing() {
        int count = 0;
        for (int k = 0; k < days.size(); k++) {
            count += Arrays.equals(advance(k).snapshot(), nextEvenings.get(k)) ? 0 : 1;
        }
        return count;
    }

    /** Advances the next of the snapshots. */
    void once() {
        advance(next++ % days.size());
    }
}
