// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.Said;

/**
 * Spray hours of the next two days.
 *
 * @param note why there are none, or where they end early; empty when all is known
 * @param jobs the first one by weather alone, whatever is sprayed; then one for each pass of these days
 */
public record SprayTable(Optional<Said> note, List<Job> jobs) {
    public SprayTable {
        jobs = List.copyOf(jobs);
    }

    /**
     * One pass, or any.
     *
     * @param field empty: anywhere on the farm
     * @param kind any spraying, or the kind of the pass
     * @param product empty when no product is meant
     * @param placement in words, empty likewise
     * @param rig empty likewise
     * @param hours each hour judged
     * @param windows runs of hours in which it may be made by its weather
     */
    public record Job(
            String field,
            String zone,
            Said kind,
            String product,
            String placement,
            String rig,
            List<SprayHour> hours,
            List<SprayWindow> windows) {
        public Job {
            hours = List.copyOf(hours);
            windows = List.copyOf(windows);
        }

        /** Runs of unfit hours, each with what binds most. */
        public List<Shut> shut() {
            List<Shut> all = new ArrayList<>();
            for (SprayHour h : hours) {
                if (h.fit() != SprayFit.UNFIT) {
                    continue;
                }
                HourReason because = h.against().get(0);
                LocalDateTime at = h.hour().at();
                int last = all.size() - 1;
                boolean goesOn = last >= 0
                        && all.get(last).to().equals(at)
                        && all.get(last).because().factor() == because.factor();
                if (goesOn) {
                    all.set(
                            last,
                            new Shut(
                                    all.get(last).from(),
                                    at.plusHours(1),
                                    all.get(last).because()));
                } else {
                    all.add(new Shut(at, at.plusHours(1), because));
                }
            }
            return List.copyOf(all);
        }
    }

    /**
     * Hours in which it may not be made.
     *
     * @param because what binds in the first of them
     */
    public record Shut(LocalDateTime from, LocalDateTime to, HourReason because) {}
}
