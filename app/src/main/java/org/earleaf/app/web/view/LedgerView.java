// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/**
 * What nitrogen has come and gone since the run began, as an account that adds up to what lies in the soil today.
 *
 * @param since first day of the run
 */
public record LedgerView(String since, List<Row> rows, Row sum) {
    /** Below this much nothing is said about a remainder. */
    private static final double ROUNDING_KGHA = .6;

    /**
     * @param amount with a true minus for what went out
     * @param note what the line holds
     */
    public record Row(String name, String amount, String note) {}

    static LedgerView of(SeasonTrace t, int day, Format format) {
        Account account = new Account(t, day, format);
        double start = mineral(t, 0) - account.net(0);
        account.rows.add(new Row(
                "There on " + Format.date(t.first()), format.nitrogen(start), "nitrate, ammonium and urea to 5 ft"));
        account.in("Given", Daily.FERTILISED, "passes and manure");
        account.in("Freed by the soil", Daily.MINERALISED, "organic matter and manure, warm and moist");
        account.in("Rain and air", Daily.DEPOSITED, "what rain and dust bring down");
        account.out("Into the crop", t.at(day, Daily.SHOOT_N) + t.at(day, Daily.ROOT_N), "tops and roots");
        account.out("Taken back", t.at(day, Daily.TAKEN_BACK), "by soil microbes and clay");
        account.out("Held in residue", t.at(day, Daily.RESIDUE_NET), "what it took less what it gave back");
        account.out("Leached", t.at(day, Daily.LEACHED), "below 5 ft, out of reach of roots");
        account.out("Lost from wet soil", t.at(day, Daily.DENITRIFIED), "denitrified");
        account.out("Lost to the air", t.at(day, Daily.VOLATILISED), "volatilised from the surface");
        double now = mineral(t, day);
        double remainder = now - start - account.net(day);
        if (remainder > ROUNDING_KGHA || remainder < -ROUNDING_KGHA) {
            account.rows.add(new Row(
                    "Put right by readings", format.nitrogen(remainder), "soil tests set the model to what was found"));
        }
        return new LedgerView(
                Format.date(t.first()),
                account.rows,
                new Row("Now in the soil", format.nitrogen(now), "the cut-away on today's date, and on the ground"));
    }

    private static double mineral(SeasonTrace t, int day) {
        return SoilSums.mineral(t, day) + SoilSums.surface(t, day);
    }

    private static final class Account {
        private final SeasonTrace t;
        private final int day;
        private final Format format;
        private final List<Row> rows = new ArrayList<>();

        Account(SeasonTrace t, int day, Format format) {
            this.t = t;
            this.day = day;
            this.format = format;
        }

        /** Come less gone from before the first day to the end of {@code until}. */
        double net(int until) {
            return t.at(until, Daily.FERTILISED)
                    + t.at(until, Daily.MINERALISED)
                    + t.at(until, Daily.DEPOSITED)
                    - t.at(until, Daily.SHOOT_N)
                    - t.at(until, Daily.ROOT_N)
                    - t.at(until, Daily.TAKEN_BACK)
                    - t.at(until, Daily.RESIDUE_NET)
                    - t.at(until, Daily.LEACHED)
                    - t.at(until, Daily.DENITRIFIED)
                    - t.at(until, Daily.VOLATILISED);
        }

        void in(String name, Daily what, String note) {
            rows.add(new Row(name, format.nitrogen(t.at(day, what)), note));
        }

        void out(String name, double kgHa, String note) {
            rows.add(new Row(name, format.nitrogen(-kgHa), note));
        }
    }
}
