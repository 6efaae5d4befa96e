// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import org.earleaf.weather.Forcing;

/** Something done to a zone on a day, before that day's weather. */
public sealed interface Event {
    LocalDate date();

    /** Nitrogen put on. */
    record Nitrogen(LocalDate date, NitrogenPass pass) implements Event {}

    /** Water from above [mm]. */
    record Water(LocalDate date, double depth_mm) implements Event {}

    /**
     * Water from above as usual, so many days after the last, until black layer. Rain of as much since then stands for it.
     *
     * @param date of the last that was entered
     * @param from the first day on which it may fall: what is past was as entered
     */
    record Usual(LocalDate date, LocalDate from, double depth_mm, int every_d) implements Event {
        @Override
        public boolean isOn(LocalDate day) {
            return day.isAfter(date) && !day.isBefore(from);
        }

        /** Whether it falls due on a day of the run, under this weather. */
        boolean isDue(Forcing weather, int day) {
            int since = weather.index(date);
            double rained = 0;
            for (int k = since + 1; k < day; k++) {
                rained += weather.rain_mm()[k - 1];
                if (k >= weather.index(from) && k - since >= every_d) {
                    since = k;
                    rained = 0;
                }
            }
            return day - since >= every_d && rained + weather.rain_mm()[day - 1] < depth_mm;
        }
    }

    /** So many plants were counted. */
    record Counted(LocalDate date, double plants_m2) implements Event {}

    /** Manure: organic nitrogen [kg/ha], and its ammonium as a pass. */
    record Manured(LocalDate date, double organic_kgHa, NitrogenPass ammonium) implements Event {}

    /** Tillage that leaves this residue cover. */
    record Tilled(LocalDate date, double coverAfter) implements Event {}

    /** Whether it is done on a day. */
    default boolean isOn(LocalDate day) {
        return date().equals(day);
    }

    default void applyTo(SeasonRun run) {
        if (this instanceof Nitrogen n) {
            run.applyAll(n.pass());
        } else if (this instanceof Water w) {
            run.irrigate(w.depth_mm());
        } else if (this instanceof Usual usual) {
            run.irrigateAsUsual(usual);
        } else if (this instanceof Counted c) {
            run.stand(c.plants_m2());
        } else if (this instanceof Manured m) {
            run.manure(m.organic_kgHa(), m.ammonium());
        } else if (this instanceof Tilled t) {
            run.tillage(t.coverAfter());
        }
    }
}
