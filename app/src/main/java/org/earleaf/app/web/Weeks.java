// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.earleaf.app.FarmDay;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.app.web.view.PlanAsked;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;
import org.jspecify.annotations.Nullable;

/** The week's plan, worked out beside the pages, and what becomes of the one that drivers hold in their hands. */
class Weeks {
    private static final long SEED = 1;

    private final Desk desk;
    private final Map<FarmDay, Search> running = Collections.synchronizedMap(new WeakHashMap<>());
    private final Map<FarmDay, Kept> kept = Collections.synchronizedMap(new WeakHashMap<>());

    Weeks(Desk desk) {
        this.desk = desk;
    }

    /** A week being worked out. */
    private record Search(Instant since, CompletableFuture<Week> week) {}

    /** What the plan in the drivers' hands came to, when nothing else has come to pass. */
    private record Kept(Instant handed, WeekChange.Anew anew) {}

    /**
     * The plan that stands.
     *
     * @param anew what has come to pass since and what it makes of the plan; empty: nothing
     * @param handed the plan that drivers hold, when days of it lie ahead
     */
    record Standing(Week now, Optional<WeekChange.Anew> anew, Optional<Handed> handed) {}

    /**
     * How long a search takes so far.
     *
     * @param progress null: no plan stands yet
     */
    record Far(long seconds, Week.@Nullable Progress progress) {}

    /** Empty: it is still being worked out after so long a wait. */
    Optional<Standing> find(PlanAsked asked, long patience_ms) {
        FarmDay today = desk.today();
        return week(today, patience_ms).map(w -> standing(today, w, asked));
    }

    Far far() {
        FarmDay today = desk.today();
        Search search = running.get(today);
        long seconds = search == null
                ? 0
                : Duration.between(search.since(), Instant.now()).toSeconds();
        return new Far(seconds, today.progress().orElse(null));
    }

    private Standing standing(FarmDay today, Week week, PlanAsked asked) {
        Optional<Handed> handed = desk.notebook().handed().findNewest().filter(h -> isOf(h, week));
        if (handed.isEmpty()) {
            Optional<WeekChange.Anew> anew = asked.isNothing()
                    ? Optional.empty()
                    : Optional.of(asked.change().to(week, SEED));
            return new Standing(anew.map(WeekChange.Anew::now).orElse(week), anew, handed);
        }
        WeekChange.Anew anew = asked.isNothing() ? since(today, week, handed.get()) : since(week, handed.get(), asked);
        return new Standing(anew.now(), asked.isNothing() ? Optional.empty() : Optional.of(anew), handed);
    }

    private WeekChange.Anew since(FarmDay today, Week week, Handed handed) {
        Kept known = kept.get(today);
        if (known == null || !known.handed().equals(handed.at())) {
            known = new Kept(handed.at(), since(week, handed, PlanAsked.NOTHING));
            kept.put(today, known);
        }
        return known.anew();
    }

    private static WeekChange.Anew since(Week week, Handed handed, PlanAsked asked) {
        return asked.change().to(week.asTold(handed.passes(), SEED), SEED);
    }

    private static boolean isOf(Handed handed, Week week) {
        LocalDate last = week.on().plusDays(Week.DAYS - 1L);
        return handed.passes().stream()
                .anyMatch(t -> !t.day().isBefore(week.on()) && !t.day().isAfter(last));
    }

    private Optional<Week> week(FarmDay today, long patience_ms) {
        Search search = running.computeIfAbsent(
                today, d -> new Search(Instant.now(), CompletableFuture.supplyAsync(() -> d.week(SEED))));
        try {
            return Optional.of(search.week().get(patience_ms, TimeUnit.MILLISECONDS));
        } catch (TimeoutException still) {
            return Optional.empty();
        } catch (ExecutionException failed) {
            running.remove(today);
            throw failed.getCause() instanceof RuntimeException known ? known : new IllegalStateException(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
