// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Dates;
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

    private static void losses(Account account, SeasonTrace t, int day) {
        account.out(
                tell("page.ledger.taken-back"),
                t.at(day, Daily.TAKEN_BACK),
                tell("page.ledger.by-soil-microbes-and-clay"));
        account.out(
                tell("page.ledger.held-in-residue"),
                t.at(day, Daily.RESIDUE_NET),
                tell("page.ledger.what-it-took-less-what"));
        account.out(tell("page.ledger.leached"), t.at(day, Daily.LEACHED), tell("page.ledger.below-5-ft-out-of"));
        account.out(
                tell("page.ledger.lost-from-wet-soil"), t.at(day, Daily.DENITRIFIED), tell("page.ledger.denitrified"));
        account.out(
                tell("page.ledger.lost-to-the-air"),
                t.at(day, Daily.VOLATILISED),
                tell("page.ledger.volatilised-from-the-surface"));
    }

    static LedgerView of(SeasonTrace t, int day, Format format) {
        Account account = new Account(t, day, format);
        double start = mineral(t, 0) - account.net(0);
        account.rows.add(new Row(
                tell("page.ledger.there-on", "first", Dates.day(t.first())),
                format.nitrogen(start),
                tell("page.ledger.nitrate-ammonium-and-urea")));
        account.in(tell("page.ledger.given"), Daily.FERTILISED, tell("page.ledger.passes-and-manure"));
        account.in(
                tell("page.ledger.freed-by-the-soil"),
                Daily.MINERALISED,
                tell("page.ledger.organic-matter-and-manure"));
        account.in(tell("page.ledger.rain-and-air"), Daily.DEPOSITED, tell("page.ledger.what-rain-and-dust-bring"));
        account.out(
                tell("page.ledger.into-the-crop"),
                t.at(day, Daily.SHOOT_N) + t.at(day, Daily.ROOT_N),
                tell("page.ledger.tops-and-roots"));
        losses(account, t, day);
        double now = mineral(t, day);
        double remainder = now - start - account.net(day);
        if (remainder > ROUNDING_KGHA || remainder < -ROUNDING_KGHA) {
            account.rows.add(new Row(
                    tell("page.ledger.put-right-by-readings"),
                    format.nitrogen(remainder),
                    tell("page.ledger.soil-tests-set-the-model")));
        }
        return new LedgerView(
                Dates.day(t.first()),
                account.rows,
                new Row(
                        tell("page.ledger.now-in-the-soil"),
                        format.nitrogen(now),
                        tell("page.ledger.the-cut-away-on-todays")));
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
