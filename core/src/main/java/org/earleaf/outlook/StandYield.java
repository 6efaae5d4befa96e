// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Units;

/**
 * Share of the most that corn yields, by the day it was planted and the plants that stand.
 *
 * <pre>
 * y = table(day, plants), straight between its rows and columns
 *
 * Range  before 10 April as on it; after 9 June falling on as from 4 to 9 June, to nothing; below 10,000 plants/ac in
 *        proportion to them, above 36,000 as there (these three: own construct)
 * Source Nafziger 1994, J. Prod. Agric. 7:59-62, central Illinois: stand-yield.csv
 * Check  StandYieldTest
 * </pre>
 */
final class StandYield {
    private static final int FEWEST = 10_000;
    private static final int STEP = 2_000;
    private static final List<Row> ROWS = BundledTable.rows("stand-yield.csv").stream()
            .map(row -> new Row(
                    MonthDay.parse("--" + row.text("planted")),
                    IntStream.rangeClosed(FEWEST / STEP, 18)
                            .mapToObj(k -> row.number("k" + 2 * k) / 100)
                            .toList()))
            .toList();

    private StandYield() {}

    private record Row(MonthDay planted, List<Double> shares) {
        long day(int year) {
            return planted.atYear(year).toEpochDay();
        }

        double of(double plants_ac) {
            double at = (plants_ac - FEWEST) / STEP;
            if (at < 0) {
                return shares.get(0) * plants_ac / FEWEST;
            }
            int k = (int) Math.min(shares.size() - 2.0, at);
            double beyond = Math.min(1, at - k);
            return shares.get(k) + beyond * (shares.get(k + 1) - shares.get(k));
        }
    }

    /** Share of the most. */
    static double of(LocalDate planted, double plants_m2) {
        double plants_ac = plants_m2 * Units.M2_PER_AC;
        int year = planted.getYear();
        int k = 0;
        while (k < ROWS.size() - 2 && ROWS.get(k + 1).day(year) <= planted.toEpochDay()) {
            k++;
        }
        Row from = ROWS.get(k);
        Row to = ROWS.get(k + 1);
        double gone = (double) (planted.toEpochDay() - from.day(year)) / (to.day(year) - from.day(year));
        double share = from.of(plants_ac) + Math.max(0, gone) * (to.of(plants_ac) - from.of(plants_ac));
        return Math.max(0, share);
    }
}
