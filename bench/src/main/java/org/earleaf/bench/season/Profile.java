// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.season.PhaseClock;
import org.earleaf.season.SeasonRun;

/**
 * Where the kernel's time goes, by phase of the day, for one member or for 128. Every day of a season is stepped many
 * times and the median of each piece is taken, so that what the machine does in between does not count; the price of the
 * clock is taken off. Exit status 1 when a season stepped phase by phase does not end as a season run does.
 */
public final class Profile {
    private static final int LANES = 128;
    /** One member at a time: so many of the members. */
    private static final int SINGLES = 12;

    private static final int REPEATS = 31;
    private static final double WARM_S = 6;

    private final SeasonCase timed = Cases.timed(LANES);
    private int differing;

    private Profile() {}

    /** @param args {@code one} member at a time or all in {@code lanes} */
    public static void main(String[] args) {
        boolean alone = args[0].equals("one");
        List<int[]> groups = alone
                ? IntStream.range(0, SINGLES).mapToObj(m -> new int[] {m}).toList()
                : List.of(IntStream.range(0, LANES).toArray());
        Profile profile = new Profile();
        Speed.of(() -> groups.forEach(profile::season), WARM_S);
        String times = profile.measure(groups);
        System.out.printf(
                "{\"bench\":\"season-profile\",\"differing\":%d,\"%s\":%s}%n", profile.differing, args[0], times);
        System.exit(profile.differing == 0 ? 0 : 1);
    }

    /** What one season of some members took [ns]: setting up, and by day and piece; whole days without a clock. */
    private record Times(double setUp, double[][] pieces, double[] days) {}

    private SeasonCase only(int[] members) {
        return new SeasonCase(
                timed.setup(),
                Arrays.stream(members).mapToObj(timed.sets()::get).toList(),
                timed.weather(),
                Arrays.stream(members).map(m -> timed.weatherOf()[m]).toArray(),
                timed.days(),
                timed.passes());
    }

    private Times season(int[] members) {
        SeasonCase c = only(members);
        PhaseClock clock = new PhaseClock(c.setup(), c.sets(), c.weather(), c.weatherOf());
        double[][] pieces = new double[c.days()][clock.pieces()];
        for (int day = 0; day < c.days(); day++) {
            c.applyPasses(clock.run(), day);
            clock.step();
            for (int k = 0; k < clock.pieces(); k++) {
                pieces[day][k] = clock.spent_ns(k);
            }
        }
        long start = System.nanoTime();
        SeasonRun run = c.start();
        double setUp = System.nanoTime() - start;
        double[] days = new double[c.days()];
        for (int day = 0; day < c.days(); day++) {
            c.applyPasses(run, day);
            start = System.nanoTime();
            run.step();
            days[day] = System.nanoTime() - start;
        }
        differing += clock.isAs(run) ? 0 : 1;
        return new Times(setUp, pieces, days);
    }

    private String measure(List<int[]> groups) {
        double clock = clock_ns();
        int members = groups.get(0).length;
        double perDay = 1.0 / (members * groups.size() * timed.days());
        double[] pieces = new double[0];
        double whole = 0;
        double setUp = 0;
        for (int[] group : groups) {
            List<Times> repeats =
                    IntStream.range(0, REPEATS).mapToObj(r -> season(group)).toList();
            pieces = pieces.length == 0 ? new double[repeats.get(0).pieces()[0].length] : pieces;
            setUp += median(repeats, t -> t.setUp()) * perDay;
            for (int day = 0; day < timed.days(); day++) {
                int d = day;
                whole += (median(repeats, t -> t.days()[d]) - clock) * perDay;
                for (int k = 0; k < pieces.length; k++) {
                    int piece = k;
                    pieces[k] += Math.max(0, median(repeats, t -> t.pieces()[d][piece]) - clock) * perDay;
                }
            }
        }
        return report(members, names(groups.get(0), pieces), whole, setUp);
    }

    private Map<String, Double> names(int[] group, double[] pieces) {
        SeasonCase c = only(group);
        return new PhaseClock(c.setup(), c.sets(), c.weather(), c.weatherOf()).byPhase(pieces);
    }

    private static double median(List<Times> repeats, ToDoubleFunction<Times> what) {
        return Ratio.median(repeats.stream().mapToDouble(what).toArray());
    }

    /** Two readings of the clock with nothing between. */
    private static double clock_ns() {
        double[] all = new double[2001];
        for (int k = 0; k < all.length; k++) {
            long start = System.nanoTime();
            all[k] = System.nanoTime() - start;
        }
        return Ratio.median(all);
    }

    private String report(int members, Map<String, Double> phases, double whole, double setUp) {
        double sum = phases.values().stream().mapToDouble(v -> v).sum();
        System.out.printf("%n%d member%s, ns a member and day%n", members, members == 1 ? "" : "s side by side");
        phases.forEach(
                (name, ns) -> System.out.printf(Locale.ROOT, "  %-28s %7.1f  %4.1f %%%n", name, ns, 100 * ns / sum));
        System.out.printf(Locale.ROOT, "  %-28s %7.1f%n", "all phases", sum);
        System.out.printf(Locale.ROOT, "  %-28s %7.1f%n", "a day without clocks between", whole);
        System.out.printf(
                Locale.ROOT,
                "  %-28s %7.1f  %4.1f %% of a season%n",
                "setting up, by day",
                setUp,
                100 * setUp / (setUp + whole));
        return phases.entrySet().stream()
                .map(e -> String.format(Locale.ROOT, "\"%s\":%.1f", e.getKey().replaceAll("\\W+", "_"), e.getValue()))
                .collect(Collectors.joining(
                        ",", "{", String.format(Locale.ROOT, ",\"day\":%.1f,\"setting_up\":%.1f}", whole, setUp)));
    }
}
