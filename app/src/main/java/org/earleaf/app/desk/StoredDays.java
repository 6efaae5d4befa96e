// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.farm.Farm;
import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/** Gives pages the stored farm on a day; a day and its answers are kept until the farm is another. */
public final class StoredDays implements Days {
    /** Days looked at lately, each with the runs of all its fields. */
    private static final int KEPT = 8;

    private final FarmStore store;
    private final DayMaker maker;
    private final Clock clock;
    private final Optional<LocalDate> fixed;
    private final boolean trial;
    private final AtomicReference<@Nullable Facts> facts = new AtomicReference<>();
    private final Cache<Key, FarmDay> days =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    /**
     * The farm as it was read.
     *
     * @param changes of the store when it was
     * @param version another one for every farm that differs
     * @param told the plan that drivers hold; empty: none
     */
    private record Facts(long changes, long version, Farm farm, List<Week.Told> told) {}

    private record Key(long version, LocalDate on) {}

    /**
     * @param fixed the day that stands for today; empty: the clock's
     * @param trial whether that day stands for today on records too; never in a file that lasts
     */
    public StoredDays(FarmStore store, DayMaker maker, Clock clock, Optional<LocalDate> fixed, boolean trial) {
        this.store = store;
        this.maker = maker;
        this.clock = clock;
        this.fixed = fixed;
        this.trial = trial;
    }

    @Override
    public Instant now() {
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        if (!trial || fixed.isEmpty()) {
            return now;
        }
        ZoneId zone = facts().farm().timeZone();
        return fixed.get().atTime(LocalTime.ofInstant(now, zone)).atZone(zone).toInstant();
    }

    @Override
    public LocalDate today() {
        return fixed.orElseGet(() -> LocalDate.now(clock.withZone(facts().farm().timeZone())));
    }

    @Override
    public FarmDay day(LocalDate on) {
        Facts now = facts();
        FarmDay day = days.get(new Key(now.version(), on), k -> maker.day(now.farm(), on, false));
        return now.told().isEmpty() ? day : new HeldDay(day, now.told());
    }

    /** Read anew when something was written. What is written beside the farm, a step of a load say, changes no answer. */
    private Facts facts() {
        long changes = store.changes();
        Facts known = facts.get();
        if (known != null && known.changes() == changes) {
            return known;
        }
        Farm farm = store.farm();
        long version = known == null ? 0 : known.farm().equals(farm) ? known.version() : known.version() + 1;
        Facts read = new Facts(
                changes,
                version,
                known != null && version == known.version() ? known.farm() : farm,
                store.handed().findNewest().map(Handed::passes).orElse(List.of()));
        if (!facts.compareAndSet(known, read)) {
            return facts();
        }
        days.asMap().forEach((key, day) -> {
            if (key.version() != version && days.asMap().remove(key, day) && day instanceof AskedDay past) {
                past.end();
            }
        });
        return read;
    }
}
