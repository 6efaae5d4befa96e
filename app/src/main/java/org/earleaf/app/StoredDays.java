// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.web.Days;
import org.earleaf.farm.Farm;
import org.jspecify.annotations.Nullable;

/** Gives pages the stored farm on a day; answers are kept until something is written. */
public final class StoredDays implements Days {
    /** Days looked at lately, each with the runs of all its fields. */
    private static final int KEPT = 8;

    private final FarmStore store;
    private final Wiring wiring;
    private final Optional<LocalDate> fixed;
    private final boolean trial;
    private final Map<LocalDate, FarmDay> kept = new LinkedHashMap<>();
    private @Nullable Farm farm;
    private long changes = -1;

    /**
     * @param fixed the day that stands for today; empty: the clock's
     * @param trial whether that day stands for today on records too; never in a file that lasts
     */
    public StoredDays(FarmStore store, Wiring wiring, Optional<LocalDate> fixed, boolean trial) {
        this.store = store;
        this.wiring = wiring;
        this.fixed = fixed;
        this.trial = trial;
    }

    @Override
    public synchronized Instant now() {
        Instant clock = wiring.clock().instant().truncatedTo(ChronoUnit.SECONDS);
        if (!trial || fixed.isEmpty()) {
            return clock;
        }
        ZoneId zone = farm().timeZone();
        return fixed.get().atTime(LocalTime.ofInstant(clock, zone)).atZone(zone).toInstant();
    }

    @Override
    public synchronized LocalDate today() {
        return fixed.orElseGet(() -> wiring.today(farm()));
    }

    @Override
    public synchronized FarmDay day(LocalDate on) {
        Farm now = farm();
        FarmDay day = kept.remove(on);
        if (day == null) {
            day = wiring.day(now, on, false);
        }
        kept.put(on, day);
        if (kept.size() > KEPT) {
            kept.remove(kept.keySet().iterator().next());
        }
        return day;
    }

    private Farm farm() {
        long now = store.changes();
        Farm known = farm;
        if (known == null || now != changes) {
            known = store.farm();
            farm = known;
            changes = now;
            kept.clear();
        }
        return known;
    }
}
