// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.util.List;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** What can be asked of a farm on a day. Equal questions have one answer. */
public interface Question<T> {
    /** The answer, as the day gives it or as it follows from what the day gives. */
    T of(FarmDay day);

    /** Whether it takes so long that short ones must not stand behind it. */
    default boolean isSearch() {
        return false;
    }

    /** @param told the plan that drivers hold; empty: none */
    record TheBrief(List<Week.Told> told) implements Question<Brief> {
        public TheBrief {
            told = List.copyOf(told);
        }

        @Override
        public Brief of(FarmDay day) {
            return day.brief();
        }

        /** The week's plan is in it. */
        @Override
        public boolean isSearch() {
            return true;
        }
    }

    record TheAnswer(Zone zone) implements Question<NitrogenOptions.Answer> {
        @Override
        public NitrogenOptions.Answer of(FarmDay day) {
            return day.answer(zone);
        }
    }

    record TheOutlook(Zone zone) implements Question<Outlook> {
        @Override
        public Outlook of(FarmDay day) {
            return day.outlook(zone);
        }
    }

    record TheOutlookWith(Zone zone, Option option) implements Question<Outlook> {
        @Override
        public Outlook of(FarmDay day) {
            return day.outlookWith(zone, option);
        }
    }

    /** @param told the plan that drivers hold; empty: none */
    record TheWeek(long seed, List<Week.Told> told) implements Question<Week> {
        public TheWeek {
            told = List.copyOf(told);
        }

        @Override
        public Week of(FarmDay day) {
            return day.week(seed);
        }

        @Override
        public boolean isSearch() {
            return true;
        }
    }

    /** The zones whose season is modelled. */
    static List<Zone> modelled(FarmDay day) {
        return day.farm().zones().stream().filter(Zone::isCorn).toList();
    }
}
