// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * How often p10 to p90 of the members at planting hold what was measured: of a farmer's field, which was given the usual
 * nitrogen in the years before, and of plots that have had their rate for years, as those were that it is held against.
 */
public final class Coverage {
    /** One site-year with its members, by member and rate. */
    record Site(SiteYear at, double[][] members) {}

    private final Told told;
    private final String suffix;

    /** @param suffix stands behind the keys of what is printed */
    Coverage(Told told, String suffix) {
        this.told = told;
        this.suffix = suffix;
    }

    /** @param args the folder of measured corn */
    public static void main(String[] args) {
        Told told = new Told();
        List<SiteYear> trials = SiteYear.readAll(Path.of(args[0]));
        Coverage coverage = new Coverage(told, "");
        coverage.ofFarmers(trials.parallelStream()
                .map(at -> new Site(at, Modelled.members(at, Situation.PLANTING)))
                .toList());
        coverage.ofPlots(trials);
        System.out.println(told.json("trials coverage"));
    }

    /** Of members that stand already. */
    void ofFarmers(Sample held) {
        ofFarmers(held.all().stream()
                .map(h -> new Site(h.at(), Objects.requireNonNull(h.ahead().get(Situation.PLANTING))))
                .toList());
    }

    private void ofFarmers(List<Site> all) {
        told.title("members at planting, of a field given the usual nitrogen before");
        print(all, "f6_");
    }

    void ofPlots(List<SiteYear> trials) {
        told.title("members at planting, of plots that keep their rate as those measured did");
        print(
                trials.parallelStream()
                        .map(at -> new Site(at, Modelled.membersOfPlots(at)))
                        .toList(),
                "f6_plots_");
    }

    private void print(List<Site> all, String key) {
        within(all, key + "full_yield", "full yield", grain -> grain.applyAsDouble(Trials.FULL_KGHA));
        within(all, key + "zero_yield", "zero-N yield", grain -> grain.applyAsDouble(0));
        within(all, key + "gain", "gain", Trials::gain);
        within(all, key + "optimum", "optimum", Money::best_kgHa);
    }

    private void within(List<Site> all, String key, String what, ToDoubleFunction<DoubleUnaryOperator> trait) {
        Clusters clusters = new Clusters(
                all.stream().map(s -> s.at().farm().name() + s.at().year()).toList());
        double[] place = all.stream()
                .mapToDouble(s -> place(trait.applyAsDouble(s.at().measured()::at), sorted(s.members(), trait)))
                .toArray();
        told.line(
                key + suffix,
                "F6 " + what + " within p10 to p90",
                clusters.mean(Arrays.stream(place).map(p -> p == 0 ? 1 : 0).toArray()));
        told.line(
                "   measured below, above",
                String.format(
                        Locale.ROOT,
                        "%.2f, %.2f",
                        Figures.mean(
                                Arrays.stream(place).map(p -> p < 0 ? 1 : 0).toArray()),
                        Figures.mean(
                                Arrays.stream(place).map(p -> p > 0 ? 1 : 0).toArray())));
    }

    private static double[] sorted(double[][] members, ToDoubleFunction<DoubleUnaryOperator> trait) {
        return Arrays.stream(members)
                .mapToDouble(grain -> trait.applyAsDouble(new Modelled(grain)::at))
                .sorted()
                .toArray();
    }

    /** -1 below p10 of sorted members, 1 above p90, 0 between. */
    static int place(double measured, double[] members) {
        if (measured < members[members.length / 10]) {
            return -1;
        }
        return measured > members[members.length * 9 / 10] ? 1 : 0;
    }
}
