// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.Map;
import java.util.TreeMap;

/**
 * What doing a job on a day loses against its best day.
 *
 * <pre>
 * loss = straight line between the days given; the first value before them, the last one after them
 *
 * loss   of the whole job    [$]
 * Range  0 or more
 * Source own construct
 * Check  LossByDayTest
 * </pre>
 */
public final class LossByDay {
    private final TreeMap<Integer, Double> given_usd;

    public LossByDay(Map<Integer, Double> given_usd) {
        if (given_usd.isEmpty()) {
            throw new IllegalArgumentException("a loss needs at least one day");
        }
        this.given_usd = new TreeMap<>(given_usd);
    }

    /** Of a day [$]. */
    public double on(int day) {
        Map.Entry<Integer, Double> before = given_usd.floorEntry(day);
        Map.Entry<Integer, Double> after = given_usd.ceilingEntry(day);
        if (before == null || after == null) {
            return (before == null ? given_usd.firstEntry() : given_usd.lastEntry()).getValue();
        }
        if (before.getKey().equals(after.getKey())) {
            return before.getValue();
        }
        double part = (double) (day - before.getKey()) / (after.getKey() - before.getKey());
        return before.getValue() + part * (after.getValue() - before.getValue());
    }
}
