// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.week.Week;
import org.earleaf.week.WeekChange;

/**
 * The week that stands.
 *
 * @param anew what has come to pass since and what it makes of the plan; empty: nothing
 * @param handed the plan that drivers hold, when days of it lie ahead
 */
public record Standing(Week now, Optional<WeekChange.Anew> anew, Optional<Handed> handed) {
    private static final long SEED = 1;

    /**
     * The search that every page shares.
     *
     * @param told the plan that drivers hold; empty: none
     */
    public static Question<Week> week(List<Week.Told> told) {
        return new Question.TheWeek(SEED, told);
    }

    /**
     * Asks for it.
     *
     * @param change what has come to pass
     * @param handed the newest plan that was handed out
     */
    public record Asked(WeekChange change, Optional<Handed> handed) implements Question<Standing> {
        @Override
        public boolean isSearch() {
            return true;
        }

        @Override
        public Standing of(FarmDay day) {
            Week week = day.week(SEED);
            Optional<Handed> held = handed.filter(h -> isOf(h, week));
            if (change.isNone()) {
                return new Standing(week, Optional.empty(), held);
            }
            WeekChange.Anew anew = change.to(week, SEED, day.how());
            return new Standing(anew.now(), Optional.of(anew), held);
        }

        private static boolean isOf(Handed handed, Week week) {
            LocalDate last = week.on().plusDays(Week.DAYS - 1L);
            return handed.passes().stream()
                    .anyMatch(t -> !t.day().isBefore(week.on()) && !t.day().isAfter(last));
        }
    }
}
