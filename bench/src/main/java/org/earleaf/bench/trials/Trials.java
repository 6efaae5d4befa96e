// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** Prints how model and advice stand against measured corn, by farm and over all. */
public final class Trials {
    static final int FULL_KGHA = 280;
    /** Of the site-years; so does trial-record.csv, which the reasons of a rate tell. */
    private static final double OFF_IN_SHARE = .8;

    private static final List<String> CROPS = List.of("corn", "soybean");

    private final Sample all;
    private final Rules rules;
    private final Told told;
    /** Stands behind the keys of what is printed. */
    private final String suffix;

    private Trials(Sample all, Told told, String suffix) {
        this.all = all;
        this.rules = new Rules(all);
        this.told = told;
        this.suffix = suffix;
    }

    /** @param args the folder of measured corn, and that for pictures where there are to be any */
    public static void main(String[] args) {
        long start = System.nanoTime();
        Path folder = Path.of(args[0]);
        Told told = new Told();
        List<SiteYear> sites = SiteYear.readAll(folder);
        Trials trials =
                new Trials(new Sample(sites.parallelStream().map(Held::of).toList()), told, "");
        trials.response();
        Urbana.find(folder)
                .ifPresentOrElse(
                        urbana -> urbana.print(told),
                        () -> told.title("Urbana: left out, the weather of its station is not here"));
        trials.optimum();
        trials.advice();
        Coverage coverage = new Coverage(told, "");
        coverage.ofFarmers(trials.all);
        coverage.ofPlots(sites);
        withPastYields(sites, told);
        Marsden marsden = Marsden.read(folder);
        new Plants(told, marsden).print();
        new LatePlanting(told, folder).print();
        if (args.length > 1) {
            Pictures.write(Pictures.of(trials.all, marsden), Path.of(args[1]));
        }
        told.keep("seconds", String.format(Locale.ROOT, "%.0f", (System.nanoTime() - start) / 1e9));
        System.out.println(told.json("trials"));
    }

    /** The same figures where each field's yields of the years before are given. */
    private static void withPastYields(List<SiteYear> sites, Told told) {
        Trials trials = new Trials(
                new Sample(sites.parallelStream()
                        .map(at -> Held.of(at.knowingItsPast(sites)))
                        .toList()),
                told,
                "_past");
        told.title("with the yields of the years before");
        CROPS.forEach(trials::level);
        trials.optimum();
        trials.advice();
        new Coverage(told, trials.suffix).ofFarmers(trials.all);
    }

    private Sample after(String crop) {
        return all.where(h -> h.at().isAfterCorn() == crop.equals(CROPS.get(0)));
    }

    private void response() {
        told.title(all.all().size() + " site-years; 90 % intervals in brackets");
        told.keep("site_years", String.valueOf(all.all().size()));
        for (String crop : CROPS) {
            Sample some = after(crop);
            told.title("after " + crop + ", " + some.all().size());
            told.line("F1 zero over full, measured", some.told(h -> share(h.at().measured()::at)));
            ToDoubleFunction<Held> off = h -> share(h.known()::at) - share(h.at().measured()::at);
            told.line("f1_bias_" + crop, "F1 zero over full, model less measured", some.told(off));
            told.line("f1_error_" + crop, "F1 error", some.error(off));
            level(crop);
            told.line(
                    "f3_gain_measured_" + crop,
                    "F3 gain, measured [t/ha]",
                    some.told(h -> gain(h.at().measured()::at)));
            told.line("f3_gain_" + crop, "F3 gain, model [t/ha]", some.told(h -> gain(h.known()::at)));
        }
    }

    private void level(String crop) {
        Sample some = after(crop);
        told.line(
                "f2_level_" + crop + suffix,
                "F2 level after " + crop + ", model over measured",
                some.told(h -> h.known().at(FULL_KGHA) / h.at().measured().at(FULL_KGHA)));
        told.line(
                "f2_error_" + crop + suffix,
                "F2 level, error of the logarithm",
                some.error(h ->
                        Math.log(h.known().at(FULL_KGHA) / h.at().measured().at(FULL_KGHA))));
        told.line(
                "f2_r_" + crop + suffix,
                "F2 level over the years, r",
                some.toldCorrelation(
                        h -> h.known().at(FULL_KGHA), h -> h.at().measured().at(FULL_KGHA)));
    }

    private static double share(DoubleUnaryOperator grain) {
        return grain.applyAsDouble(0) / grain.applyAsDouble(FULL_KGHA);
    }

    static double gain(DoubleUnaryOperator grain) {
        return (grain.applyAsDouble(FULL_KGHA) - grain.applyAsDouble(0)) / 1000;
    }

    private void optimum() {
        for (String crop : CROPS) {
            Sample some = after(crop);
            told.title("after " + crop);
            told.line("F4 optimum, measured [kg/ha]", some.told(Held::measuredBest));
            told.line(
                    "f4_bias_" + crop + suffix,
                    "F4 optimum, model less measured [kg/ha]",
                    some.told(h -> h.knownBest() - h.measuredBest()));
            told.line(
                    "f4_r_" + crop + suffix,
                    "F4 optimum, r",
                    some.toldCorrelation(Held::knownBest, Held::measuredBest));
        }
        regret("f4_regret", "F4 model, season known", Held::knownBest);
    }

    private void advice() {
        told.title("rates");
        regret("regret_hindsight", "best single rate in hindsight", rules.hindsight());
        regret("regret_other_farms", "best single rate of the other farms", rules::ofOtherFarms);
        regret("regret_published", "published rate", rules::published_kgHa);
        told.line("soil-test rule", "not tried: no June nitrate is known on these site-years");
        for (Situation when : Situation.values()) {
            ToDoubleFunction<Held> advised = h -> h.advised(when);
            String key = "f5_" + when.name().toLowerCase(Locale.ROOT);
            regret(key, "F5 advice " + when.word(), advised);
            regret(key + "_without_the_year", "   without the year", rules.withoutTheYear(advised));
            told.line(
                    key + "_off" + suffix,
                    "   off by at most, in 8 of 10 [kg/ha]",
                    Figures.quantile(all.of(h -> Math.abs(advised.applyAsDouble(h) - h.measuredBest())), OFF_IN_SHARE));
            for (String crop : CROPS) {
                told.line(
                        key + "_r_" + crop + suffix,
                        "   r with the measured optimum, " + crop,
                        after(crop).toldCorrelation(advised, Held::measuredBest));
            }
        }
    }

    private void regret(String key, String what, ToDoubleFunction<Held> rate) {
        Figure figure = all.told(h -> h.regret(rate.applyAsDouble(h)));
        StringBuilder farms = new StringBuilder();
        for (String farm : all.farms()) {
            Sample some = all.where(h -> h.at().farm().name().equals(farm));
            farms.append(
                    String.format(Locale.ROOT, "  %s %.1f", farm, some.mean(h -> h.regret(rate.applyAsDouble(h)))));
        }
        told.line(what + ", regret [$/ac]", figure.toString() + farms);
        told.keep(key + suffix, figure.json());
    }
}
