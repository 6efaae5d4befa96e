// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.util.List;
import org.earleaf.season.parameter.ParameterSet;

/** What the model is fitted to: site-years of all farms or all but one, and the plants near Ames. */
final class FitCases {
    private static final double[] RATES_KGHA = {0, 40, 80, 120, 160, 200, 240, 280};

    private final List<Plots> plots;
    private final Marsden marsden;
    private final List<Situation> given;

    private FitCases(List<Plots> plots, Marsden marsden, List<Situation> given) {
        this.plots = plots;
        this.marsden = marsden;
        this.given = given;
    }

    /** @param given when the nitrogen of the trials is taken to have been given; they do not say */
    static FitCases read(Path folder, List<Situation> given) {
        return new FitCases(
                SiteYear.readAll(folder).stream()
                        .map(at -> Plots.of(at, RATES_KGHA))
                        .toList(),
                Marsden.read(folder),
                given);
    }

    FitCases without(String farm) {
        return new FitCases(of(plots, farm, false), marsden, given);
    }

    FitCases only(String farm) {
        return new FitCases(of(plots, farm, true), marsden, given);
    }

    private static List<Plots> of(List<Plots> plots, String farm, boolean itself) {
        return plots.stream()
                .filter(each -> each.at().farm().name().equals(farm) == itself)
                .toList();
    }

    List<String> farms() {
        return plots.stream().map(each -> each.at().farm().name()).distinct().toList();
    }

    boolean isEmpty() {
        return plots.isEmpty();
    }

    /** The trials as run with a set of parameters. */
    Fitted with(ParameterSet usual) {
        List<FitCase> cases = plots.parallelStream()
                .flatMap(each -> given.stream()
                        .map(when -> FitCase.of(
                                each.at(), RATES_KGHA, each.with(usual).grain_kgHa(when))))
                .toList();
        return new Fitted(cases, marsden.pairs(each -> each.with(usual)));
    }
}
