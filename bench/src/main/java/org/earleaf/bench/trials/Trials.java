// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** Prints how model and advice stand against measured corn, by farm and over all. */
public final class Trials {
    private static final int FULL_KGHA = 280;

    private final Sample all;
    private final Rules rules;

    private Trials(Sample all) {
        this.all = all;
        this.rules = new Rules(all);
    }

    /** @param args the folder of measured corn */
    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        List<Held> held =
                SiteYear.readAll(folder).parallelStream().map(Held::of).toList();
        Trials trials = new Trials(new Sample(held));
        trials.response();
        trials.optimum();
        trials.advice();
        trials.coverage();
        System.out.println();
        new Plants(folder).print();
    }

    private Sample after(boolean corn) {
        return all.where(h -> h.at().isAfterCorn() == corn);
    }

    private void response() {
        System.out.printf(
                "%n%d site-years; 90%% intervals in brackets%n", all.all().size());
        for (boolean corn : new boolean[] {true, false}) {
            Sample some = after(corn);
            System.out.printf(
                    "after %s, %d%n", corn ? "corn" : "soybean", some.all().size());
            line("F1 zero over full, measured", some.told(h -> share(h.at().measured()::at)));
            line(
                    "F1 zero over full, model less measured",
                    some.told(h -> share(h.known()::at) - share(h.at().measured()::at)));
            line(
                    "F1 error",
                    String.format(
                            Locale.ROOT, "%.2f", some.error(h -> share(h.known()::at) - share(h.at().measured()::at))));
            line(
                    "F2 level, model over measured",
                    some.told(h -> h.known().at(FULL_KGHA) / h.at().measured().at(FULL_KGHA)));
            line(
                    "F2 level over the years, r",
                    some.toldCorrelation(
                            h -> h.known().at(FULL_KGHA), h -> h.at().measured().at(FULL_KGHA)));
            line("F3 gain, measured [t/ha]", some.told(h -> gain(h.at().measured()::at)));
            line("F3 gain, model [t/ha]", some.told(h -> gain(h.known()::at)));
        }
    }

    private static double share(DoubleUnaryOperator grain) {
        return grain.applyAsDouble(0) / grain.applyAsDouble(FULL_KGHA);
    }

    private static double gain(DoubleUnaryOperator grain) {
        return (grain.applyAsDouble(FULL_KGHA) - grain.applyAsDouble(0)) / 1000;
    }

    private void optimum() {
        System.out.println();
        for (boolean corn : new boolean[] {true, false}) {
            Sample some = after(corn);
            System.out.printf("after %s%n", corn ? "corn" : "soybean");
            line("F4 optimum, measured [kg/ha]", some.told(Held::measuredBest));
            line("F4 optimum, model less measured [kg/ha]", some.told(h -> h.knownBest() - h.measuredBest()));
            line("F4 optimum, r", some.toldCorrelation(Held::knownBest, Held::measuredBest));
        }
        regret("F4 model, season known", Held::knownBest);
    }

    private void advice() {
        System.out.println();
        regret("best single rate in hindsight", rules.hindsight());
        regret("best single rate of the other farms", rules::ofOtherFarms);
        regret("published rate", rules::published_kgHa);
        for (Situation when : Situation.values()) {
            ToDoubleFunction<Held> advised = h -> h.advised(when);
            regret("F5 advice " + when.word(), advised);
            regret("   without the year", rules.withoutTheYear(advised));
            line("   r with the measured optimum, corn", after(true).toldCorrelation(advised, Held::measuredBest));
            line("   r with the measured optimum, soybean", after(false).toldCorrelation(advised, Held::measuredBest));
        }
    }

    private void regret(String what, ToDoubleFunction<Held> rate) {
        StringBuilder farms = new StringBuilder();
        for (String farm : all.farms()) {
            farms.append(String.format(
                    Locale.ROOT,
                    "  %s %.1f",
                    farm,
                    all.where(h -> h.at().farm().name().equals(farm)).mean(h -> h.regret(rate.applyAsDouble(h)))));
        }
        line(what + ", regret [$/ac]", all.told(h -> h.regret(rate.applyAsDouble(h))) + farms);
    }

    private void coverage() {
        System.out.println();
        within("F6 full yield", m -> m.at(FULL_KGHA), m -> m.at(FULL_KGHA));
        within("F6 zero-N yield", m -> m.at(0), m -> m.at(0));
        within("F6 gain", m -> gain(m::at), m -> gain(m::at));
        within("F6 optimum", m -> Money.best_kgHa(m::at), m -> Money.best_kgHa(m::at));
    }

    /** Share of site-years whose measured value lies within p10 to p90 of the members at planting. */
    private void within(String what, ToDoubleFunction<Modelled> modelled, ToDoubleFunction<Measured> measured) {
        line(what + " within p10 to p90", all.told(h -> {
            double[] members = h.each(Situation.PLANTING, modelled);
            Arrays.sort(members);
            double value = measured.applyAsDouble(h.at().measured());
            return value >= members[members.length / 10] && value <= members[members.length * 9 / 10] ? 1 : 0;
        }));
    }

    private static void line(String what, String figure) {
        System.out.printf(Locale.ROOT, "  %-52s %s%n", what, figure);
    }
}
